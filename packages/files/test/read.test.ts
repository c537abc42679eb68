import { drawdownOfDraft } from "@drawcord/check";
import { fromText, toText } from "@drawcord/grid";
import { expect, it } from "vitest";
import {
  draftOfRecipe,
  kindOf,
  read,
  soundRecipe,
  writePbm,
  writePng,
  writeTextChart,
  writeWif,
} from "../src/index.js";
import { refusal } from "./refusals.js";
import { leastRecipe, wholeRecipe } from "./samples.js";

const bytes = (text: string) => new TextEncoder().encode(text);
const moth = fromText("#.#\n.#.");

it.each<[string, Uint8Array]>([
  ["png", writePng(moth)],
  ["pbm", writePbm(moth)],
  ["pbm", writePbm(moth, { kind: "P1" })],
  ["text chart", bytes(writeTextChart(moth))],
  ["text chart", bytes(`\uFEFF\r\n${writeTextChart(moth)}`)],
  ["text chart", bytes("###\n#.#\n")],
  ["text chart", bytes("##\n##\n")],
  ["text chart", bytes("#.\n#o\n")],
  ["wif", bytes("; by hand\n\n[wif]\nVersion=1.1\n")],
  ["wif", bytes("[ WIF ] ; by hand\nVersion=1.1\n")],
  ["wif", bytes("[PRIVATE MOTH-2]\nthe lamp\n")],
  ["wif", bytes("\uFEFF[COLOR TABLE]\r\n1=0,0,0\r\n")],
  ["recipe", bytes(wholeRecipe)],
  ["recipe", bytes(leastRecipe)],
  ["recipe", bytes("##\n## a banner\n##\nrecipe: 1\n")],
  ["recipe", bytes("# P1\n")],
  ["recipe", bytes("")],
])("a file of kind %s is known by its content", (kind, content) => {
  expect(kindOf(content)).toBe(kind);
});

it("one door leads to recipes, drafts and charts", () => {
  const recipe = soundRecipe(leastRecipe, "least");
  const draft = draftOfRecipe(recipe);
  const read1 = read(bytes(leastRecipe), "least");
  expect(read1.kind === "recipe" && read1.recipe.draft).toEqual(recipe.draft);
  const read2 = read(bytes(`${writeWif(draft)}[HUMOUR]\n`), "least.wif");
  expect(read2.kind === "draft" && read2.ignored).toEqual(["HUMOUR"]);
  expect(read2.kind === "draft" && drawdownOfDraft(read2.draft).equals(drawdownOfDraft(draft))).toBe(true);
  for (const chart of [
    writePng(moth),
    writePbm(moth),
    writePbm(moth, { kind: "P1" }),
    bytes(writeTextChart(moth)),
  ]) {
    const read3 = read(chart, "moth");
    expect(read3.kind === "chart" && toText(read3.chart)).toBe(toText(moth));
  }
});

it("what cannot be read bears the name it was read by, and a place", () => {
  for (const content of [
    writePng(moth).slice(0, 40),
    bytes("P1\n2 2\n1"),
    bytes("#.\n#o"),
    bytes("[WIF]\nx"),
    bytes("moth"),
  ]) {
    const error = refusal(() => read(content, "moth.recipe.yaml"));
    expect(error.message).toMatch(/^moth\.recipe\.yaml:\d+:\d+: \S/);
  }
});
