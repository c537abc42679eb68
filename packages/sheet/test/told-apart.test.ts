import type { Rgb } from "@drawcord/draw";
import { type Recipe, recipeOfPiece } from "@drawcord/files";
import { describe, expect, it } from "vitest";
import { coloursOf } from "../src/pictures/colours-of.js";
import { weave } from "../src/woven.js";
import { exampleRecipe } from "./recipes.js";

type Row = readonly [number, number, number];

/**
 * What those see who lack one kind of cone, on linear light: G. M. Machado, M. M. Oliveira, L. A. F. Fernandes, "A
 * Physiologically-based Model for Simulation of Color Vision Deficiency", IEEE Transactions on Visualization and Computer
 * Graphics 15 (2009), severity 1.0; the matrices from memory.
 */
const SIGHT: Readonly<Record<string, readonly [Row, Row, Row]>> = {
  "all cones": [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  "no long cones": [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  "no middle cones": [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  "no short cones": [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};

const linear = (value: number) => {
  const share = value / 255;
  return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
};

/** A colour as such eyes see it, as lightness and two hues (CIE 1976 L*a*b*, white D65). */
function seen(colour: Rgb, sight: readonly [Row, Row, Row]): Row {
  const light = [...colour].map(linear);
  const [red, green, blue] = sight.map((row) =>
    Math.min(
      1,
      Math.max(
        0,
        row.reduce((sum, factor, i) => sum + factor * light[i]!, 0),
      ),
    ),
  ) as [number, number, number];
  const root = (value: number) => (value > 0.008856 ? Math.cbrt(value) : 7.787 * value + 16 / 116);
  const x = root((0.4124 * red + 0.3576 * green + 0.1805 * blue) / 0.9505);
  const y = root(0.2126 * red + 0.7152 * green + 0.0722 * blue);
  const z = root((0.0193 * red + 0.1192 * green + 0.9505 * blue) / 1.089);
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}

const runner = exampleRecipe("runner");
/** Rust and teal are one grey. */
const RUST_AND_TEAL = ["#b7510e", "#0f7a7a"];

const recipes: Readonly<Record<string, Recipe>> = {
  runner,
  napkin: exampleRecipe("napkin"),
  band: exampleRecipe("band"),
  seasons: exampleRecipe("seasons"),
  "runner in rust and teal": {
    ...runner,
    yarns: runner.yarns.map((yarn, i) => ({ ...yarn, colour: RUST_AND_TEAL[i % 2]! })),
  },
};

/** The unlike colours of the threads of each piece, as they are drawn. */
function drawnIn(recipe: Recipe): Rgb[][] {
  return recipe.pieces.map((piece) => {
    const own = recipe.pieces.length === 1 ? recipe : recipeOfPiece(recipe, piece.name)!;
    const weftOfPick = (pick: number) => piece.wefts[pick % piece.wefts.length]!;
    const { steps } = piece.draft.ground;
    const { colours } = coloursOf(own, weave(piece.draft, { steps, wefts: [], weftOfPick }));
    return [...new Map([...colours.warp, ...colours.weft].map((one) => [`${[...one]}`, one])).values()];
  });
}

function* pairs<T>(list: readonly T[]): Iterable<readonly [T, T]> {
  for (const [i, one] of list.entries()) for (const other of list.slice(i + 1)) yield [one, other];
}

describe("the colours of a cloth", () => {
  it.each(Object.keys(recipes))(
    "of the %s are light and dark enough to be told apart in grey print",
    (name) => {
      for (const colours of drawnIn(recipes[name]!)) {
        for (const [one, other] of pairs(colours.map((colour) => seen(colour, SIGHT["all cones"]!)))) {
          expect(Math.abs(one[0] - other[0])).toBeGreaterThan(5);
        }
      }
    },
  );

  it.each(Object.keys(recipes).flatMap((name) => Object.keys(SIGHT).map((who) => [name, who] as const)))(
    "of the %s are told apart by eyes with %s",
    (name, who) => {
      for (const colours of drawnIn(recipes[name]!)) {
        for (const [one, other] of pairs(colours.map((colour) => seen(colour, SIGHT[who]!)))) {
          expect(Math.hypot(...one.map((part, i) => part - other[i]!))).toBeGreaterThan(10);
        }
      }
    },
  );
});
