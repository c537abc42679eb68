import { exerciseOf, LessonError, taskKinds, taskNames } from "@drawcord/lesson";
import { type Document, plainText, toHtml } from "@drawcord/page";
import { toPdf } from "@drawcord/page/print";
import { describe, expect, it } from "vitest";
import { spaceFor } from "../src/student.js";
import { exampleRecipe } from "./recipes.js";
import { calculator, slowly } from "./slow-answers.js";

const recipes = ["runner", "napkin", "band"].map(exampleRecipe);

/** How many seeds each kind of task is tried with; `LESSON_SEEDS=1000` for a long look. */
const SEEDS = Number(process.env["LESSON_SEEDS"] ?? 40);

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
  it("is answered as a slow way answers it, and its working as a pocket calculator does", () => {
    for (let seed = 0; seed < SEEDS; seed++) {
      const recipe = recipes[seed % recipes.length]!;
      const [level = 1] = taskKinds[name].levels.slice(seed % taskKinds[name].levels.length);
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

  it("has no answer on the student's sheet, and room for each", () => {
    for (let seed = 0; seed < SEEDS; seed++) {
      const { sheets } = exerciseOf(recipes[seed % recipes.length]!, { seed, level: 3, tasks: [name] });
      const [{ document, tasks }] = sheets as [(typeof sheets)[0]];
      const table = document.parts.flatMap(({ blocks }) =>
        blocks.flatMap((block) =>
          block.kind === "table" && block.id.startsWith("answers") ? block.rows : [],
        ),
      );
      const answers = tasks.flatMap((task) => task.answers);
      expect(table.map(([question]) => question)).toEqual(answers.map(({ question }) => question));
      for (const [i, [, space]] of table.entries()) {
        expect(plainText(space!)).toMatch(/^_{12,}$/);
        const length = Math.min(plainText(space!).length, 46);
        expect(length).toBeGreaterThanOrEqual(Math.min(46, answers[i]!.answer.length));
        expect(length).toBe(spaceFor(answers));
      }
      const said = wordsOf(document);
      for (const { answer, within } of answers) if (within !== undefined) expect(said).not.toContain(answer);
    }
  });
});

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
    async (level) => {
      for (const [i, recipe] of recipes.entries()) {
        const { key, sheets } = exerciseOf(recipe, { seed: 11 + i, level });
        const pages = async (document: Document) =>
          [
            ...Buffer.from(await toPdf(document, "a4"))
              .toString("latin1")
              .matchAll(/\/Type \/Page\b(?!s)/g),
          ].length;
        expect(await pages(sheets[0]!.document)).toBe(2);
        expect(await pages(key)).toBe(1);
      }
    },
  );

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
