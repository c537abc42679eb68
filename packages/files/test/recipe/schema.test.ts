import { Ajv2020 } from "ajv/dist/2020.js";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parse, stringify } from "yaml";
import { FileError, recipeSchema, type Schema } from "../../src/index.js";
import { checkShape } from "../../src/tree/shape.js";
import { root } from "../../src/tree/spot.js";
import { readTree } from "../../src/tree/tree.js";
import { type Json, slips } from "../arbitraries.js";
import { leastRecipe, wholeRecipe } from "../samples.js";

const ajv = new Ajv2020({ allErrors: true, allowUnionTypes: true });
const bySchema = ajv.compile(recipeSchema);

/** Whether the reader accepts the shape of a document. */
function byReader(document: Json): boolean {
  try {
    const tree = readTree(stringify(document), "slip");
    checkShape(root(tree), recipeSchema);
    return tree.problems.found.length === 0;
  } catch (error) {
    if (error instanceof FileError) return false;
    throw error;
  }
}

function everySchema(schema: Schema): Schema[] {
  const inside = [
    ...Object.values(schema.properties ?? {}),
    ...(schema.items === undefined ? [] : [schema.items]),
    ...(schema.additionalProperties ? [schema.additionalProperties] : []),
  ];
  return [schema, ...inside.flatMap(everySchema)];
}

describe("the published schema", () => {
  it("is good JSON Schema", () => {
    expect(ajv.validateSchema(recipeSchema)).toBe(true);
  });

  it.each([
    ["whole", wholeRecipe],
    ["least", leastRecipe],
  ])("accepts the %s recipe", (_which, text) => {
    const document: unknown = parse(text);
    expect(bySchema(document)).toBe(true);
  });

  it("accepts and refuses what the reader does", () => {
    const seen = { accepted: 0, refused: 0 };
    fc.assert(
      fc.property(slips(parse(wholeRecipe) as Json), (document) => {
        const accepted = bySchema(document);
        seen[accepted ? "accepted" : "refused"]++;
        expect(byReader(document)).toBe(accepted);
      }),
      { numRuns: 500 },
    );
    // Both happen often enough to mean something.
    expect(seen.accepted).toBeGreaterThan(50);
    expect(seen.refused).toBeGreaterThan(50);
  });

  it("explains every key, and its examples are what it asks for", () => {
    for (const schema of everySchema(recipeSchema)) {
      for (const [key, of] of Object.entries(schema.properties ?? {})) {
        expect(of.description, key).toMatch(/^[A-Z].*\.$/);
        expect(of.examples?.length, key).toBeGreaterThan(0);
      }
      for (const example of schema.examples ?? [])
        expect(ajv.validate(schema, example), String(example)).toBe(true);
    }
  });
});
