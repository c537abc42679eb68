import { rules } from "@drawcord/check";
import { recipeSchema } from "@drawcord/files";
import { describe, expect, it } from "vitest";
import { editorSchema } from "../src/editor-schema.js";

describe("the schema for editors", () => {
  const schema = editorSchema();
  const names = rules.map(({ name }) => name);

  it("names the rules, to complete", () => {
    expect(schema.properties!["limits"]!.properties!["levels"]!.propertyNames!.enum).toEqual(names);
    expect(schema.properties!["waive"]!.items!.properties!["rule"]!.enum).toEqual(names);
  });

  it("is else the one that recipes are read by", () => {
    const without = JSON.stringify(schema, (key, value: unknown) =>
      key === "propertyNames" || String(value) === String(names) ? undefined : value,
    );
    expect(JSON.parse(without)).toEqual(JSON.parse(JSON.stringify(recipeSchema)));
  });

  it("is shipped as a file too", async () => {
    await expect(`${JSON.stringify(schema, null, 2)}\n`).toMatchFileSnapshot(
      "../../files/recipe.schema.json",
    );
  });
});
