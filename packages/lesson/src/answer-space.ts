/** Room to write on: so wide as the longest answer needs by hand, and never so that its length tells the answer. */
import { type Picture, palette, roomWide, textWidth } from "@drawcord/page";
import type { Answer } from "./task.js";

/** A hand writes half as wide again as the type of a table's cells, which is so high in mm. */
const BY_HAND = 1.5;
const CELL = 3.175;

/** The widest space beside a question, in mm; a longer answer is written on lines of its own below its question. */
const BESIDE = 72;

/** Least space in mm: a number with its unit. */
const LEAST = 22;

const LINE_HIGH = 7;

/** Width in mm that a hand needs for an answer. */
function handWidth({ answer }: Answer): number {
  return textWidth(answer, CELL, "sans") * BY_HAND;
}

/** Whether an answer is written on lines of its own. */
export function needsLines(answer: Answer): boolean {
  return handWidth(answer) > BESIDE;
}

/** The space for each of some short answers: alike for all, for the longest of them. */
export function spaceFor(answers: readonly Answer[]): string {
  const widest = Math.max(LEAST, ...answers.map(handWidth));
  return "_".repeat(Math.ceil(widest / textWidth("_", CELL, "sans")));
}

/** How many lines a long answer is given. */
export function linesFor(answer: Answer): number {
  return Math.max(1, Math.ceil(handWidth(answer) / (roomWide * 0.92)));
}

/** Lines to write on. */
export function linesPicture(id: string, lines: number): Picture {
  const height = lines * LINE_HIGH;
  const at = Array.from({ length: lines }, (_, i) => `M0 ${(i + 1) * LINE_HIGH - 0.2}h${roomWide}`);
  return {
    id,
    caption: "",
    alt: `${lines} empty lines to write on.`,
    drawing: {
      width: roomWide,
      height,
      shapes: [{ kind: "path", d: at.join(""), stroke: palette.muted, width: 0.2 }],
    },
  };
}
