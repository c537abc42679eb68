import type { Command } from "./command.js";

/** A command as `drawcord --help` knows it: its module is loaded only when it is called. */
interface Entry {
  /** One line, lower case and without a full stop. */
  readonly summary: string;
  load(): Promise<{ readonly command: Command }>;
}

export type Registry = Readonly<Record<string, Entry>>;

/** Every command, in the order of the help. */
export const registry: Registry = {
  init: { summary: "write a recipe to begin from", load: () => import("./commands/init.js") },
  check: { summary: "say whether the cloth of a recipe holds", load: () => import("./commands/check.js") },
  exercise: {
    summary: "set exercises for a class, with a key and worked answers",
    load: () => import("./commands/exercise.js"),
  },
  expand: {
    summary: "draw the cloth end by end and pick by pick",
    load: () => import("./commands/expand.js"),
  },
  follow: {
    summary: "write a page to weave by, for a tablet on the loom",
    load: () => import("./commands/follow.js"),
  },
  format: {
    summary: "lay recipes out in the one way they share",
    load: () => import("./commands/format.js"),
  },
  ground: {
    summary: "lay out a ground weave, its raise and sink plan, and its ties",
    load: () => import("./commands/ground.js"),
  },
  chart: {
    summary: "turn a chart into threading and lifts",
    load: () => import("./commands/chart.js"),
  },
  lifts: {
    summary: "list the lifts for use at the loom, with their weight",
    load: () => import("./commands/lifts.js"),
  },
  threading: {
    summary: "list the threading for use at the loom",
    load: () => import("./commands/threading.js"),
  },
  plan: {
    summary: "work out warp, weft, reed, widths and pieces",
    load: () => import("./commands/plan.js"),
  },
  paper: {
    summary: "print unit paper, a wrap card, a list to tick or labels",
    load: () => import("./commands/paper.js"),
  },
  practice: {
    summary: "write a page to practise on: press treadles, draw handles, throw picks",
    load: () => import("./commands/practice.js"),
  },
  rules: { summary: "explain what is checked, and why", load: () => import("./commands/rules.js") },
  fit: {
    summary: "find what to change for a length, a width, a warp or a number of pieces",
    load: () => import("./commands/fit.js"),
  },
  sheet: {
    summary: "write a recipe out as a sheet to weave from",
    load: () => import("./commands/sheet.js"),
  },
  why: {
    summary: "say how one crossing of a cloth comes about",
    load: () => import("./commands/why.js"),
  },
  yarn: {
    summary: "print a yarn in every system, with its diameter and setts",
    load: () => import("./commands/yarn.js"),
  },
};
