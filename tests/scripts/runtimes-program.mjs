/** What `npm run runtimes` runs in each runtime: it uses every package, and prints one hash of all the bytes that come out. */
import { chartCloth } from "@drawcord/chart";
import { check } from "@drawcord/check";
import { drawPixels, drawSvg } from "@drawcord/draw";
import {
  draftOfRecipe,
  drawdownOfRecipe,
  readRecipe,
  soundRecipe,
  starterRecipe,
  writePbm,
  writePng,
  writeRecipe,
  writeWif,
} from "@drawcord/files";
import { followPage, followPlan } from "@drawcord/follow";
import { fromCells, fromText, toText } from "@drawcord/grid";
import { planOf } from "@drawcord/ground";
import { exerciseOf } from "@drawcord/lesson";
import { toHtml, toMarkdown } from "@drawcord/page";
import { checkRecipe } from "@drawcord/review";
import { makeSheet } from "@drawcord/sheet";
import { expand } from "@drawcord/units";
import { explain, tex } from "@drawcord/yarn";

const recipe = soundRecipe(starterRecipe(), "starter");
const faulty = { ...recipe.draft, lifts: recipe.draft.lifts.with(1, [99]) };
const cloth = drawdownOfRecipe(recipe);
const wanted = fromCells(12, 12, (row, unit) => (row * row + unit * 3) % 5 < 2);
const sheet = makeSheet(recipe);
const outputs = [
  toText(cloth),
  toText(expand(recipe.draft).drawdown),
  JSON.stringify(check(faulty)),
  JSON.stringify(checkRecipe(recipe)),
  JSON.stringify(readRecipe("recipe: 1\nthredding: 1\n", "broken")),
  JSON.stringify(planOf("satin 8 step 3")),
  JSON.stringify(chartCloth(wanted, { shafts: 4 }).threading),
  writeRecipe(recipe),
  writeWif(draftOfRecipe(recipe)),
  drawSvg(fromText("#.\n.#"), { warp: ["#000000"], weft: ["#ffffff"], scale: 4 }),
  explain(tex("20/2 Ne")).text,
  followPage(followPlan(recipe)),
  JSON.stringify(exerciseOf(recipe, { level: 2, seed: 7, count: 3 })),
  toHtml(sheet),
  JSON.stringify(toMarkdown(sheet)),
].map((text) => new TextEncoder().encode(text));
const pictures = [
  writePbm(cloth),
  writePng(cloth),
  drawPixels(cloth, { warp: ["#112233"], weft: ["#ffffff"], scale: 3 }).data,
];
const bytes = await new Blob([...outputs, ...pictures]).arrayBuffer();
const hash = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
console.log(`${bytes.byteLength} ${Array.from(hash, (byte) => byte.toString(16).padStart(2, "0")).join("")}`);
