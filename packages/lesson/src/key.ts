/** What the teacher has: every answer with what is allowed, and every working as on the board. */
import type { Block, Document, Part } from "@drawcord/page";
import type { Answer, Task } from "./task.js";

/** The key of a class, a part a sheet. */
export function keyDocument(title: string, set: readonly (readonly Task[])[], seed: number): Document {
  return {
    title: `${title}: key`,
    subtitle: `seed ${seed}`,
    parts: set.map((tasks, i) => ({
      name: `sheet-${i + 1}`,
      title: `Sheet ${i + 1}`,
      blocks: [answers(tasks, i), ...pictures(tasks, i)],
    })),
  };
}

/** The worked answers of a class, a part a sheet; sheets with nothing to work out in lines are left out. */
export function workedDocument(title: string, set: readonly (readonly Task[])[], seed: number): Document {
  return {
    title: `${title}: worked answers`,
    subtitle: `seed ${seed}; each line goes on from the digits that the line before shows`,
    parts: set.flatMap((tasks, i): Part[] => {
      const blocks = tasks.flatMap((task, k) => working(task, i, k));
      return blocks.length === 0 ? [] : [{ name: `sheet-${i + 1}`, title: `Sheet ${i + 1}`, blocks }];
    }),
  };
}

function answers(tasks: readonly Task[], sheet: number): Block {
  return {
    kind: "table",
    id: `key-${sheet + 1}`,
    caption: "The answers",
    columns: [
      { title: "Task", kind: "head" },
      { title: "Question" },
      { title: "Answer" },
      { title: "Also counts" },
    ],
    rows: tasks.flatMap((task, i) =>
      task.answers.map((answer) => [
        `${i + 1}`,
        answer.question,
        [{ text: answer.answer, strong: true }],
        allowed(answer),
      ]),
    ),
  };
}

function allowed({ also = [], within = "" }: Answer): string {
  return [...(within === "" ? [] : [`within ${within}`]), ...also].join("; ");
}

function pictures(tasks: readonly Task[], sheet: number): readonly Block[] {
  const filled = tasks.flatMap(({ fill }, i) =>
    fill === undefined
      ? []
      : [
          {
            id: `${fill.id}-key-${sheet + 1}-${i + 1}`,
            caption: `Task ${i + 1}: ${fill.caption}`,
            alt: `The answer of task ${i + 1}.`,
            drawing: fill.filled,
          },
        ],
  );
  return filled.length === 0 ? [] : [{ kind: "pictures", pictures: filled }];
}

function working({ steps, title }: Task, sheet: number, task: number): readonly Block[] {
  if (steps.length === 0) return [];
  return [
    {
      kind: "table",
      id: `working-${sheet + 1}-${task + 1}`,
      caption: `Task ${task + 1}: ${title}`,
      columns: [{ title: "In words" }, { title: "With its numbers" }, { title: "Comes to", kind: "number" }],
      rows: steps.map(({ result, sum, unit, words }) => [
        words,
        sum,
        [{ text: `${result} ${unit}`.trim(), strong: true }],
      ]),
    },
  ];
}
