/** For each rule of numbers recipes that just pass, and others that just fail. */
import type { RuleName } from "@drawcord/check";
import { projectOf, soundRecipe } from "@drawcord/files";
import { type Plan, plan, toMetric } from "@drawcord/yarn";
import { describe, expect, it } from "vitest";
import { checkRecipe } from "../src/check-recipe.js";
import { numberRules } from "../src/number-rules.js";

interface Said {
  readonly cloth?: string;
  readonly project?: string;
  readonly lifts?: string;
  readonly yarns?: string;
  readonly more?: string;
}

/** 100 ends and 100 picks in 25 units and 25 rows: 10 cm square, on the loom and finished, where nothing else is said. */
const square = ({ cloth = "", lifts, more = "", project = "", yarns }: Said): string => `recipe: 1
ground: { weave: broken twill, ends: 4 }
units: { ends: 4, threading: (1-8)*3 1 }
lifts: ${lifts ?? "{ picks: 4, rows: [1 *25] }"}
${yarns === undefined ? "" : `yarns: { warp: { count: 10/2 Ne${yarns} }, weft: { count: 10/2 Ne } }\n`}cloth: { ${[
  "draw-in",
  "take-up",
  "shrinkage",
  "sett",
  "picks",
]
  .filter((key) => !cloth.includes(`${key}:`))
  .map((key) => `${key}: ${key === "sett" || key === "picks" ? "10 per cm" : "0 %"}, `)
  .join("")}${cloth} }
project: { waste: 10 cm, spare: 0 %${project === "" ? "" : `, ${project}`} }
${more}`;

const found = (said: Said, rule: RuleName): number => {
  const { findings } = checkRecipe(soundRecipe(square(said), "just"), { rules: [rule] });
  return findings.length;
};

const planned = (said: Said): Plan => plan(projectOf(soundRecipe(square(said), "just")));
const closest = toMetric(planned({ yarns: "" }).firmness!.closest).value;
const need = planned({ yarns: "" }).buy[0]!.need.value;

const cases: readonly (readonly [rule: RuleName, what: string, passes: Said, fails: Said])[] = [
  ["length-rows", "3 % longer", { project: "length: 10.3 cm" }, { project: "length: 10.4 cm" }],
  ["length-rows", "3 % shorter", { project: "length: 9.7 cm" }, { project: "length: 9.6 cm" }],
  ["width-units", "3 % wider", { project: "width: 10.3 cm" }, { project: "width: 10.4 cm" }],
  ["width-units", "3 % narrower", { project: "width: 9.7 cm" }, { project: "width: 9.6 cm" }],
  [
    "close-sett",
    "the closest ends",
    { yarns: "", cloth: `sett: ${closest * 0.9999} per cm` },
    { yarns: "", cloth: `sett: ${closest * 1.0001} per cm` },
  ],
  [
    "close-sett",
    "the closest picks",
    { yarns: "", cloth: `picks: ${closest * 0.9999} per cm` },
    { yarns: "", cloth: `picks: ${closest * 1.0001} per cm` },
  ],
  [
    "open-sett",
    "half of the closest",
    { yarns: "", cloth: `sett: ${closest * 0.5001} per cm` },
    { yarns: "", cloth: `sett: ${closest * 0.4999} per cm` },
  ],
  [
    "sley-sett",
    "3 % off the sett",
    { cloth: "sett: 9.71 per cm, reed: 50 per 10 cm, sley: 2" },
    { cloth: "sett: 9.7 per cm, reed: 50 per 10 cm, sley: 2" },
  ],
  ["reed-width", "the reed", { cloth: "reed-width: 100 mm" }, { cloth: "reed-width: 99.9 mm" }],
  [
    "reed-width",
    "the loom",
    { more: "loom: { weaving-width: 100 mm }" },
    { more: "loom: { weaving-width: 99.9 mm }" },
  ],
  [
    "short-warp",
    "two pieces",
    { project: "pieces: 2, warp: 30 cm" },
    { project: "pieces: 2, warp: 29.9 cm" },
  ],
  [
    "short-stock",
    "the warp's",
    { yarns: `, stock: ${need * 1.0001} g` },
    { yarns: `, stock: ${need * 0.9999} g` },
  ],
  ["impossible-number", "hems of all the cloth", { project: "hems: 10 cm" }, { project: "hems: 10.1 cm" }],
  ["unusual-number", "draw-in", { cloth: "draw-in: 15 %" }, { cloth: "draw-in: 15.1 %" }],
  ["unusual-number", "take-up", { cloth: "take-up: 30 %" }, { cloth: "take-up: 30.1 %" }],
  [
    "unusual-number",
    "shrinkage",
    { cloth: "shrinkage: { width: 30 %, length: 0 % }" },
    { cloth: "shrinkage: { width: 30.1 %, length: 0 % }" },
  ],
  [
    "unusual-number",
    "shrinkage of linen",
    { yarns: ", fibre: linen", cloth: "shrinkage: { width: 0 %, length: 15 % }" },
    { yarns: ", fibre: linen", cloth: "shrinkage: { width: 0 %, length: 15.1 % }" },
  ],
  ["unusual-number", "a close sett", { cloth: "sett: 100 per cm" }, { cloth: "sett: 100.1 per cm" }],
  ["unusual-number", "an open sett", { cloth: "sett: 0.5 per cm" }, { cloth: "sett: 0.49 per cm" }],
  ["unusual-number", "close picks", { cloth: "picks: 120 per cm" }, { cloth: "picks: 120.1 per cm" }],
  ["unusual-number", "open picks", { cloth: "picks: 0.3 per cm" }, { cloth: "picks: 0.29 per cm" }],
  [
    "unusual-number",
    "a light lingo",
    { more: "loom: { lingo-weight: 3 g }" },
    { more: "loom: { lingo-weight: 2.9 g }" },
  ],
  [
    "unusual-number",
    "a heavy lingo",
    { more: "loom: { lingo-weight: 500 g }" },
    { more: "loom: { lingo-weight: 501 g }" },
  ],
  ["loom-capacity", "lingos", { more: "loom: { lingos: 25 }" }, { more: "loom: { lingos: 24 }" }],
  ["loom-capacity", "heddles", { more: "loom: { heddles: 25 }" }, { more: "loom: { heddles: 24 }" }],
  ["loom-capacity", "treadles", { more: "loom: { treadles: 4 }" }, { more: "loom: { treadles: 3 }" }],
  [
    "loom-capacity",
    "ground shafts",
    { more: "loom: { ground-shafts: 4 }" },
    { more: "loom: { ground-shafts: 3 }" },
  ],
  [
    "loom-capacity",
    "pattern shafts",
    { more: "loom: { pattern-shafts: 8 }" },
    { more: "loom: { pattern-shafts: 7 }" },
  ],
  ["stated-number", "ends", { more: "stated: { ends: 100 }" }, { more: "stated: { ends: 101 }" }],
  [
    "stated-number",
    "a width as it was rounded",
    { cloth: "sett: 10.4 per cm", more: "stated: { width-in-reed: 10 cm }" },
    { cloth: "sett: 10.4 per cm", more: "stated: { width-in-reed: 10.0 cm }" },
  ],
  [
    "rows-over",
    "a block that fills",
    { project: "length: 10 cm", lifts: "{ picks: 4, blocks: { a: { rows: [1 *5] } }, order: [a*fill] }" },
    { project: "length: 10.4 cm", lifts: "{ picks: 4, blocks: { a: { rows: [1 *5] } }, order: [a*fill] }" },
  ],
  [
    "ground-start",
    "one row in eight of other picks",
    { lifts: '{ picks: "4*22 3*3", rows: [1 *25] }' },
    { lifts: '{ picks: "4*21 3*4", rows: [1 *25] }' },
  ],
];

describe("just within its limit a recipe passes, and just beyond it fails", () => {
  it.each(cases)("%s: %s", (rule, _, passes, fails) => {
    expect([found(passes, rule), found(fails, rule)]).toEqual([0, 1]);
  });

  it("for every rule of numbers", () => {
    const tried = new Set(cases.map(([rule]) => rule));
    expect(numberRules.filter((rule) => !tried.has(rule))).toEqual([]);
  });
});
