import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";

const root = join(import.meta.dirname, "..");

/** The printed works that values are checked against: by whom, and what must stand behind the name. */
const WORKS = [
  [/J\. T\. Taylor/, /^J\. T\. Taylor, Cotton Weaving and Designing, (6th ed\.,? )?1909/],
  [/T\. F\. Bell/, /^T\. F\. Bell, Jacquard Weaving and Designing, 1895/],
  [/A\. Wolfensberger/, /^A\. Wolfensberger, Theory of Silk Weaving, (2nd ed\.,? )?1921/],
  [/C\. P\. Brooks/, /^C\. P\. Brooks, Cotton Manufacturing, 1888 \(the year from memory/],
  [
    /F\. T\. Peirce/,
    /^F\. T\. Peirce, The Geometry of Cloth Structure, Journal of the Textile Institute 28, 1937/,
  ],
  [
    /C\. R\. J\. Clapham/,
    /^C\. R\. J\. Clapham, "?When a fabric hangs together,?"?,? Bulletin of the London Mathematical Society 12/,
  ],
  [
    /ASTM D2260/,
    /^ASTM D2260(, Standard Tables of Conversion Factors and Equivalent Yarn Numbers)?, Table 1/,
  ],
  [/Sett Systems/, /^Sett Systems, Dictionary of the English textile terms, 2014 \(online\)/],
  [/Graduate Aptitude/, /^Graduate Aptitude Test in Engineering, paper Textile/],
] as const;

/** A year or a page right behind an author's name: a reference without its work. */
const SHORT = /\b(Taylor|Bell|Wolfensberger|Brooks|Peirce|Clapham),? (18|19|20)\d\d/;

function* texts(folder: string): Iterable<string> {
  for (const entry of readdirSync(join(root, folder), { withFileTypes: true })) {
    const path = `${folder}/${entry.name}`;
    if (entry.isDirectory()) {
      if (!/^(node_modules|dist|generated|\..*)$/.test(entry.name)) yield* texts(path);
    } else if (/\.(ts|mjs|md)$/.test(entry.name) && path !== "tests/sources.test.ts") yield path;
  }
}

/** All texts, each in one line, comments without their stars. */
const all = ["packages", "tests", "docs"].flatMap((folder) =>
  [...texts(folder)].map((path) => ({
    path,
    text: readFileSync(join(root, path), "utf8")
      .replace(/\s*\n\s*(\/\/)?\s*/g, " ")
      .replace(/\*+ ?/g, ""),
  })),
);

it.each(WORKS)("%s is named with work and year wherever it stands", (name, whole) => {
  const found = all.flatMap(({ path, text }) =>
    [...text.matchAll(new RegExp(name, "g"))].map(({ index }) => ({
      path,
      said: text.slice(index, index + 160),
    })),
  );
  expect(found.length).toBeGreaterThan(0);
  expect(found.filter(({ said }) => !whole.test(said))).toEqual([]);
});

it("no year stands for a work", () => {
  expect(all.flatMap(({ path, text }) => (SHORT.test(text) ? [path] : []))).toEqual([]);
});
