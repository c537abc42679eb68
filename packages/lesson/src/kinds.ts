import type { Level, TaskKind } from "./task.js";
import { back } from "./tasks/back.js";
import { drawdown } from "./tasks/drawdown.js";
import { float } from "./tasks/float.js";
import { ground } from "./tasks/ground.js";
import { numbers } from "./tasks/numbers.js";
import { plan } from "./tasks/plan.js";
import { sett } from "./tasks/sett.js";
import { slip } from "./tasks/slip.js";

/** Every kind of task by its name. */
export const taskKinds = {
  numbers,
  sett,
  plan,
  drawdown,
  back,
  float,
  slip,
  ground,
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
