/** The sheet that a student fills in: what is given and asked, and room to write; no answer stands on it. */
import { many } from "@drawcord/base";
import { type Block, type Document, type Part, palette, roomWide } from "@drawcord/page";
import { linesFor, linesPicture, needsLines, spaceFor } from "./answer-space.js";
import { renamed } from "./renamed.js";
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
    subtitle: `sheet ${number} of ${count}, level ${level}, seed ${seed}; ${many(minutes, "minute")}, ${many(points, "point")}`,
    parts: [
      {
        name: `sheet-${number}-name`,
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
            text: "Work without the recipe; a pocket calculator is allowed. Read a task to its end before you begin. Write answers with their units, and the working into its frame or on the back: it counts too.",
          },
        ],
      },
      ...tasks.map((task, i) => taskPart(task, i, number)),
    ],
  };
}

function taskPart(
  { answers, ask, fill, minutes, points, room, title }: Task,
  i: number,
  sheet: number,
): Part {
  const blocks: Block[] = [...ask];
  if (fill !== undefined) blocks.push(fillBlock(fill));
  blocks.push(...answerBlocks(answers));
  if (room > 0) blocks.push(workingRoom(room));
  return {
    name: `sheet-${sheet}-task-${i + 1}`,
    title: `${i + 1}. ${title} (${many(minutes, "minute")}, ${many(points, "point")})`,
    blocks: blocks.map((block) => renamed(block, `${sheet}-${i + 1}`)),
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

/** Questions with their room: short answers in one table, long ones each on lines of its own. */
function answerBlocks(answers: readonly Answer[]): readonly Block[] {
  const blocks: Block[] = [];
  for (let i = 0; i < answers.length; ) {
    const rest = answers.slice(i);
    const long = rest.findIndex(needsLines);
    if (long === 0) {
      const [answer] = rest as [Answer];
      blocks.push(
        { kind: "paragraph", text: answer.question },
        { kind: "pictures", pictures: [linesPicture(`lines-${i + 1}`, linesFor(answer))] },
      );
      i++;
    } else {
      const short = long < 0 ? rest : rest.slice(0, long);
      blocks.push(answerTable(short, i));
      i += short.length;
    }
  }
  return blocks;
}

function answerTable(answers: readonly Answer[], i: number): Block {
  const space = spaceFor(answers);
  return {
    kind: "table",
    id: `answers-${i + 1}`,
    caption: "Your answers",
    columns: [{ title: "Question" }, { title: "Answer" }],
    rows: answers.map(({ question }) => [question, [{ text: space }]]),
  };
}

function workingRoom(height: number): Block {
  return {
    kind: "pictures",
    pictures: [
      {
        id: "room",
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
