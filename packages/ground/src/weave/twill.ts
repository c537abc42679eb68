import { commonDivisor, modulo, upTo } from "../arithmetic.js";
import { GroundError } from "../error.js";
import { shaftCount } from "../size.js";
import { straight } from "./orders.js";
import { type Ratio, raisedBy } from "./ratio.js";
import type { Weave } from "./weave.js";

/**
 * A twill: the ratio moves `step` ends to the right on every pick (to the left where `step` is negative).
 * @throws {GroundError} `bad-ratio` for a ratio that is not made of pairs; `bad-step` when the step leaves an end unbound;
 * `too-large` above 64 ends
 * @example twill([1, 3]).raised // [[1], [2], [3], [4]]
 */
export function twill(ratio: Ratio, step = 1): Weave {
  const raised = raisedBy(ratio);
  const n = shaftCount(raised.length, `a twill ${ratio.join("/")}`);
  const picks = n / commonDivisor(step, n);
  const weave = {
    shafts: n,
    threading: straight(n),
    raised: upTo(picks).map((pick) =>
      straight(n).filter((shaft) => raised[modulo(shaft - 1 - pick * step, n)]),
    ),
  };
  const unbound = straight(n).find((shaft) => {
    const times = weave.raised.filter((set) => set.includes(shaft)).length;
    return times === 0 || times === picks;
  });
  if (unbound !== undefined) {
    const steps = upTo(n).filter((k) => commonDivisor(k, n) === 1);
    throw new GroundError(
      "bad-step",
      `step ${Math.abs(step)} never binds end ${unbound} of a twill ${ratio.join("/")}; steps that share no divisor with ${n} do: ${steps.join(", ")}`,
      { step: Math.abs(step), ends: n },
    );
  }
  return weave;
}
