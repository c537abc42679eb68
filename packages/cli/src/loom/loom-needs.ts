import { many } from "@drawcord/base";
import type { Recipe, RecipeLoom } from "@drawcord/files";
import {
  type LiftWork,
  type LoomNeeds,
  liftCaution,
  liftWork,
  loomNeeds,
  type ShaftLoad,
} from "@drawcord/units";
import { toMetric } from "@drawcord/yarn";
import { wrapText } from "../text.js";
import { weight } from "./weight.js";

/** What a draft asks of the loom, and what the loom has. */
export interface LoomPlan {
  readonly needs: LoomNeeds;
  readonly work: LiftWork;
  readonly loom: RecipeLoom;
}

/** What the draft of a recipe asks of the loom. */
export function loomPlanOf({ draft, loom }: Recipe): LoomPlan {
  const lingoGrams = loom.lingoWeight && toMetric(loom.lingoWeight).value;
  const work = liftWork(draft, lingoGrams === undefined ? {} : { lingoGrams });
  return { needs: loomNeeds(draft), work, loom };
}

const INDENT = 10;

/** The needs for people, a line each; what the loom lacks is said. */
export function loomText({ needs, work, loom }: LoomPlan, width: number): string {
  const { heaviest } = work;
  const grams = heaviest.grams === undefined ? "" : `, ${weight(heaviest.grams)} of lingos`;
  const pulleys = needs.tiesWithPulleys === undefined ? "" : `; ${needs.tiesWithPulleys} with damask pulleys`;
  const facts: readonly (readonly [name: string, text: string])[] = [
    ["lingos", against(needs.lingos, loom.lingos)],
    ["pattern", patternText(needs, loom)],
    ["leashes", needs.singleUnitDraw ? "one on each cord" : loads(needs.leashes)],
    [
      "ground",
      `${shafts(needs.groundShafts, "ground shaft", loom.groundShafts)}, heddles ${loads(needs.heddles)}`,
    ],
    ["treadles", `${against(needs.treadles, loom.treadles)}, ${many(needs.ties, "tie")}${pulleys}`],
    [
      "lifts",
      `${many(work.rows.length, "row")}, ${many(work.pulls, "pull")}, ${many(work.changes, needs.singleUnitDraw ? "cord change" : "handle change")}, ${many(work.picks, "pick")}`,
    ],
    ["heaviest", `row ${heaviest.row + 1}, ${many(heaviest.units, "unit")}${grams}`],
  ];
  const line = Math.min(width, 100) - INDENT;
  const lines = facts.map(
    ([name, text]) => `${name.padEnd(INDENT)}${wrapText(text, line).join(`\n${" ".repeat(INDENT)}`)}`,
  );
  return `${lines.join("\n")}\n\n${wrapText(liftCaution(heaviest.grams), Math.min(width, 80)).join("\n")}\n`;
}

/** The needs for a script; rows count from 1. */
export function loomJson({ needs, work, loom }: LoomPlan): object {
  const { heaviest, pulls, changes } = work;
  return {
    needs,
    has: loom,
    lifts: {
      rows: work.rows.length,
      picks: work.picks,
      pulls,
      changes,
      heaviest: { row: heaviest.row + 1, units: heaviest.units, grams: heaviest.grams },
    },
    caution: liftCaution(heaviest.grams),
  };
}

function patternText(needs: LoomNeeds, loom: RecipeLoom): string {
  const { staticUnits, singleUnitDraw, cords, patternShafts } = needs;
  const still = staticUnits === 0 ? "" : `, ${many(staticUnits, "unit")} static`;
  if (singleUnitDraw) return `${shafts(cords, "cord", loom.patternShafts)}, one a unit${still}`;
  return `${shafts(patternShafts, "pattern shaft", loom.patternShafts)}, ${many(cords, "cord")}${still}`;
}

function shafts(needed: number, thing: string, has: number | undefined): string {
  return `${many(needed, thing)}${lack(needed, has)}`;
}

function against(needed: number, has: number | undefined): string {
  return `${needed}${lack(needed, has)}`;
}

function lack(needed: number, has: number | undefined): string {
  if (has === undefined) return "";
  return needed > has ? ` (the loom has only ${has})` : ` of ${has}`;
}

/** The load of each shaft; shafts that follow each other with the same load are one part. */
function loads(all: readonly ShaftLoad[]): string {
  if (all.length === 0) return "none";
  const parts: { first: number; last: number; count: number }[] = [];
  for (const { shaft, count: load } of all) {
    const before = parts.at(-1);
    if (before !== undefined && before.count === load && before.last === shaft - 1) before.last = shaft;
    else parts.push({ first: shaft, last: shaft, count: load });
  }
  return parts
    .map(({ first, last, count: load }) =>
      first === last ? `${load} on shaft ${first}` : `${load} on each of shafts ${first}-${last}`,
    )
    .join(", ");
}
