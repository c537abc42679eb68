import { type BitGrid, toBooleans, transpose } from "@drawcord/grid";
import { commonDivisor, leastRound, modulo, upTo } from "../arithmetic.js";
import type { BaseWeave, Direction } from "../description/description.js";
import { type Ratio, ratioOf } from "../weave/ratio.js";

/** What an ordered twill is made from. */
interface Parts {
  readonly ratio: Ratio;
  readonly direction?: Direction;
  readonly alongPicks?: true;
}

/** The largest move of an undulating twill that still reads as one. */
const LARGEST_MOVE = 3;

/** Pointed, herringbone, broken and undulating twills: the threads of one system all alike, begun in another place each. */
export function orderedNames(repeat: BitGrid): BaseWeave[] {
  return [false, true].flatMap((alongPicks) =>
    (["z", "s"] as const).flatMap((direction) => names(repeat, direction, alongPicks)),
  );
}

function names(repeat: BitGrid, direction: Direction, alongPicks: boolean): BaseWeave[] {
  const threads = toBooleans(alongPicks ? repeat : transpose(repeat));
  const first = threads[0]!;
  const n = first.length;
  const starts = threads.map((thread) => startOf(thread, first));
  if (starts.includes(-1)) return [];
  // A twill's line read along an end runs through its ratio backwards; along a pick forwards.
  const backwards = (direction === "z") !== alongPicks;
  const order = starts.map((start) => modulo(direction === "z" ? start : -start, n));
  const parts: Parts = {
    ratio: ratioOf(backwards ? first.toReversed() : first),
    ...(direction === "s" && { direction }),
    ...(alongPicks && { alongPicks: true as const }),
  };
  return [...pointedAndBroken(n, order.length, parts), ...undulating(order, n, parts)];
}

function pointedAndBroken(n: number, threads: number, parts: Parts): BaseWeave[] {
  const found: BaseWeave[] = [];
  if (threads === 2 * n - 2) found.push({ kind: "pointed twill", ...parts });
  if (threads === n) {
    found.push({ kind: "broken twill", ...parts });
    if (n % 4 === 0 && n > 4) found.push({ kind: "broken twill", break: { by: "fourths" }, ...parts });
  }
  if (threads % 2 === 0 && threads >= 4)
    found.push({ kind: "herringbone twill", after: threads / 2, ...parts });
  for (let take = 2; take <= n; take++) {
    for (let skip = 1; skip < n; skip++) {
      if (threads !== take * (n / commonDivisor(take + skip, n))) continue;
      found.push({ kind: "broken twill", break: { by: "skipping", take, skip }, ...parts });
    }
  }
  return found;
}

/** An undulating twill, its moves begun where they read least. */
function undulating(order: readonly number[], n: number, parts: Parts): BaseWeave[] {
  const moves = order.map((place, i) => modulo(order[(i + 1) % order.length]! - place, n));
  if (moves.some((move) => move > LARGEST_MOVE)) return [];
  const length = upTo(moves.length)
    .map((i) => i + 1)
    .find((period) => moves.length % period === 0 && moves.every((move, i) => move === moves[i % period]))!;
  return [{ kind: "undulating twill", moves: leastRound(moves.slice(0, length)), ...parts }];
}

/** How many threads of the other system later one thread begins than another like it; -1 if they are not alike. */
function startOf(thread: readonly boolean[], first: readonly boolean[]): number {
  const n = first.length;
  return upTo(n).findIndex((start) => thread.every((up, i) => up === first[modulo(i - start, n)]));
}
