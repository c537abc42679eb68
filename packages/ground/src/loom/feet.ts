/** How the treadles are shared between the feet. */
export type Feet =
  | {
      /** Whether the feet can alternate. */
      readonly alternate: true;
      /** Treadles trodden by each foot, in the order in which they are first trodden. */
      readonly left: readonly number[];
      /** Treadles trodden by the right foot, in the order in which they are first trodden. */
      readonly right: readonly number[];
      /** The treadles as they hang, left to right: each foot walks from the outside inwards. */
      readonly hanging: readonly number[];
    }
  | {
      /** Whether the feet can alternate. */
      readonly alternate: false;
      /** Why not, as a sentence. */
      readonly why: string;
    };

/**
 * Shares the treadles between the feet so that no foot treads twice running, the treadling joined to itself. A treadle
 * trodden again at once stays down, and a pick without a treadle is passed over.
 * @param treadling the treadle of each pick, 0 for none
 * @example feetOf([1, 2, 3, 4]) // { alternate: true, left: [1, 3], right: [2, 4], hanging: [1, 3, 4, 2] }
 */
export function feetOf(treadling: readonly number[]): Feet {
  const trodden = treadling.filter((treadle) => treadle !== 0);
  const treads = trodden.filter((treadle, i) => treadle !== trodden[(i + 1) % trodden.length]);
  const neighbours = new Map<number, Set<number>>();
  for (const treadle of trodden) neighbours.set(treadle, new Set());
  for (const [i, treadle] of treads.entries()) {
    const next = treads[(i + 1) % treads.length]!;
    neighbours.get(treadle)!.add(next);
    neighbours.get(next)!.add(treadle);
  }
  const foot = new Map<number, "left" | "right">();
  for (const first of neighbours.keys()) {
    if (foot.has(first)) continue;
    foot.set(first, "left");
    const waiting = [first];
    for (let at = waiting.pop(); at !== undefined; at = waiting.pop()) {
      const other = foot.get(at) === "left" ? "right" : "left";
      for (const next of neighbours.get(at)!) {
        const known = foot.get(next);
        if (known === foot.get(at)) return { alternate: false, why: whyNot(treads) };
        if (known) continue;
        foot.set(next, other);
        waiting.push(next);
      }
    }
  }
  const of = (side: "left" | "right") =>
    [...neighbours.keys()].filter((treadle) => foot.get(treadle) === side);
  const left = of("left");
  const right = of("right");
  return { alternate: true, left, right, hanging: [...left, ...right.toReversed()] };
}

function whyNot(treads: readonly number[]): string {
  const once = new Set(treads).size === treads.length;
  return once
    ? `an odd number of treadles, ${treads.length}, so one foot treads twice where the treadling begins again; a second set of treadles, ${2 * treads.length} in all, would let the feet alternate`
    : "the treadles follow each other in an order that comes round after an odd number, so one foot must tread twice somewhere";
}
