import type { NearestCloth } from "@drawcord/chart";
import { printLifts, printThreading } from "@drawcord/units";
import { toJson } from "../printable.js";

/** What a recipe says besides its units and lifts. */
export interface ChartGround {
  readonly title: string;
  readonly weave: string;
  readonly unitEnds: number;
  readonly picks: number;
}

/** A recipe that weaves the cloth of a chart, as YAML. Every text is quoted as JSON, which YAML reads. */
export function chartRecipe(cloth: NearestCloth, ground: ChartGround): string {
  const rows = printLifts(cloth.lifts).map((line) => `    - ${/^\d+$/.test(line) ? line : toJson(line)}\n`);
  return `recipe: 1
title: ${toJson(ground.title)}

ground:
  weave: ${toJson(ground.weave)}

units:
  ends: ${ground.unitEnds}
  threading: ${toJson(printThreading(cloth.threading))}

lifts:
  picks: ${ground.picks}
  rows:
${rows.join("")}`;
}
