import { many } from "@drawcord/base";
import type { ShaftDraft } from "@drawcord/check";
import { wrapText } from "../text.js";

/** What a plain draft asks of the loom. */
export interface PlainNeeds {
  readonly shafts: number;
  /** Heddles on each shaft, shaft 1 first. */
  readonly heddles: readonly number[];
  /** None with a lift plan. */
  readonly treadles: number;
  /** From treadles to shafts. */
  readonly ties: number;
}

/** What a plain draft asks of the loom. */
export function plainNeeds({ shafts, shedding, threading }: ShaftDraft): PlainNeeds {
  const heddles = Array<number>(shafts).fill(0);
  for (const end of threading) for (const shaft of end) heddles[shaft - 1]!++;
  const tieUp = shedding.kind === "tie-up" ? shedding.tieUp : [];
  const ties = tieUp.reduce((sum, tied) => sum + tied.length, 0);
  return { shafts, heddles, treadles: tieUp.length, ties };
}

const INDENT = 10;

/** The needs for people, a line each. */
export function plainNeedsText({ heddles, shafts, ties, treadles }: PlainNeeds, width: number): string {
  const facts: readonly (readonly [name: string, text: string])[] = [
    ["shafts", String(shafts)],
    ["heddles", heddles.map((load, i) => `${load} on shaft ${i + 1}`).join(", ") || "none"],
    ["treadles", treadles === 0 ? "none: a lift plan" : `${treadles}, ${many(ties, "tie")}`],
  ];
  return facts
    .map(([name, text]) => {
      const lines = wrapText(text, Math.min(width, 100) - INDENT);
      return `${name.padEnd(INDENT)}${lines.join(`\n${" ".repeat(INDENT)}`)}\n`;
    })
    .join("");
}
