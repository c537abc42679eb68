import { exerciseOf, LessonError, taskNames, usualTasks } from "@drawcord/lesson";
import { type Block, type Document, plainText, textWidth, toHtml, toMarkdown } from "@drawcord/page";
import { describe, expect, it } from "vitest";
import { layDocument } from "../../page/src/layout/document.js";
import { toPdf } from "../../page/src/print/to-pdf.js";
import { studentDocument } from "../src/student.js";
import { exampleRecipe } from "./recipes.js";
import { calculator, slowly } from "./slow-answers.js";

const recipes = ["runner", "napkin", "band"].map(exampleRecipe);

/** How many seeds each kind of task is tried with; `LESSON_SEEDS=1000` for a long look. */
const LONG = process.env["LESSON_SEEDS"];

/** All the words of a document. */
function wordsOf(document: Document): string {
  return document.parts
    .flatMap(({ blocks, title }) => [
      title,
      ...blocks.flatMap((block) => {
        if (block.kind === "paragraph") return [plainText(block.text)];
        if (block.kind === "table") return [block.caption, ...block.rows.flat().map(plainText)];
        return block.kind === "pictures" ? block.pictures.map(({ alt, caption }) => `${caption} ${alt}`) : [];
      }),
    ])
    .join("\n");
}

describe.each(taskNames)("the task %s", (name) => {
  // Slips are looked for by making every edit, which takes its time.
  const SEEDS = Number(LONG ?? (name === "slip" ? 6 : 18));

  it("is answered as a slow way answers it, and its working as a pocket calculator does", () => {
    for (let seed = 0; seed < SEEDS; seed++) {
      const recipe = recipes[seed % recipes.length]!;
      const level = ([1, 2, 3] as const)[seed % 3]!;
      const { sheets } = exerciseOf(recipe, { seed, level, tasks: [name] });
      const [task] = sheets[0]!.tasks;
      slowly[name]!(task!);
      for (const { result, sum } of task!.steps) {
        const decimals = result.split(".")[1]?.length ?? 0;
        expect(Math.abs(calculator(sum) - Number(result)), sum).toBeLessThanOrEqual(
          0.5 / 10 ** decimals + 1e-9,
        );
      }
    }
  });

  it("has no answer on the student's sheet: nothing there depends on one but the width of its space", () => {
    for (let seed = 0; seed < SEEDS; seed++) {
      const { sheets } = exerciseOf(recipes[seed % recipes.length]!, { seed, level: 3, tasks: [name] });
      const [{ document, tasks }] = sheets as [(typeof sheets)[0]];
      const [task] = tasks as [(typeof tasks)[0]];
      const turned = (text: string) => [...text].toReversed().join("");
      const other = {
        ...task,
        answers: task.answers.map((answer) => ({
          ...answer,
          answer: turned(answer.answer),
          also: ["other"],
        })),
        ...(task.fill && { fill: { ...task.fill, filled: task.fill.blank } }),
        steps: [],
        drawn: [],
      };
      const facts = { level: 3, seed, number: 1, count: 1 };
      const title = document.title.replace(/: exercise$/, "");
      expect(studentDocument(title, [other], facts)).toEqual(document);
      const said = wordsOf(document);
      for (const { answer, also = [], own, within } of task.answers) {
        const told = [...(own || within !== undefined ? [answer] : []), ...(own ? also : [])];
        for (const one of told) expect(said).not.toContain(one);
      }
    }
  });

  it("has room for its longest answer, written by hand", () => {
    for (let seed = 0; seed < SEEDS; seed++) {
      const { sheets } = exerciseOf(recipes[seed % recipes.length]!, { seed, level: 3, tasks: [name] });
      const [{ document, tasks }] = sheets as [(typeof sheets)[0]];
      const blocks = document.parts[1]!.blocks;
      for (const { answer, question } of tasks[0]!.answers) {
        const needed = textWidth(answer, 3.175, "sans") * 1.5;
        expect(roomAfter(blocks, question), `${question}: ${answer}`).toBeGreaterThanOrEqual(needed);
      }
    }
  });
});

/** Millimetres to write on beside or below a question. */
function roomAfter(blocks: readonly Block[], question: string): number {
  for (const [i, block] of blocks.entries()) {
    if (block.kind === "table") {
      const row = block.rows.find(([asked]) => plainText(asked!) === question);
      if (row !== undefined) return textWidth(plainText(row[1]!), 3.175, "sans");
    }
    if (block.kind !== "paragraph" || plainText(block.text) !== question) continue;
    const lines = blocks[i + 1];
    if (lines?.kind !== "pictures") return 0;
    const [shape] = lines.pictures[0]!.drawing.shapes;
    const runs = shape?.kind === "path" ? [...shape.d.matchAll(/h([\d.]+)/g)] : [];
    return runs.reduce((sum, [, length]) => sum + Number(length), 0);
  }
  return 0;
}

describe("a class", () => {
  it("is set alike for one seed, and unlike for neighbours and for another seed", () => {
    const [runner] = recipes;
    for (const level of [1, 2, 3] as const) {
      const set = exerciseOf(runner!, { seed: 5, level, count: 24 });
      expect(exerciseOf(runner!, { seed: 5, level, count: 24 })).toEqual(set);
      for (const [i, { tasks }] of set.sheets.entries()) {
        tasks.forEach((task, k) => {
          const beside = set.sheets[i - 1]?.tasks[k];
          if (beside !== undefined) expect(task.given).not.toEqual(beside.given);
          // Of like difficulty: as many points and minutes for every student.
          expect([task.points, task.minutes].join()).toBe(
            [set.sheets[0]!.tasks[k]!.points, set.sheets[0]!.tasks[k]!.minutes].join(),
          );
        });
      }
      expect(exerciseOf(runner!, { seed: 6, level, count: 24 }).sheets[0]!.tasks).not.toEqual(
        set.sheets[0]!.tasks,
      );
    }
  });

  it("has the same answers in its key as in its tasks, every one", () => {
    const { key, sheets } = exerciseOf(recipes[0]!, { seed: 3, level: 2, count: 3 });
    for (const [i, { tasks }] of sheets.entries()) {
      const [table] = key.parts[i]!.blocks;
      const answers = table!.kind === "table" ? table!.rows.map((row) => plainText(row[2]!)) : [];
      expect(answers).toEqual(tasks.flatMap((task) => task.answers.map(({ answer }) => answer)));
    }
  });

  it.each([1, 2, 3] as const)(
    "takes two pages a student at level %i, and one for the key of each",
    (level) => {
      for (const [i] of usualTasks[level].entries()) {
        for (const recipe of recipes) {
          const { key, sheets } = exerciseOf(recipe, { seed: i + 12, level, count: 2 });
          for (const height of [255, 237.4]) {
            for (const { document } of sheets)
              expect(
                layDocument(document, 170, height).pages.length,
                `${level} ${i} ${recipe.title} ${height}`,
              ).toBe(2);
            for (const part of key.parts) {
              expect(layDocument({ ...key, parts: [part] }, 170, height).pages.length).toBe(1);
            }
          }
        }
      }
    },
  );

  it("is bound as one PDF, each sheet from a page of its own on, the key and the worked answers last", async () => {
    const { bound, sheets } = exerciseOf(recipes[0]!, { seed: 2, level: 2, count: 3 });
    const pdf = Buffer.from(await toPdf(bound, "a4")).toString("latin1");
    const pages = bound.reduce((sum, one) => sum + layDocument(one, 170, 255).pages.length, 0);
    expect([...pdf.matchAll(/\/Type \/Page\b(?!s)/g)].length).toBe(pages);
    expect(bound.length).toBe(sheets.length + 2);
    const html = toHtml(bound);
    const ids = [...html.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(html.match(/<h1 /g)?.length).toBe(5);
    expect(toMarkdown(bound).match(/^# /gm)?.length).toBe(5);
  });

  it("can be read as a page", () => {
    const { sheets } = exerciseOf(recipes[0]!, { seed: 3, level: 1 });
    expect(toHtml(sheets[0]!.document)).toContain("to fill in");
  });

  it("refuses what cannot be set, in a sentence", () => {
    const [runner] = recipes;
    expect(() => exerciseOf(runner!, { count: 201 })).toThrow(
      "the number of sheets is given as 201; expected a whole number from 1 to 200",
    );
    expect(() => exerciseOf(runner!, { seed: 1.5 })).toThrow(LessonError);
    expect(() => exerciseOf(runner!, { tasks: ["song"] })).toThrow('there is no task "song"');
  });
});
