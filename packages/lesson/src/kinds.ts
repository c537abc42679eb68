import type { Level, TaskKind } from "./task.js";
import { backTask } from "./tasks/back.js";
import { cutTask } from "./tasks/cut.js";
import { drawdownTask } from "./tasks/drawdown.js";
import { floatTask } from "./tasks/float.js";
import { groundTask } from "./tasks/ground.js";
import { numbersTask } from "./tasks/numbers.js";
import { planTask } from "./tasks/plan.js";
import { settTask } from "./tasks/sett.js";
import { slackTask } from "./tasks/slack.js";
import { slipTask } from "./tasks/slip.js";
import { threadTask } from "./tasks/thread.js";

/** Every kind of task by its name. */
export const taskKinds = {
  /** Units, ends, width, sley, picks, warp, pieces and yarn, with the working. */
  numbers: numbersTask,
  /** A sett from the wraps of a yarn and the weave. */
  sett: settTask,
  /** Which handles are held, drawn and let go, and which ends rise in a pick. */
  plan: planTask,
  /** A piece of the drawdown from threading, tie-up, treadling and lifts. */
  drawdown: drawdownTask,
  /** From a piece of cloth back to the units that each row draws. */
  back: backTask,
  /** From a piece of cloth and its lifts back to the threading of the units. */
  thread: threadTask,
  /** The longest float along an end and along a pick. */
  float: floatTask,
  /** The open cuts: where figure and ground meet and a thread can slip. */
  cut: cutTask,
  /** The slack area, where the threads do not interlace. */
  slack: slackTask,
  /** One to three slips in a small recipe. */
  slip: slipTask,
  /** The start of the ground that cuts clean, and why. */
  ground: groundTask,
} as const satisfies Readonly<Record<string, TaskKind>>;

/** What a kind of task is called. */
export type TaskName = keyof typeof taskKinds;

/** The names, in the order in which they are set. */
export const taskNames = Object.keys(taskKinds) as readonly TaskName[];

/** What is set at each level unasked: sets of like length, of which the seed takes one, each two pages long. */
export const usualTasks: Readonly<Record<Level, readonly (readonly TaskName[])[]>> = {
  1: [
    ["drawdown", "plan", "sett"],
    ["drawdown", "float", "sett"],
    ["drawdown", "slack", "sett"],
  ],
  2: [
    ["numbers", "back", "sett"],
    ["slip", "sett"],
    ["numbers", "thread"],
    ["numbers", "float", "sett"],
  ],
  3: [
    ["slip", "sett"],
    ["numbers", "ground", "sett"],
    ["drawdown", "ground", "sett"],
  ],
};
