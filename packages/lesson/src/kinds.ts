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
  numbers: numbersTask,
  sett: settTask,
  plan: planTask,
  drawdown: drawdownTask,
  back: backTask,
  thread: threadTask,
  float: floatTask,
  cut: cutTask,
  slack: slackTask,
  slip: slipTask,
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
