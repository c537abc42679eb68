import { floatLength } from "./rules/float-length.js";
import { idleShaft } from "./rules/idle-shaft.js";
import { layers } from "./rules/layers.js";
import { looseThread } from "./rules/loose-thread.js";
import { openCut } from "./rules/open-cut.js";
import type { Rule } from "./rules/rule.js";
import { staticDrawn } from "./rules/static-drawn.js";
import { unknownShaft } from "./rules/unknown-shaft.js";

/** Every rule, in the order in which findings of equal weight are told. */
export const rules: readonly Rule[] = [
  layers,
  looseThread,
  floatLength,
  openCut,
  unknownShaft,
  staticDrawn,
  idleShaft,
];
