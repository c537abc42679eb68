/** Sound recipes of different trades, each with one number written wrong: all are found, with the right reason. */
import type { RuleName } from "@drawcord/check";
import { soundRecipe } from "@drawcord/files";
import { describe, expect, it } from "vitest";
import { checkRecipe } from "../src/check-recipe.js";
import { numberRules } from "../src/number-rules.js";

/** A damask napkin weaver's, metric: 308 ends and 240 picks, 25.7 cm in the reed, 20 cm woven. */
const damask = `recipe: 1
ground: { weave: broken twill, ends: 4, selvedge: { left: 1 3 1 3, right: 2 4 2 4 } }
units: { ends: 4, threading: X*2 (1-8 7-2)*4 1-8 7-1 X*2 }
lifts:
  picks: 4
  blocks:
    leaf: { rows: [1, 1-2, 1-3, 2-4, 3-5, 4-6, 5-7, 6-8, 7 8, 8] }
  order: [leaf*6]
yarns:
  warp: { count: Nm 22/2, fibre: cottolin, package: 250 g, stock: 500 g }
  weft: { count: Nm 16/2, fibre: linen, package: 250 g }
cloth:
  sett: 12 per cm
  picks: 12 per cm
  reed: 60 per 10 cm
  sley: 2
  reed-width: 50 cm
  draw-in: 5 %
  take-up: 8 %
  shrinkage: 6 %
project: { pieces: 4, width: 22.9 cm, length: 16.8 cm, hems: 2 cm, gaps: 2 cm, sampling: 20 cm, waste: 80 cm }
loom: { pattern-shafts: 10, ground-shafts: 4, treadles: 4, lingos: 80, lingo-weight: 25 g, weaving-width: 100 cm }
stated: { ends: 308, units: 75, lingos: 75, picks: 240, rows: 60, width-in-reed: 25.7 cm }
`;

/** A band weaver's, in inches and cotton counts, and a warp that is wound already. */
const inches = `recipe: 1
ground: { weave: broken twill, ends: 4 }
units: { ends: 4, threading: (1-8 7-2)*3 1 }
lifts: { picks: 4, rows: "1 *2\\n1-2\\n1-3\\n2-4\\n3-5\\n4-6\\n5-7\\n6-8\\n7 8\\n8\\n8\\n7 8\\n6-8\\n5-7\\n4-6\\n3-5\\n2-4\\n1-3\\n1-2" }
yarns:
  warp: { count: 20/2 Ne, fibre: cotton }
  weft: { count: 20/2 Ne, fibre: cotton, stock: 1200 m }
cloth: { sett: 36 per inch, picks: 36 per inch, reed: 12 per inch, sley: 3, draw-in: 6 %, take-up: 10 %, shrinkage: 8 %, repeat: picks }
project: { pieces: 3, warp: 4 yd, width: 4.1 in, length: 18 in, sampling: 6 in, waste: 1 yd }
loom: { lingo-weight: 30 g }
`;

/** A rug weaver's: an open warp, covered by rags. */
const rug = `recipe: 1
ground: { weave: plain }
units: { ends: 2, threading: (1 2)*30 }
lifts: { picks: 2, rows: "(1 2 *1)" }
yarns:
  warp: { count: 12/6 Ne, fibre: cotton }
  weft: { count: 3000 tex }
cloth: { sett: 3 per cm, picks: 3 per cm, draw-in: 4 %, take-up: 10 %, shrinkage: 0 % }
project: { pieces: 1, fringe: 20 cm, waste: 60 cm }
`.replace('"(1 2 *1)"', "[1*50, 2*50, 1*50, 2*50]");

const numbersOf = (text: string) =>
  checkRecipe(soundRecipe(text, "r"), { rules: [...numberRules, "stated-number", "loom-capacity"] });

const slipped = (recipe: string, from: string, to: string) => {
  expect(recipe).toContain(from);
  return recipe.replace(from, to);
};

describe("before anything is written wrong, the numbers agree", () => {
  it.each([
    ["the damask weaver's", damask],
    ["the band weaver's", inches],
    ["the rug weaver's", rug],
  ])("in %s recipe", (_, text) => {
    expect(numbersOf(text).findings.map(({ message }) => message)).toEqual([]);
  });
});

describe("one number written wrong is found, with its reason", () => {
  it.each<[string, string, from: string, to: string, RuleName, RegExp]>([
    [
      "the length measured on the loom, before the wash",
      damask,
      "length: 16.8 cm",
      "length: 20 cm",
      "length-rows",
      /takes \d+(\.\d)? picks.* fewer/,
    ],
    [
      "a length of inches for centimetres",
      damask,
      "length: 16.8 cm",
      "length: 42.67 cm",
      "length-rows",
      /lift plan has 240/,
    ],
    [
      "picks of another cloth",
      damask,
      "picks: 12 per cm\n  reed",
      "picks: 16 per cm\n  reed",
      "length-rows",
      /takes 320 picks/,
    ],
    [
      "a block too few",
      damask,
      "leaf*6",
      "leaf*5",
      "length-rows",
      /has 200, 40 fewer: 10 rows are missing after row 50; leaf\*6 in place of leaf\*5 makes it/,
    ],
    [
      "the width in the reed promised as finished",
      damask,
      "width: 22.9 cm",
      "width: 26 cm",
      "width-units",
      /takes \d+ ends.* fewer/,
    ],
    [
      "a repeat of the threading left out",
      damask,
      "(1-8 7-2)*4",
      "(1-8 7-2)*3",
      "width-units",
      /56 fewer \(14 units\)/,
    ],
    [
      "a shrinkage with a digit too many",
      damask,
      "shrinkage: 6 %",
      "shrinkage: 60 %",
      "unusual-number",
      /shrinkage .* is 60 %, where at most 30 % is usual/,
    ],
    [
      "a take-up for a share of the whole",
      damask,
      "take-up: 8 %",
      "take-up: 80 %",
      "unusual-number",
      /take up is 80 %/,
    ],
    [
      "a draw-in of the wrong column",
      damask,
      "draw-in: 5 %",
      "draw-in: 50 %",
      "unusual-number",
      /draw in is 50 %/,
    ],
    [
      "a lingo in kilograms",
      damask,
      "lingo-weight: 25 g",
      "lingo-weight: 25 kg",
      "unusual-number",
      /lingo weight is 25000 g/,
    ],
    [
      "three in a dent for two",
      damask,
      "sley: 2",
      "sley: 3",
      "sley-sett",
      /sleyed 3, the reed makes 18 per cm.*the sett is 12 per cm/,
    ],
    [
      "the reed's dents for the sett",
      damask,
      "sett: 12 per cm",
      "sett: 6 per cm",
      "sley-sett",
      /the dents of the reed were taken for ends/,
    ],
    [
      "a reed count of another system",
      damask,
      "reed: 60 per 10 cm",
      "reed: 40 per 10 cm",
      "sley-sett",
      /the reed makes 8 per cm/,
    ],
    [
      "a sett an inch written a cm",
      inches,
      "sett: 36 per inch",
      "sett: 36 per cm",
      "close-sett",
      /36 ends a cm is 1\d\d.* % of the closest/,
    ],
    [
      "a sett a cm written an inch",
      damask,
      "sett: 12 per cm",
      "sett: 12 per inch",
      "open-sett",
      /4\.7 ends a cm/,
    ],
    ["a yarn twice as thick", damask, "count: Nm 22/2", "count: Nm 5/2", "close-sett", /12 ends a cm/],
    [
      "more pieces than the warp gives",
      inches,
      "pieces: 3",
      "pieces: 20",
      "short-warp",
      /gives \d pieces?, and 20 are wanted/,
    ],
    [
      "a stock with a digit lost",
      damask,
      "stock: 500 g",
      "stock: 50 g",
      "short-stock",
      /50 g of the yarn of the warp/,
    ],
    [
      "a sample measured with a slip of the ruler",
      damask,
      "loom: {",
      "measured: { width-in-reed: 40 cm, width: 38 cm, washed-width: 20 cm }\nloom: {",
      "unusual-number",
      /the sample tells 47\.37 % as shrinkage of the width.*slip of the ruler/,
    ],
    [
      "fewer heddles than the ground has ends",
      damask,
      "loom: {",
      "loom: { heddles: 30,",
      "loom-capacity",
      /heddles on a shaft, and the loom has 30/,
    ],
    ["hems longer than the piece", damask, "hems: 2 cm", "hems: 200 cm", "length-rows", /takes \d+/],
    [
      "a reed too narrow",
      damask,
      "reed-width: 50 cm",
      "reed-width: 20 cm",
      "reed-width",
      /the reed is 200 mm wide/,
    ],
    [
      "a loom too narrow",
      damask,
      "weaving-width: 100 cm",
      "weaving-width: 25 cm",
      "reed-width",
      /the loom weaves 250 mm/,
    ],
    ["lingos for half of the units", damask, "lingos: 80,", "lingos: 40,", "loom-capacity", /75 lingos/],
    [
      "the ends stated without the selvedges",
      damask,
      "ends: 308, units",
      "ends: 300, units",
      "stated-number",
      /the selvedges were left out/,
    ],
    [
      "the width stated as it is on the loom",
      damask,
      "width-in-reed: 25.7 cm",
      "width-in-reed: 24.4 cm",
      "stated-number",
      /the width of the cloth on the loom was written/,
    ],
    [
      "the width stated in inches as centimetres",
      damask,
      "width-in-reed: 25.7 cm",
      "width-in-reed: 10.1 cm",
      "stated-number",
      /inches were taken for centimetres/,
    ],
    [
      "the rows stated as picks",
      damask,
      "rows: 60",
      "rows: 240",
      "stated-number",
      /the picks were taken for rows/,
    ],
    [
      "rags set as if they were cotton",
      rug,
      "picks: 3 per cm",
      "picks: 12 per cm",
      "close-sett",
      /12 picks a cm/,
    ],
    ["a rug warp without its rags", rug, "count: 3000 tex", "count: 30 tex", "open-sett", /3 ends a cm/],
  ])("%s", (_, recipe, from, to, rule, reason) => {
    const { findings } = numbersOf(slipped(recipe, from, to));
    const found = findings.filter((finding) => finding.rule === rule);
    expect(found.map(({ message }) => message).join("\n")).toMatch(reason);
  });
});
