import { formulaText, type WorkingBlock } from "@drawcord/page";
import { describe, expect, it } from "vitest";
import { makeSheet } from "../src/index.js";
import { exampleRecipe } from "./recipes.js";

const names = ["runner", "napkin", "band", "seasons"] as const;
const systems = ["metric", "imperial", "both"] as const;

function workingsOf(name: (typeof names)[number], units: (typeof systems)[number]): WorkingBlock[] {
  const [part] = makeSheet(exampleRecipe(name), { parts: ["working"], units }).parts;
  return part!.blocks.filter((block) => block.kind === "working");
}

/** A pocket calculator: it knows numbers, the signs between them, percent, roots and rounding, and no units. */
function keyedIn(formula: string): number {
  const keys = formula
    .replace(/^.*? = /, "")
    .replaceAll(/([\d.]+) %/g, "($1/100)")
    .replaceAll(
      /(per (cm|inch)|g\/m²|oz\/yd²|g\/cm³|\b(tex|cm|mm|m|in|yd|oz|g|kg|km|lb|ends?|picks?|pieces?|rows?|units?|threads?)\b)/g,
      "",
    )
    .replaceAll("·", "*")
    .replaceAll("−", "-")
    .replaceAll("^", "**")
    .replaceAll(/√([\d.]+)/g, "Math.sqrt($1)")
    .replaceAll("√(", "Math.sqrt(")
    .replaceAll("max(", "Math.max(")
    .replaceAll("⌊", "Math.floor(0.5+")
    .replaceAll("⌈", "Math.ceil(")
    .replaceAll(/[⌉⌋]/g, ")");
  expect(keys, formula).toMatch(/^(Math\.(sqrt|max|floor|ceil)|[\d\s.+*/(),e-])+$/);
  return Number(new Function(`return ${keys}`)());
}

/** How many figures a number is printed with. */
const figures = (text: string) => text.replace(/e.*$/, "").replaceAll(/[^\d]/g, "").replace(/^0+/, "").length;

/** Whether what a calculator shows is what is printed, to its last figure. */
function agrees(shown: number, printed: string): boolean {
  if (Number(printed) === 0) return Math.abs(shown) < 1e-4;
  return Number(shown.toPrecision(Math.max(1, figures(printed)))) === Number(printed);
}

describe("the workings", () => {
  it.each(names.flatMap((name) => systems.map((units) => [name, units] as const)))(
    "of the %s in %s units agree with a pocket calculator to the last figure, step by step",
    (name, units) => {
      const workings = workingsOf(name, units);
      expect(workings.length).toBeGreaterThan(5);
      const wrong = workings.filter(({ substitution, result }) => {
        const shown = keyedIn(formulaText(substitution));
        const [, first, sign, by, end] = /^(?:([\d.e-]+) ([×÷]) ([\d.e-]+) = )?(-?[\d.e-]+)/.exec(result)!;
        if (first === undefined) return !agrees(shown, end!);
        const next = sign === "×" ? Number(first) * Number(by) : Number(first) / Number(by);
        return !(agrees(shown, first) && agrees(next, end!));
      });
      expect(
        wrong.map(({ title, substitution, result }) => [title, formulaText(substitution), result]),
      ).toEqual([]);
    },
  );

  it("are in the units of the sheet", () => {
    const said = workingsOf("runner", "imperial").flatMap(({ substitution, result }) => [
      formulaText(substitution),
      result,
    ]);
    expect(said.filter((text) => /\d (mm|cm|m|g|kg)\b/.test(text))).toEqual([]);
    expect(said.join("\n")).toContain("66.482 per inch, said as 66.5 per inch");
  });

  it("name the yarn of every weight, and the working that each value is from", () => {
    for (const name of names) {
      const workings = workingsOf(name, "metric");
      const titles = workings.map(({ title }) => title.replace(/^\d+\. /, ""));
      expect(titles.filter((title) => title === "Weight of yarn")).toEqual([]);
      workings.forEach(({ symbols }, i) => {
        for (const [, from] of JSON.stringify(symbols).matchAll(/\(from (\d+)\)/g)) {
          expect(Number(from)).toBeLessThanOrEqual(i);
        }
      });
    }
    expect(JSON.stringify(workingsOf("runner", "metric"))).toMatch(/\d+ tex \(from \d+\)/);
  });

  it("are numbered in the table of the project's numbers", () => {
    const [part] = makeSheet(exampleRecipe("runner"), { parts: ["working"] }).parts;
    const table = part!.blocks.find((block) => block.kind === "table" && block.id === "project-numbers");
    const rows = table?.kind === "table" ? table.rows : [];
    const workings = workingsOf("runner", "metric");
    const byName = new Map(rows.map(([what, , number]) => [what, number]));
    const number = Number(byName.get("Weight of the warp"));
    expect(workings[number - 1]!.title).toBe(`${number}. Weight of yarn: weight of the warp`);
    expect(rows.filter(([, , of]) => of !== "").length).toBeGreaterThan(20);
  });
});
