import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { rulePages, rules } from "@drawcord/check";
import { soundRecipe } from "@drawcord/files";
import { plainText } from "@drawcord/page";
import { glossary, makeSheet, partNames, termsIn } from "@drawcord/sheet";
import { formulas } from "@drawcord/yarn";
import { expect, it } from "vitest";

const root = join(import.meta.dirname, "..");

/** Words of the trade, written down from the house's own list of terms and not from the glossary. */
const TRADE =
  "area, binding point, block, broken twill, chain, choke tie, cord, count, countermarch, cross, cut, damask, dent, double pass, draw, draw-in, drawdown, drawloom, end, face, fell, figure, float, fringe, ground, ground harness, ground shaft, handle, heddle, hem, interlacement, intersection, lamm, layer, leash, lift, lingo, loom waste, mail, paddle, pattern harness, pattern shaft, pattern weft, pick, piece, plain weave, point, reed, repeat, row, satin, selvedge, sett, shaft, shed, shrinkage, single-unit draw, sink, sley, static unit, take-up, threading, tie, tie-up, treadle, treadling, twill, unit, unit threading, warp, weft".split(
    ", ",
  );

/** Words that the house no longer uses, or never did. */
const RETIRED =
  /\b(portees?|bouts?|isonemal|sleazy|grasps?|fellow|rivals|front harness|simple cord|tie-down)\b/i;

/** Texts in quotes and templates of a source: what may be printed. */
function printed(path: string): string {
  const text = readFileSync(path, "utf8").replace(/^import .*$|^ *\*.*$|^\/\*\*.*$/gm, "");
  return (text.match(/"[^"\n]*"|`[^`]*`/g) ?? []).filter((one) => / /.test(one)).join("\n");
}

/** Everything that a reader of sheets, reports, rules and formulas meets. */
function messages(): string {
  const sources = [
    "check",
    "causes",
    "review",
    "sheet",
    "lesson",
    "follow",
    "ground",
    "units",
    "files",
  ].flatMap((name) => {
    const src = join(root, "packages", name, "src");
    return readdirSync(src, { recursive: true, encoding: "utf8" })
      .filter((file) => file.endsWith(".ts") && !/generated|glossary/.test(file))
      .map((file) => printed(join(src, file)));
  });
  const pages = rules.map(({ name }) =>
    Object.values(rulePages[name]).filter((text) => typeof text === "string"),
  );
  const worked = Object.values(formulas).flatMap(({ symbols, title }) => [
    title,
    ...Object.values(symbols).map(({ meaning }) => meaning),
  ]);
  return [...sources, ...pages.flat(), ...worked].join("\n");
}

it("every term that messages and sheets use has its entry, and every entry is used", () => {
  const text = messages();
  const known = new Set(glossary.flatMap(({ forms = [], term }) => [term, ...forms]));
  const used = TRADE.filter((term) => new RegExp(`\\b${term}s?\\b`, "i").test(text));
  expect(used.length).toBeGreaterThan(60);
  expect(used.filter((term) => !known.has(term))).toEqual([]);
  const met = new Set(termsIn(text));
  expect(glossary.filter((entry) => !met.has(entry)).map(({ term }) => term)).toEqual([]);
});

it("has one entry a term, in the order of the alphabet, and none of the words that are retired", () => {
  const terms = glossary.map(({ term }) => term);
  expect(terms).toEqual([...new Set(terms)].sort((a, b) => a.localeCompare(b, "en")));
  const forms = glossary.flatMap(({ forms = [], term }) => [term, ...forms]);
  expect(new Set(forms).size).toBe(forms.length);
  for (const { meaning, term } of glossary) {
    expect(`${term}: ${meaning}`).not.toMatch(RETIRED);
    expect(meaning, term).toMatch(/^[A-Z].*\.$/);
  }
});

it("the words of an entry that are terms have entries of their own", () => {
  const known = new Set(glossary.flatMap(({ forms = [], term }) => [term, ...forms]));
  for (const { meaning } of glossary) {
    for (const word of TRADE) {
      if (new RegExp(`\\b${word}s?\\b`, "i").test(meaning)) expect(known).toContain(word);
    }
  }
});

it("as a part of a sheet it has the terms of that sheet, and no others", () => {
  const file = join(root, "shared/recipes/runner.recipe.yaml");
  const recipe = soundRecipe(readFileSync(file, "utf8"), file);
  const [part] = makeSheet(recipe, { parts: ["glossary"] }).parts;
  const table = part?.blocks.find((block) => block.kind === "table");
  const terms = table?.kind === "table" ? table.rows.map(([term]) => plainText(term!)) : [];
  expect(partNames.at(-1)).toBe("glossary");
  expect(terms).toContain("lingo");
  expect(terms).toContain("countermarch");
  expect(terms).not.toContain("half-heddle stick");
  expect(terms.length).toBeLessThan(glossary.length);
});
