import { checkShaftDraft, type ShaftDraft, settOf, shaftsMoved } from "@drawcord/check";
import type { ShaftSet } from "@drawcord/ground";
import type { Review } from "@drawcord/review";
import { type Print, printIn } from "../numbers/say.js";
import type { SheetOptions } from "../parts/context.js";
import type { ThreadsPerCm } from "../pictures/cloth.js";
import type { Woven } from "../woven.js";
import { lookOf, type PlainLook } from "./look.js";
import { wovenOf } from "./woven.js";

/** What every part of a plain draft's sheet is made from. */
export interface PlainContext {
  readonly draft: ShaftDraft;
  readonly woven: Woven;
  readonly look: PlainLook;
  readonly closeness: ThreadsPerCm;
  readonly report: Review;
  readonly print: Print;
  /** What is trodden or moved on each pick: its treadles, or its shafts where the draft has a lift plan. */
  readonly moves: readonly ShaftSet[];
  readonly fromRight: boolean;
}

/** A plain draft looked at once for all parts. */
export function plainContext(draft: ShaftDraft, { units = "metric", reading }: SheetOptions): PlainContext {
  const woven = wovenOf(draft);
  const { endsPerCm, picksPerCm } = settOf(draft);
  const { shedding } = draft;
  const report = checkShaftDraft(draft);
  return {
    draft,
    woven,
    look: lookOf(draft, woven.ends, woven.picks),
    closeness: {
      ...(endsPerCm === undefined ? {} : { endsPerCm }),
      ...(picksPerCm === undefined ? {} : { picksPerCm }),
    },
    report: { ...report, places: report.findings.map(() => null), causes: [], untried: [] },
    print: printIn(units),
    moves: shedding.kind === "tie-up" ? shedding.treadling : shaftsMoved(draft),
    fromRight: reading !== "left-to-right",
  };
}
