/** What the teacher has: every answer with what is allowed, and every working as on the board. */
import type { Block, Document, Part } from "@drawcord/page";
import { renamed } from "./renamed.js";
import type { Answer, Task } from "./task.js";

/** The key of a class, a part a sheet. */
export function keyDocument(title: string, set: readonly (readonly Task[])[], seed: number): Document {
  return {
    title: `${title}: key`,
    subtitle: `seed ${seed}`,
    parts: set.map((tasks, i) => ({
      name: `key-${i + 1}`,
      title: `Sheet ${i + 1}`,
      blocks: [answers(tasks, i), ...pictures(tasks, i)],
    })),
  };
}

/** The worked answers of a class, a part a sheet; sheets with nothing to work out in lines are left out. */
export function workedDocument(title: string, set: readonly (readonly Task[])[], seed: number): Document {
  return {
    title: `${title}: worked answers`,
    subtitle: `seed ${seed}; as a teacher writes them on the board`,
    parts: set.flatMap((tasks, i): Part[] => {
      const blocks = tasks.flatMap((task, k) => working(task, i, k));
      return blocks.length === 0 ? [] : [{ name: `worked-${i + 1}`, title: `Sheet ${i + 1}`, blocks }];
    }),
  };
}

function answers(tasks: readonly Task[], sheet: number): Block {
  return {
    kind: "table",
    id: `key-answers-${sheet + 1}`,
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

/** A task on the board: its steps, a line each, and what is drawn. */
function working({ drawn = [], steps, title }: Task, sheet: number, task: number): readonly Block[] {
  const word = `${sheet + 1}-${task + 1}`;
  const lines: Block[] =
    steps.length === 0
      ? []
      : [
          {
            kind: "table",
            id: "working",
            caption: "Each line goes on from the digits that the line before shows",
            columns: [
              { title: "In words" },
              { title: "In symbols" },
              { title: "With its numbers" },
              { title: "Comes to", kind: "number" },
              { title: "Rounding" },
            ],
            rows: steps.map(({ result, rounding, sum, symbols, unit, words }) => [
              words,
              symbols,
              sum,
              [{ text: `${result} ${unit}`.trim(), strong: true }],
              rounding,
            ]),
          },
        ];
  const blocks = [...lines, ...drawn].map((block) => renamed(block, `worked-${word}`));
  if (blocks.length === 0) return [];
  return [{ kind: "paragraph", tone: "heading", text: `Task ${task + 1}: ${title}` }, ...blocks];
}
