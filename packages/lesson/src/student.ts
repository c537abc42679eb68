/** The sheet that a student fills in: what is given and asked, and room to write; no answer stands on it. */
import { many } from "@drawcord/base";
import { type Block, type Document, type Part, palette, roomWide } from "@drawcord/page";
import type { Answer, Filling, Task } from "./task.js";

/** Which sheet of a class it is. */
export interface SheetFacts {
  readonly level: number;
  readonly seed: number;
  readonly number: number;
  readonly count: number;
}

/** A student's sheet. */
export function studentDocument(title: string, tasks: readonly Task[], facts: SheetFacts): Document {
  const { count, level, number, seed } = facts;
  const minutes = tasks.reduce((sum, task) => sum + task.minutes, 0);
  const points = tasks.reduce((sum, task) => sum + task.points, 0);
  return {
    title: `${title}: exercise`,
    subtitle: `level ${level}, sheet ${number} of ${count}, seed ${seed}; ${many(minutes, "minute")}, ${many(points, "point")}`,
    parts: [
      {
        name: "name",
        title: "Name and date",
        blocks: [
          {
            kind: "paragraph",
            text: [
              { text: "Name " },
              { text: "_".repeat(34) },
              { text: "  Date " },
              { text: "_".repeat(14) },
              { text: "  Points " },
              { text: "_".repeat(6) },
              { text: ` of ${points}` },
            ],
          },
          {
            kind: "paragraph",
            tone: "note",
            text: "Work without the recipe. Pencil, ruler and a pocket calculator are allowed. Write each answer with its unit.",
          },
        ],
      },
      ...tasks.map((task, i) => taskPart(task, i)),
    ],
  };
}

function taskPart({ answers, ask, fill, minutes, points, room, title }: Task, i: number): Part {
  const blocks: Block[] = [...ask];
  if (fill !== undefined) blocks.push(fillBlock(fill));
  if (answers.length > 0) blocks.push(answerTable(answers, i));
  if (room > 0) blocks.push(workingRoom(room, i));
  return {
    name: `task-${i + 1}`,
    title: `${i + 1}. ${title} (${many(minutes, "minute")}, ${many(points, "point")})`,
    blocks: blocks.map((block) => renamed(block, i)),
  };
}

function fillBlock({ blank, caption, id }: Filling): Block {
  return {
    kind: "pictures",
    pictures: [
      {
        id,
        caption: `${caption}. For you to fill in`,
        alt: `Empty, for you to fill in: ${caption}.`,
        drawing: blank,
      },
    ],
  };
}

/** The longest answers need no more than one line to write on. */
const MOST_SPACE = 46;

/**
 * Room for an answer: half as much again as the answer takes in print, for a hand writes larger, and never so that its
 * length tells the answer.
 */
export function spaceFor(answers: readonly Answer[]): number {
  const longest = Math.max(...answers.map(({ answer }) => answer.length));
  return Math.min(MOST_SPACE, Math.max(12, Math.ceil(longest * 1.5)));
}

function answerTable(answers: readonly Answer[], i: number): Block {
  const space = "_".repeat(spaceFor(answers));
  return {
    kind: "table",
    id: `answers-${i + 1}`,
    caption: "Your answers",
    columns: [{ title: "Question" }, { title: "Answer" }],
    rows: answers.map(({ question }) => [question, [{ text: space }]]),
  };
}

function workingRoom(height: number, i: number): Block {
  return {
    kind: "pictures",
    pictures: [
      {
        id: `room-${i + 1}`,
        caption: "Room for your working",
        alt: "An empty frame for the working.",
        drawing: {
          width: roomWide,
          height,
          shapes: [
            {
              kind: "rect",
              x: 0.2,
              y: 0.2,
              width: roomWide - 0.4,
              height: height - 0.4,
              stroke: palette.rule,
              strokeWidth: 0.2,
            },
          ],
        },
      },
    ],
  };
}

/** Two tasks of a kind may stand on one sheet, but no two pictures of one name. */
function renamed(block: Block, i: number): Block {
  if (block.kind === "table") return { ...block, id: `${block.id}-${i + 1}` };
  if (block.kind !== "pictures") return block;
  return {
    ...block,
    pictures: block.pictures.map((picture) => ({ ...picture, id: `${picture.id}-${i + 1}` })),
  };
}
