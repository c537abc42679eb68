import { readFileSync } from "node:fs";
import { type Recipe, soundRecipe } from "@drawcord/files";
import { type Paper, toPdf } from "@drawcord/page/print";
import { sized, type UnitDraft } from "@drawcord/units";
import { makeSheet, partNames, type Sheet, type SheetOptions } from "../src/index.js";

/** A recipe of a draft and nothing else. */
export function bareRecipe(any: UnitDraft, more: Partial<Recipe> = {}): Recipe {
  const draft = sized(any);
  return {
    file: "test.recipe.yaml",
    text: "",
    unread: [],
    version: 1,
    measured: {},
    formulas: [],
    pieces: [
      {
        name: more.title ?? "",
        count: 1,
        draft,
        limits: more.limits ?? {},
        wefts: ["weft"],
        yarnOrders: [],
        over: 0,
        path: [],
      },
    ],
    warp: ["warp"],
    draft,
    yarns: [],
    cloth: {},
    project: {},
    loom: {},
    limits: {},
    levels: {},
    waive: [],
    stated: [],
    ...more,
  };
}

type ExampleName = "runner" | "napkin" | "band" | "faulty-runner" | "seasons";

/** An example recipe of the repository. */
export function exampleRecipe(name: ExampleName): Recipe {
  return kept(`recipe of ${name}`, () => {
    const url = new URL(`../../../shared/recipes/${name}.recipe.yaml`, import.meta.url);
    return soundRecipe(readFileSync(url), `${name}.recipe.yaml`);
  });
}

/** The sheet of an example recipe. */
export function exampleSheet(name: ExampleName): Sheet {
  return kept(`sheet of ${name}`, () => makeSheet(exampleRecipe(name)));
}

/** The sheet of an example recipe on paper; it is not to be written into. */
export function examplePdf(name: ExampleName, paper: Paper): Promise<Uint8Array> {
  return kept(`${paper} of ${name}`, () => toPdf(exampleSheet(name), paper));
}

/** What is made once and looked at by many tests, each by what it is. */
const made = new Map<string, unknown>();

function kept<Value>(what: string, make: () => Value): Value {
  if (!made.has(what)) made.set(what, make());
  return made.get(what) as Value;
}

/** A small cloth with a figure that repeats: eight units on three shafts, six rows of four picks. */
export const smallDraft: UnitDraft = {
  ground: {
    shafts: 4,
    threading: [1, 2, 3, 4],
    steps: [
      { raise: [1], sink: [4] },
      { raise: [3], sink: [2] },
      { raise: [2], sink: [3] },
      { raise: [4], sink: [1] },
    ],
  },
  unitEnds: 4,
  threading: [[], [1], [2], [3], [2], [1], [2], [3], [2], []],
  lifts: [[1], [2], [1, 3], [2], [1, 3], []],
  picksPerRow: 4,
};

/** A sheet with every part that it may have, the ones that are only there when asked for too. */
export function fullSheet(recipe: Recipe, options: SheetOptions = {}): Sheet {
  return makeSheet(recipe, { parts: partNames, ...options });
}
