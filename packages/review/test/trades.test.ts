/** Recipes as they are written in other trades and places, in another hand: each with one number wrong, found with its reason. */
import type { RuleName } from "@drawcord/check";
import { soundRecipe } from "@drawcord/files";
import { describe, expect, it } from "vitest";
import { checkRecipe } from "../src/check-recipe.js";
import { numberRules } from "../src/number-rules.js";

/** A linen damask of the north: dents in 10 cm, linen by the lea, 5-end satin, selvedges of their own. 480 + 8 ends, 600 picks. */
const linen = `recipe: 1
title: Sideboard cloth
ground: { weave: satin 5 step 2, selvedge: { left: 1 3 5 2, right: 4 2 5 3 } }
units: { ends: 5, threading: X*3 (1-6 5-2)*9 X*3 }
lifts:
  picks: 5
  blocks:
    edge: { rows: [none *5, 1-6] }
    star: { rows: [1, 1 2, 2 3, 3-4, 4 5, 5-6, 6, 5-6, 4 5, 3-4, 2 3, 1 2] }
  order: [edge, star*9, edge upside-down]
yarns:
  warp: { count: 16 lea, fibre: linen, package: 250 g, stock: 600 g }
  weft: { count: 16 lea, fibre: linen, package: 250 g }
cloth: { sett: 16 per cm, picks: 15 per cm, reed: 80 per 10 cm, sley: 2, reed-width: 60 cm, draw-in: 5 %, take-up: 6 %, shrinkage: 5 % }
project: { pieces: 2, width: 27.5 cm, length: 34 cm, hems: 4 cm, gaps: 3 cm, sampling: 25 cm, waste: 90 cm }
loom: { pattern-shafts: 10, ground-shafts: 5, treadles: 10, lingos: 100, lingo-weight: 20 g, weaving-width: 80 cm }
`;

/** The same with broad selvedges, for a mangle cloth. */
const edged = linen
  .replace(
    "left: 1 3 5 2, right: 4 2 5 3",
    `left: ${"1 3 5 2 ".repeat(5).trim()}, right: ${"4 2 5 3 ".repeat(5).trim()}`,
  )
  .replace("width: 27.5 cm", "width: 29.3 cm");

/** A silk scarf: fine, closely set, hardly any shrinkage, fringes and no hems, woven by the metre. */
const scarf = `recipe: 1
title: Evening scarf
ground: { weave: satin 8 step 3 }
units: { ends: 8, threading: (1-10 9-2)*5 }
lifts: { picks: 8, blocks: { feather: { rows: [1, 1-2, 2-4, 3-5, 5-8, 8-10, 9-10, 10] }, rest: { rows: [none] } }, order: [rest*2, feather*81, rest*2] }
yarns:
  warp: { count: 60/2 Nm, fibre: silk, stock: 10000 m }
  weft: { count: 60/2 Nm, fibre: silk }
cloth: { sett: 30 per cm, picks: 30 per cm, reed: 10 per cm, sley: 3, draw-in: 4 %, take-up: 4 %, shrinkage: 3 % }
project: { pieces: 3, length: 1.69 m, fringe: 24 cm, waste: 60 cm, warp: 7 m }
stated: { ends: 720, finished-width: 22.3 cm, warp-length: 7 m }
`;

/** A towel weaver's with inches, ounces and yards. */
const towel = `recipe: 1
title: Hand towel
ground: { weave: twill 2/2 }
units: { ends: 4, threading: X*2 (1-4 3-2)*15 1 X*2 }
lifts: { picks: 4, blocks: { bar: { rows: [1-4] }, wave: { rows: [1, 2, 3, 4, 3, 2] } }, order: [bar*2, wave*30, bar*2] }
yarns:
  warp: { count: 10/2 Ne, fibre: cotton, package: 8 oz }
  weft: { count: 10/2 Ne, fibre: cotton, package: 8 oz }
cloth: { sett: 24 per inch, picks: 22 per inch, reed: 12 per inch, sley: 2, draw-in: 7 %, take-up: 10 %, shrinkage: 10 % }
project: { pieces: 6, width: 13.3 in, length: 27.1 in, hems: 3 in, gaps: 1 in, sampling: 10 in, waste: 27 in }
measured: { width-in-reed: 8 in, width: 7.44 in, washed-width: 6.7 in, picks: 44, over: 2 in }
loom: { treadles: 4, heddles: 130, weaving-width: 32 in }
`;

/** A tapestry-like cover: wool packed over an open linen warp. */
const cover = `recipe: 1
title: Bench cover
ground: { weave: plain }
units: { ends: 2, threading: (1 2)*30 }
lifts: { picks: 2, rows: ["1 *350", "2 *350"] }
yarns:
  warp: { count: 16/4 lea, fibre: linen }
  weft: { count: Nm 12/2, fibre: wool, stock: 1.5 kg }
cloth: { sett: 2.5 per cm, picks: 16 per cm, reed: 25 per 10 cm, sley: 1, draw-in: 2 %, take-up: 8 %, shrinkage: 3 % }
project: { pieces: 1, fringe: 10 cm, waste: 70 cm, length: 84.9 cm }
`;

/** Upholstery wool by the worsted count, on a wide loom. */
const upholstery = `recipe: 1
title: Chair seats
ground: { weave: broken twill, ends: 4 }
units: { ends: 4, threading: (1-12 11-2)*11 1 }
lifts: { picks: 4, blocks: { scale: { rows: [1-3, 2-4, 3-5, 4-6, 5-7, 6-8, 7-9, 8-10, 9-11, 10-12] } }, order: [scale*20] }
yarns:
  warp: { count: 12/2 NeK, fibre: wool, package: 500 g }
  weft: { count: 12/2 NeK, fibre: wool, package: 500 g }
cloth: { sett: 11 per cm, picks: 11 per cm, reed: 55 per 10 cm, sley: 2, draw-in: 6 %, take-up: 9 %, shrinkage: 7 % }
project: { pieces: 4, gaps: 4 cm, waste: 1 m, warp: 4.5 m }
stated: { units: 243, ends: 972, rows: 200, picks: 800, pieces: 4, width-in-reed: 88.4 cm }
`;

const numbersOf = (text: string) => checkRecipe(soundRecipe(text, "r"), { rules: numberRules }).findings;

const slipped = (recipe: string, from: string, to: string) => {
  expect(recipe).toContain(from);
  return recipe.replace(from, to);
};

describe("before anything is written wrong, the numbers agree", () => {
  it.each(Object.entries({ linen, edged, scarf, towel, cover, upholstery }))("in %s", (_, text) => {
    expect(numbersOf(text).map(({ message }) => message)).toEqual([]);
  });
});

describe("one number written wrong is found, with its reason", () => {
  it.each<[string, string, from: string, to: string, RuleName, RegExp]>([
    [
      "dents in 10 cm taken for dents in 4 in",
      linen,
      "reed: 80 per 10 cm",
      "reed: 80 per inch",
      "sley-sett",
      /the reed makes 62\.99 per cm, and the sett is 16 per cm.*dents in an inch and in 10 cm were taken for one another/,
    ],
    [
      "every dent with one end where two were meant",
      linen,
      "sley: 2",
      "sley: 1",
      "sley-sett",
      /the reed makes 8 per cm.*2 in every dent were meant/,
    ],
    [
      "a length in inches written as centimetres",
      linen,
      "length: 34 cm",
      "length: 13.4 cm",
      "length-rows",
      /13\.4 cm takes 275 picks.*inches were taken for centimetres, or the other way round/,
    ],
    [
      "a width in inches written as centimetres",
      linen,
      "width: 27.5 cm",
      "width: 10.8 cm",
      "width-units",
      /10\.8 cm takes 191 ends.*inches were taken for centimetres, or the other way round/,
    ],
    [
      "a length in centimetres written as inches",
      towel,
      "length: 27.1 in",
      "length: 68.8 in",
      "length-rows",
      /68\.8 in takes 1755 picks.*inches were taken for centimetres, or the other way round/,
    ],
    [
      "a width converted to inches twice",
      towel,
      "width: 13.3 in",
      "width: 5.24 in",
      "width-units",
      /5\.24 in takes 150 ends.*inches were taken for centimetres, or the other way round/,
    ],
    [
      "picks an inch written as picks a cm",
      upholstery,
      "picks: 11 per cm",
      "picks: 28 per cm",
      "close-sett",
      /28 picks a cm is .*counted an inch and not a cm, it would be/,
    ],
    [
      "picks a cm written as picks an inch",
      linen,
      "picks: 15 per cm",
      "picks: 15 per inch",
      "length-rows",
      /takes 236 picks.*inches were taken for centimetres, or the other way round/,
    ],
    [
      "a width that leaves the selvedges out",
      edged,
      "width: 29.3 cm",
      "width: 27.1 cm",
      "width-units",
      /27\.1 cm takes 480 ends.*the selvedges were left out/,
    ],
    [
      "the draw-in left out of a width",
      linen,
      "width: 27.5 cm",
      "width: 26.1 cm",
      "width-units",
      /the draw-in was taken twice/,
    ],
    [
      "the draw-in taken twice from a stated width",
      scarf,
      "finished-width: 22.3 cm",
      "finished-width: 21.5 cm",
      "stated-number",
      /the draw-in was taken twice/,
    ],
    [
      "a scarf's rows for its picks",
      scarf,
      "length: 1.69 m",
      "length: 21.1 cm",
      "length-rows",
      /picks were taken for rows|rows were taken for picks/,
    ],
    [
      "the draw-in taken twice",
      upholstery,
      "width-in-reed: 88.4 cm",
      "width-in-reed: 83.1 cm",
      "stated-number",
      /the width of the cloth on the loom was written/,
    ],
    [
      "ends counted without their units",
      upholstery,
      "ends: 972",
      "ends: 243",
      "stated-number",
      /the units were taken for ends/,
    ],
    [
      "picks for rows",
      upholstery,
      "rows: 200",
      "rows: 800",
      "stated-number",
      /the picks were taken for rows/,
    ],
    [
      "the finished width stated as it lies on the loom",
      scarf,
      "finished-width: 22.3 cm",
      "finished-width: 23 cm",
      "stated-number",
      /the width of the cloth on the loom was written/,
    ],
    [
      "a scarf's length before the wash",
      scarf,
      "length: 1.69 m",
      "length: 1.74 m",
      "length-rows",
      /the finished and the woven length were taken for one another/,
    ],
    [
      "a yarn by the cotton count for the metric",
      scarf,
      "count: 60/2 Nm, fibre: silk, stock",
      "count: 6/2 Nm, fibre: silk, stock",
      "close-sett",
      /30 ends a cm is 274\.3 % of the closest/,
    ],
    [
      "a warp one piece short",
      scarf,
      "warp: 7 m",
      "warp: 5.5 m",
      "short-warp",
      /gives 2 pieces, and 3 are wanted/,
    ],
    [
      "a cone's metres for the stock's",
      scarf,
      "stock: 10000 m",
      "stock: 900 m",
      "short-stock",
      /there is 900 m of the yarn of the warp, and 9243\.6 m is needed/,
    ],
    [
      "wool beaten as if it were cotton",
      cover,
      "picks: 16 per cm",
      "picks: 5 per cm",
      "open-sett",
      /2\.5 ends a cm is 40\.7 % of the closest/,
    ],
    [
      "a warp as close as the weft",
      cover,
      "sett: 2.5 per cm, picks: 16 per cm, reed: 25 per 10 cm",
      "sett: 16 per cm, picks: 16 per cm, reed: 80 per 10 cm",
      "close-sett",
      /16 ends a cm is 260\.7 % of the closest/,
    ],
    [
      "a stock in grams for kilograms",
      cover,
      "stock: 1.5 kg",
      "stock: 1.5 g",
      "short-stock",
      /there is 1\.5 g of the yarn of the weft/,
    ],
    [
      "the sample's washed width read off the wrong end of the ruler",
      towel,
      "washed-width: 6.7 in",
      "washed-width: 4.7 in",
      "unusual-number",
      /the sample tells 36\.83 % as shrinkage of the width.*slip of the ruler/,
    ],
    [
      "a loom width in centimetres written as inches",
      upholstery,
      "stated:",
      "loom: { weaving-width: 32 in }\nstated:",
      "reed-width",
      /883\.6 mm wide in the reed, and the loom weaves 812\.8 mm/,
    ],
    [
      "gaps in metres",
      upholstery,
      "gaps: 4 cm",
      "gaps: 4 m",
      "short-warp",
      /gives 1 piece, and 4 are wanted/,
    ],
    [
      "heddles for one shaft in two",
      towel,
      "heddles: 130",
      "heddles: 60",
      "loom-capacity",
      /95 heddles on a shaft, and the loom has 60/,
    ],
    [
      "hems taken off the length twice",
      linen,
      "length: 34 cm",
      "length: 30 cm",
      "length-rows",
      /30 cm takes 537 picks.*the hems were taken off twice/,
    ],
  ])("%s", (_, recipe, from, to, rule, reason) => {
    const messages = numbersOf(slipped(recipe, from, to));
    const found = messages.filter((finding) => finding.rule === rule);
    expect(
      found.map(({ message }) => message).join("\n") ||
        `NOT FOUND: ${messages.map(({ rule, message }) => `${rule} ${message}`).join(" | ")}`,
    ).toMatch(reason);
  });
});
