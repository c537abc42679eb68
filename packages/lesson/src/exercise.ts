import { needRecipe, type Recipe } from "@drawcord/files";
import type { Bound, Document } from "@drawcord/page";
import { LessonError } from "./error.js";
import { forSlides } from "./for-slides.js";
import { keyDocument, workedDocument } from "./key.js";
import { type TaskName, taskKinds, taskNames, usualTasks } from "./kinds.js";
import { diceOf } from "./random.js";
import { studentDocument } from "./student.js";
import type { Level, Task } from "./task.js";

/** How a class is set. */
export interface ExerciseOptions {
  /** 1 for beginners, 3 for those who design; default 1. */
  readonly level?: Level;
  /** The same seed sets the same sheets; a whole number, default 1. */
  readonly seed?: number;
  /** Sheets for so many students, each with numbers of its own; default 1. */
  readonly count?: number;
  /** The kinds of task; default: one of the sets usual at the level, by the seed. */
  readonly tasks?: readonly string[];
}

/** One student's sheet. */
export interface SetSheet {
  /** Which sheet of the class it is, from 1. */
  readonly number: number;
  /** The tasks in the order in which they are set. */
  readonly tasks: readonly Task[];
  /** The sheet to print, with lines to write on. */
  readonly document: Document;
}

/** A class that is set. */
export interface SetClass {
  /** A sheet a student, sheet 1 first. */
  readonly sheets: readonly SetSheet[];
  /** Every answer, with what is allowed, a part a sheet. */
  readonly key: Document;
  /** Every working as on the board, a part a sheet; no parts where nothing is worked out in lines. */
  readonly worked: Document;
  /** All of it in one: the sheets, the key and, where there are any, the worked answers. */
  readonly bound: Bound;
  /** The same for a wall: without names, frames and lines to write on. */
  readonly slides: Bound;
}

/** The most sheets that are set at once. */
const MOST_SHEETS = 200;

/**
 * Exercises for a class from a recipe: sheets with numbers, starts and slips of their own, a key and the worked answers.
 * @param recipe a recipe as `soundRecipe` gives it
 * @param options level, seed, how many, and which kinds of task
 * @throws {LessonError} `bad-seed`, `bad-count` past 200 sheets, `unknown-task`
 * @throws {UnitsError} for a draft that cannot be worked out
 * @example exerciseOf(recipe, { seed: 7, count: 2 }).sheets.length // 2
 */
export function exerciseOf(recipe: Recipe, options: ExerciseOptions = {}): SetClass {
  needRecipe(recipe);
  const { count = 1, level = 1, seed = 1 } = options;
  checkWhole("seed", "bad-seed", seed, 0, 4_000_000_000);
  checkWhole("number of sheets", "bad-count", count, 1, MOST_SHEETS);
  const sets = usualTasks[level];
  const names = (options.tasks ?? sets[seed % sets.length]!).map(known);
  const set: (readonly Task[])[] = [];
  for (let sheet = 0; sheet < count; sheet++) {
    const before = set.at(-1);
    set.push(names.map((name, i) => unlike(recipe, name, level, [seed, sheet, i], before?.[i])));
  }
  const title = recipe.title ?? "A cloth without a name";
  const sheets = set.map((tasks_, i) => ({
    number: i + 1,
    tasks: tasks_,
    document: studentDocument(title, tasks_, { level, seed, number: i + 1, count }),
  }));
  const key = keyDocument(title, set, seed);
  const worked = workedDocument(title, set, seed);
  const rest = [...sheets.slice(1).map(({ document }) => document), key];
  const bound: Bound = [sheets[0]!.document, ...rest, ...(worked.parts.length === 0 ? [] : [worked])];
  return { sheets, key, worked, bound, slides: forSlides(bound) };
}

/** So many throws are made for a task unlike a neighbour's. */
const THROWS = 50;

/** A task unlike that of the sheet before, which lies beside it. */
function unlike(
  recipe: Recipe,
  name: TaskName,
  level: Level,
  [seed, sheet, place]: readonly [number, number, number],
  before: Task | undefined,
): Task {
  const was = JSON.stringify(before?.given);
  for (let throws = 0; ; throws++) {
    const dice = diceOf((seed * 1_000_003 + sheet * 7_919 + place * 104_729 + throws * 15_485_863) % 2 ** 32);
    const task = taskKinds[name].make(recipe, dice, level);
    if (throws === THROWS || JSON.stringify(task.given) !== was) return task;
  }
}

function known(name: string): TaskName {
  const found = taskNames.find((one) => one === name);
  if (found !== undefined) return found;
  const sentence = `there is no task "${name}"; the kinds of task are ${taskNames.join(", ")}`;
  throw new LessonError("unknown-task", sentence, { name });
}

function checkWhole(
  what: string,
  code: "bad-seed" | "bad-count",
  found: number,
  least: number,
  most: number,
): void {
  if (Number.isSafeInteger(found) && found >= least && found <= most) return;
  throw new LessonError(
    code,
    `the ${what} is given as ${found}; expected a whole number from ${least} to ${most}`,
    {
      found,
      least,
      most,
    },
  );
}
