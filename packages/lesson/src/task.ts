/** What every kind of task is made of. */
import type { Recipe } from "@drawcord/files";
import type { Block, Drawing } from "@drawcord/page";
import type { Dice } from "./random.js";

/** 1 for beginners, 3 for those who design. */
export type Level = 1 | 2 | 3;

/** One line of a working as it is written on the board. A pocket calculator that is fed `sum` shows `result`. */
export interface WorkingLine {
  /** The formula in words. */
  readonly words: string;
  /** The same in symbols: `e = u × n`. */
  readonly symbols: string;
  /** The numbers put in: `81 × 4`. */
  readonly sum: string;
  /** What comes out, to the digits shown. */
  readonly result: string;
  /** Empty for a bare number. */
  readonly unit: string;
  /** How far it is rounded, in words: `to 1 decimal`; empty where the sum comes out even. */
  readonly rounding: string;
}

/** A question and its answer. */
export interface Answer {
  /** What is asked. */
  readonly question: string;
  /** The right answer, as it stands in the key. */
  readonly answer: string;
  /** How far an answer may be off: `0.2 cm`; nothing where it may not. */
  readonly within?: string;
  /** Other answers that count. */
  readonly also?: readonly string[];
  /** Whether it is said in words of one's own, which only a teacher can judge; default false. */
  readonly own?: boolean;
}

/** A picture that is to be filled in. */
export interface Filling {
  /** One word that is the picture's own on the sheet. */
  readonly id: string;
  /** What is to be filled in, as a line under the picture. */
  readonly caption: string;
  /** As the student gets it. */
  readonly blank: Drawing;
  /** As the key shows it. */
  readonly filled: Drawing;
}

/** A task set for one student. */
export interface Task {
  /** Its heading, without the number. */
  readonly title: string;
  /** How long it usually takes, in minutes. */
  readonly minutes: number;
  /** What it counts when all of it is right. */
  readonly points: number;
  /** What is given and asked. */
  readonly ask: readonly Block[];
  /** Its questions in order, each with the answer. */
  readonly answers: readonly Answer[];
  /** What is to be filled in. */
  readonly fill?: Filling;
  /** The working as on the board. */
  readonly steps: readonly WorkingLine[];
  /** What else the teacher draws on the board. */
  readonly drawn?: readonly Block[];
  /** What is given, as data, for whoever works the answers out another way. */
  readonly given: unknown;
  /** Room for the working, in mm of the height of the page. */
  readonly room: number;
}

/** A kind of task: makes one from a recipe, for the dice thrown. */
export interface TaskKind {
  /** One line for a teacher. */
  readonly summary: string;
  /**
   * Makes a task from a recipe.
   * @param recipe the recipe that the class works on
   * @param dice what is chosen by chance is thrown with these
   * @param level 1 for beginners to 3
   */
  readonly make: (recipe: Recipe, dice: Dice, level: Level) => Task;
}

/** A paragraph of a task. */
export function sayTask(text: string): Block {
  return { kind: "paragraph", text };
}
