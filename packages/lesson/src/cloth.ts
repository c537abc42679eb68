/** A small cloth of a damask ground on four shafts, made for a task. */
import { expand, type UnitDraft } from "@drawcord/units";

/** What a small cloth is made of. */
export interface Small {
  /** The handle of each unit; 0 for a unit on none. */
  readonly threading: readonly number[];
  /** The handles of each row. */
  readonly lifts: readonly (readonly number[])[];
  /** Ends of a unit, and picks of a row. */
  readonly size: number;
  /** The shaft sunk on each pick. */
  readonly order: readonly number[];
  /** The shaft raised on each pick; default: the mirror of the one sunk. */
  readonly raise?: readonly number[];
}

/** The draft of a small cloth. */
export function smallDraft({ lifts, order, raise, size, threading }: Small): UnitDraft {
  const shafts = order.length;
  return {
    ground: {
      shafts,
      threading: Array.from({ length: shafts }, (_, i) => i + 1),
      steps: order.map((sink, pick) => ({ raise: [raise?.[pick] ?? shafts + 1 - sink], sink: [sink] })),
    },
    unitEnds: size,
    threading: threading.map((handle) => (handle === 0 ? [] : [handle])),
    lifts,
    picksPerRow: size,
  };
}

/** A small cloth woven: whether each end lies over each pick, pick by pick, and what the treadles do. */
export function wovenSmall(small: Small) {
  const draft = smallDraft(small);
  const { drawdown } = expand(draft);
  return {
    treadles: draft.ground.steps,
    raised: Array.from({ length: drawdown.rows }, (_, pick) =>
      Array.from({ length: drawdown.columns }, (_, end) => drawdown.get(pick, end)),
    ),
  };
}
