import { many } from "@drawcord/base";
import { squaresPath } from "@drawcord/draw";
import { writeRecipe } from "@drawcord/files";
import { type BitGrid, tile } from "@drawcord/grid";
import { drawdownOf, groundPlanOf, isClean, propertiesOf, weaveOf } from "@drawcord/ground";
import { expand, printShafts, type UnitDraft } from "@drawcord/units";
import { fragmentOf } from "../bench/share.js";
import { capital } from "./text.js";

/** The weaves that are shown, by the words that a recipe takes. */
const SHOWN: readonly (readonly [title: string, note: string, weaves: readonly string[]])[] = [
  [
    "Plain weave and what is made of it",
    "Every pick binds every end; nothing in it floats, or only in pairs.",
    ["plain", "warp rib 2/2", "weft rib 2/2", "hopsack 2/2"],
  ],
  [
    "Twills",
    "Each pick moves the binding one end on, so that a line runs over the cloth.",
    ["twill 1/2", "twill 1/3", "twill 2/2", "twill 2/3", "twill 1/5"],
  ],
  [
    "Broken twills",
    "The line is broken so that binding points scatter: on 4 ends this stands in for a satin.",
    ["broken twill 1/3", "broken twill 1/5", "broken twill 1/7", "broken twill 1/7 by fourths"],
  ],
  [
    "Satins",
    "No binding point touches another. The step shares no factor with the ends and is neither 1 nor one less than they are.",
    ["satin 5 step 2", "satin 6", "satin 7 step 2", "satin 8 step 3", "satin 10 step 3", "satin 12 step 5"],
  ],
];

/** How wide a picture of a weave is. */
const WIDE = 150;

/** The gallery of weaves: each with its picture, its plan for long-eyed heddles, how it cuts, and its floats. */
export function weavesPage(): string {
  return [
    "# Weaves",
    "Grounds for a drawloom, as a recipe names them: `ground: { weave: satin 8 step 3 }`. Each is drawn in two repeats each way, dark where the warp lies on the face, the first pick at the bottom; beside it, where a figure has a say in the ground, a square is drawn in it, so that you see how its edges cut. With long-eyed heddles one treadle raises one shaft and sinks another; which goes with which decides whether figure and ground cut cleanly where they meet.",
    ...SHOWN.flatMap(([title, note, weaves]) => [`## ${title}`, note, ...weaves.map(weave)]),
  ].join("\n\n");
}

function weave(name: string): string {
  const drawdown = drawdownOf(weaveOf(name));
  const { balanced, floats, meanFloat, repeat, shafts, treadles, warpFaceShare } = propertiesOf(drawdown);
  const face = balanced
    ? "as much warp as weft on the face"
    : `warp on ${Math.round(warpFaceShare * 1000) / 10} % of the face`;
  const facts = [
    `${many(repeat.ends, "end")} by ${many(repeat.picks, "pick")} in the repeat, on ${many(shafts, "shaft")} and ${many(treadles, "treadle")}; ${face}`,
    `longest floats: warp ${floats.warpFace.longest} on the face and ${floats.warpBack.longest} on the back, weft ${floats.weftFace.longest} on the face and ${floats.weftBack.longest} on the back; ${Math.round(meanFloat * 100) / 100} threads on average`,
    ...cutFacts(name),
  ];
  return [
    `### ${capital(name)}`,
    `<figure class="weave"><div>${pictures(name, drawdown)}</div><figcaption><ul>${facts.map((fact) => `<li>${fact}</li>`).join("")}</ul><a class="to-bench" href="./index.html${fragmentOf(recipeWith(name))}">Weave a square with it on the bench</a></figcaption></figure>`,
  ].join("\n\n");
}

function cutFacts(name: string): readonly string[] {
  const { cut, ground, kind } = groundPlanOf(name);
  if (kind !== "two weaves") return ["the treadles move every shaft: no figure can show in this ground"];
  const pairs = ground.steps
    .map(({ raise, sink }) => `${printShafts(raise)}/${printShafts(sink)}`)
    .join(", ");
  const clean = isClean(cut)
    ? "the figure cuts clean on every side"
    : "the figure does not cut clean on every side";
  return [`raised and sunk, pick by pick: ${pairs}`, clean];
}

/** Two repeats each way, and where a figure has a say, a square drawn in the weave: how it cuts. */
function pictures(name: string, drawdown: BitGrid): string {
  const twice = tile(drawdown, drawdown.rows * 2, drawdown.columns * 2);
  const square = `a square drawn in ${name}`;
  return [
    picture(twice, `${name}, two repeats each way`),
    ...(groundPlanOf(name).kind === "two weaves" ? [picture(expand(squareIn(name)).drawdown, square)] : []),
  ].join("");
}

function picture(grid: BitGrid, label: string): string {
  const { columns, rows } = grid;
  const high = Math.round((WIDE / columns) * rows);
  return `<svg class="cloth-example" role="img" aria-label="${label}" width="${WIDE}" height="${high}" viewBox="0 0 ${columns} ${rows}"><rect class="weft" width="${columns}" height="${rows}"/><path class="warp" d="${squaresPath(grid)}"/></svg>`;
}

/** A square of two units and two rows, drawn in the middle of a cloth of this ground. */
function squareIn(name: string): UnitDraft {
  const { ground } = groundPlanOf(name);
  const size = Math.max(ground.threading.length, ground.steps.length);
  return {
    ground,
    unitEnds: size,
    threading: [[], [1], [1], []],
    lifts: [[], [1], [1], []],
    picksPerRow: size,
  };
}

/** The square as a recipe. */
function recipeWith(name: string): string {
  return writeRecipe({
    title: capital(name),
    weave: name,
    draft: squareIn(name),
    yarns: [],
    cloth: {},
    project: {},
    loom: {},
    limits: {},
    levels: {},
    waive: [],
    stated: [],
  });
}
