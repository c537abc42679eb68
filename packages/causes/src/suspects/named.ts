/** What findings of the plan name themselves: shafts drawn in vain, and numbers that are stated wrong. */
import type { Finding } from "@drawcord/check";
import type { Change, UnitDraft } from "@drawcord/units";
import { ruleOf } from "./rule-of.js";
import type { Suspect } from "./suspect.js";

/** Lifts without the shafts that draw nothing. */
export function drawnInVain(draft: UnitDraft, findings: readonly Finding[]): Suspect[] {
  return findings.flatMap((finding): Suspect[] => {
    const inVain = ruleOf(finding).inVain;
    if (inVain === undefined || !("shaft" in finding)) return [];
    const { rule, shaft } = finding;
    const rows = draft.lifts.flatMap((lift, row) => (lift.includes(shaft) ? [row + 1] : []));
    if (rows.length === 0) return [];
    const changes = rows.map((row): Change => ({ change: "leave", row, shafts: [shaft] }));
    return [
      {
        changes,
        slip: { slip: "drawn-in-vain", rows, shaft, hangs: inVain.hangs },
        reason: { reason: "draws-nothing", hangs: inVain.hangs },
        gain: 0,
        rule,
        sure: inVain.sure === true || rows.length * 4 <= draft.lifts.length,
        rivals: [],
      },
    ];
  });
}

/** Stated numbers as they come out. */
export function statedWrong(findings: readonly Finding[]): Suspect[] {
  return findings.flatMap((finding): Suspect[] => {
    if (!("stated" in finding)) return [];
    const { likely, limit, measured, stated, unit } = finding;
    return [
      {
        changes: [
          {
            change: "number",
            key: `stated.${stated}`,
            value: COUNTED.test(unit) ? round(measured) : `${round(measured)} ${unit}`,
          },
        ],
        slip: { slip: "misstated", stated, claim: limit, unit, found: round(measured) },
        reason: { reason: "worked-out", ...(likely !== undefined && { likely }) },
        gain: 0,
        sure: true,
        rivals: [],
      },
    ];
  });
}

/** Units of what is counted: they are not written in a recipe. */
const COUNTED = /^(ends|picks|units|rows|lingos|pieces|threads)$/;

function round(value: number): number {
  return Math.round(value * 1000) / 1000;
}
