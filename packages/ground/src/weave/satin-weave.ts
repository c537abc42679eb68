import type { BaseWeave } from "../description/description.js";
import { GroundError } from "../error.js";
import { shaftCount } from "../size.js";
import { straight } from "./orders.js";
import { irregularSatins, satinOrder, satinSteps } from "./satin.js";
import { otherShafts, type Weave } from "./weave.js";

/**
 * A satin from its description: by step, by an order written out, or the usual one on so many ends.
 * Weft-faced unless it says `warp-faced`; `s` is its mirror.
 * @throws {GroundError} `bad-ends` without a number of ends, or one on which there is no satin; `bad-step`; `bad-order`
 */
export function satinWeave(base: BaseWeave & { kind: "satin" }, endsStated?: number): Weave {
  const ends = base.ends ?? base.order?.length ?? endsStated;
  if (ends === undefined) {
    throw new GroundError(
      "bad-ends",
      'a satin needs its number of ends, as in "satin 8" or "satin 8 step 3"',
    );
  }
  shaftCount(ends, `a satin on ${ends} ends`);
  const order = base.order ? wholeOrder(base.order, ends) : usualOrder(ends, base.step);
  const bound = base.direction === "s" ? order.map((end) => ends + 1 - end) : order;
  return {
    shafts: ends,
    threading: straight(ends),
    raised: bound.map((end) => (base.warpFaced ? otherShafts(ends, [end]) : [end])),
  };
}

function usualOrder(ends: number, step: number | undefined): number[] {
  const irregular = irregularSatins(ends)[0];
  if (step === undefined && irregular) return irregular;
  return satinOrder(ends, step ?? satinSteps(ends)[0] ?? 0);
}

/** Refuses an order that does not bind each end once. */
function wholeOrder(order: readonly number[], ends: number): readonly number[] {
  if (order.length !== ends) {
    throw new GroundError(
      "bad-order",
      `the order ${order.join(" ")} binds ${order.length} ends; a satin on ${ends} ends binds ${ends}`,
      { ends },
    );
  }
  const missing = straight(ends).find((end) => !order.includes(end));
  if (missing !== undefined) {
    throw new GroundError(
      "bad-order",
      `the order ${order.join(" ")} never binds end ${missing}; each of the ${ends} ends must come once`,
      {
        ends,
        missing,
      },
    );
  }
  return order;
}
