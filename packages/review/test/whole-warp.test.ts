/** Numbers of all that is woven on one warp are judged of all of it, whichever piece is looked at. */

import { readFileSync } from "node:fs";
import { reviseRecipe, soundRecipe } from "@drawcord/files";
import { describe, expect, it } from "vitest";
import { checkRecipe } from "../src/check-recipe.js";
import { restated, statedValues } from "../src/fill-stated.js";

const text = readFileSync(new URL("../../../shared/recipes/seasons.recipe.yaml", import.meta.url), "utf8");
const read = (of: string) => soundRecipe(of, "seasons");
const changed = (...changes: readonly [path: string, value: string | number][]) =>
  read(
    reviseRecipe(
      text,
      "seasons",
      changes.map(([path, value]) => ({ path: path.split("."), value })),
    ).text,
  );
const found = (of: ReturnType<typeof read>, rule: "stated-number" | "short-stock" | "short-warp") =>
  checkRecipe(of, { rules: [rule] }).findings.map(({ message }) => message);

describe("several pieces on one warp", () => {
  it("state the numbers of the whole warp", () => {
    const stated = Object.entries(statedValues(read(text))).map(
      ([name, value]) => [`stated.${name}`, value] as const,
    );
    expect(
      found(
        changed(...stated.map(([path, value]): [string, string | number] => [path, value])),
        "stated-number",
      ),
    ).toEqual([]);
    expect(found(changed(["stated.pieces", 9]), "stated-number")).toEqual([
      expect.stringContaining("states 9 pieces, and there are 8"),
    ]);
  });

  it("take their yarn from one stock", () => {
    expect(
      found(changed(["yarns.warp.stock", "100 g"], ["yarns.silver.stock", "3 g"]), "short-stock"),
    ).toEqual([
      expect.stringMatching(/^there is 100 g of the yarn of the warp, and \d+(\.\d)? g is needed/),
      expect.stringMatching(/^there is 3 g of the yarn of the weft silver, and \d+(\.\d)? g is needed/),
    ]);
    expect(
      found(changed(["yarns.warp.stock", "100 g"], ["yarns.silver.stock", "30 g"]), "short-stock"),
    ).toHaveLength(1);
    expect(found(changed(["yarns.warp.stock", "400 g"]), "short-stock")).toEqual([]);
  });
});

describe("stated numbers of a recipe that is changed", () => {
  it("are stated anew where they were right, in their unit and to their decimals", () => {
    const before = changed(["stated.pieces", 8], ["stated.warp-length", "5.2 m"], ["stated.ends", 300]);
    const after = read(
      reviseRecipe(before.text, "seasons", [{ path: ["pieces", 0, "count"], value: 4 }]).text,
    );
    const { "warp-length": warp, ...rest } = restated(before, after);
    expect(rest).toEqual({ pieces: 10 });
    expect(warp).toMatch(/^\d\.\d m$/);
  });
});
