import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";

const root = join(import.meta.dirname, "..");

/** Phrases that the trade does not know, or knows for another thing. */
const RETIRED = [
  /weft in the mean|shares in the mean/,
  /one after the other are open|"picks one after the other"/,
  /cuts? (sideways|lengthways)|"lengthways"/i,
  /has not what the plan|plan asks for/,
  /and (it )?comes out as|as width in reed/,
  /\d\} grasps|fewer grasps/,
  /runs on round/,
  /own mirror but/,
  /row \S+ alone is not the same/,
  /draw in unlike/,
  /areas are told|area is told of|squares turned are/,
  /sleazy/,
  /draw (many units|it) in steps/i,
  /has no say/,
  /no fellow|one fellow/,
  /odd round/,
  /\} up and \S+ out/,
  /to have at the loom/,
  /stand here once|stand once, with/,
  /`time \$/,
  /Warp on top of the face/,
  /title: "Patch"/,
  /front harness/,
  /portees?\b/i,
  /\bbouts?\b/i,
  /published dictionary/,
  /draws? in (unlike|otherwise)/,
  /\bit hangs on (how|what)/,
  /(never|not|are) told\. Usual|never told/,
  /so are the rivals|Its rivals/,
  /gives a rule another weight/,
];

/** A well-known set of numbers, which may stand only where it is checked. */
const BORROWED =
  /\b(564|141 (units|lingos)|(units|lingos): 141|680 picks|picks: 680|14\.1 in|(17|6)-inch|17 inch|17 in\b|6 (yards|yd)\b|40 (an|per) inch)|(?<![\d/])(16|8)\/2 (Ne|cotton)|\b(Ne|[Cc]otton) (16|8)\/2/;

/** The checks marked common practice that hold them. */
const MARKED: readonly (readonly [file: string, line: RegExp])[] = [
  ["packages/yarn/test/common-practice.test.ts", /./],
  [
    "packages/yarn/src/count/common-yarns.ts",
    /\{ fibre: "cotton", yarn: "(16|8)\/2 Ne", yardsInAPound: \d+ \}/,
  ],
  ["packages/yarn/test/published.test.ts", /^\s*\["(16|8)\/2 Ne", (6720|3360)\],$/],
  ["packages/units/test/loom.test.ts", /141/],
  ["packages/units/test/threading.test.ts", /common practice/],
];

/** Every text a reader may meet: sources, READMEs and pages; not what a build has written. */
function* texts(folder: string, passed = /^(test|bench)$/): Iterable<string> {
  for (const entry of readdirSync(join(root, folder), { withFileTypes: true })) {
    const path = `${folder}/${entry.name}`;
    if (entry.isDirectory()) {
      const built = /^(node_modules|dist|generated|coverage|cache|reference)$/.test(entry.name);
      if (!built && !passed.test(entry.name)) yield* texts(path, passed);
    } else if (/\.(ts|mjs|vue|md|json|yaml|wif)$/.test(entry.name)) yield path;
  }
}

const shown = [...texts("packages"), ...texts("docs"), ...texts(".changeset"), "README.md"].filter(
  (path) => !/CHANGELOG|package\.json|tsconfig|drawing\/metrics\.ts|changeset\/plain-words/.test(path),
);

/** The lines of all texts that hold a pattern, each with its place. */
function linesWith(pattern: RegExp): string[] {
  return shown.flatMap((path) =>
    readFileSync(join(root, path), "utf8")
      .split("\n")
      .flatMap((line, i) => (pattern.test(line) ? [`${path}:${i + 1}: ${line.trim().slice(0, 120)}`] : [])),
  );
}

it("finds the texts of all packages", () => {
  expect(shown.length).toBeGreaterThan(400);
  expect(linesWith(/double passes/).length).toBeGreaterThan(0);
});

it.each(RETIRED)("no text says %s", (phrase) => {
  expect(linesWith(phrase)).toEqual([]);
});

/** The lines of a file, a test or an example recipe among them, that hold a number of the set and no marked check. */
function borrowedIn(path: string): string[] {
  const marked = MARKED.find(([file]) => file === path)?.[1];
  return readFileSync(join(root, path), "utf8")
    .split("\n")
    .flatMap((line, i) =>
      BORROWED.test(line) && !marked?.test(line) ? [`${path}:${i + 1}: ${line.trim()}`] : [],
    );
}

it("no example borrows a well-known set of numbers, in texts, tests and recipes alike", () => {
  const all = ["packages", "docs", "shared", "tests", ".changeset"].flatMap((folder) => [
    ...texts(folder, /^$/),
  ]);
  const looked = [...all, "README.md"].filter(
    (path) => !/CHANGELOG|drawing\/metrics\.ts|tests\/words\.test\.ts/.test(path),
  );
  expect(looked.length).toBeGreaterThan(700);
  expect(looked.flatMap(borrowedIn)).toEqual([]);
});

it.each(MARKED)("%s, where the set is checked, says that it is common practice", (path) => {
  expect(readFileSync(join(root, path), "utf8")).toMatch(/common practice/i);
});
