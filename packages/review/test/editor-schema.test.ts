import { recipeSchema } from "@drawcord/files";
import { describe, expect, it } from "vitest";
import { editorSchema } from "../src/editor-schema.js";
import { levelNames } from "../src/rule-names.js";

describe("the schema for editors", () => {
  const schema = editorSchema();

  it("names the rules, to complete", () => {
    expect(schema.properties!["limits"]!.properties!["levels"]!.propertyNames!.enum).toEqual(levelNames);
    expect(schema.properties!["waive"]!.items!.properties!["rule"]!.enum).toEqual(levelNames);
  });

  it("is else the one that recipes are read by", () => {
    const without = JSON.stringify(schema, (key, value: unknown) =>
      key === "propertyNames" || String(value) === String(levelNames) ? undefined : value,
    );
    expect(JSON.parse(without)).toEqual(JSON.parse(JSON.stringify(recipeSchema)));
  });

  it("is shipped as a file too", async () => {
    await expect(`${JSON.stringify(schema, null, 2)}\n`).toMatchFileSnapshot(
      "../../files/recipe.schema.json",
    );
  });
});
