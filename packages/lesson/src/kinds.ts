import type { Level, TaskKind } from "./task.js";
import { backTask } from "./tasks/back.js";
import { drawdownTask } from "./tasks/drawdown.js";
import { floatTask } from "./tasks/float.js";
import { groundTask } from "./tasks/ground.js";
import { numbersTask } from "./tasks/numbers.js";
import { planTask } from "./tasks/plan.js";
import { settTask } from "./tasks/sett.js";
import { slipTask } from "./tasks/slip.js";

/** Every kind of task by its name. */
export const taskKinds = {
  numbers: numbersTask,
  sett: settTask,
  plan: planTask,
  drawdown: drawdownTask,
  back: backTask,
  float: floatTask,
  slip: slipTask,
  ground: groundTask,
} as const satisfies Readonly<Record<string, TaskKind>>;

/** What a kind of task is called. */
export type TaskName = keyof typeof taskKinds;

/** The names, in the order in which they are set. */
export const taskNames = Object.keys(taskKinds) as readonly TaskName[];

/** What is set at each level unasked, so that a sheet takes two pages. */
export const usualTasks: Readonly<Record<Level, readonly TaskName[]>> = {
  1: ["sett", "drawdown", "plan", "float"],
  2: ["numbers", "back", "slip"],
  3: ["numbers", "drawdown", "ground"],
};
