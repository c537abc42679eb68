import { type BitGrid, toBooleans, transpose } from "@drawcord/grid";
import { commonDivisor, leastRound, modulo, upTo } from "../arithmetic.js";
import type { BaseWeave, Direction } from "../description/description.js";
import { LARGEST } from "../size.js";
import { brokenByFourths, brokenByHalves, brokenBySkipping, herringbone, pointed } from "../weave/orders.js";
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
  if (n > LARGEST.shafts || starts.includes(-1)) return [];
  // A twill's line read along an end runs through its ratio backwards; along a pick forwards.
  const backwards = (direction === "z") !== alongPicks;
  const order = starts.map((start) => modulo(direction === "z" ? start : -start, n));
  const parts: Parts = {
    ratio: ratioOf(backwards ? first.toReversed() : first),
    ...(direction === "s" && { direction }),
    ...(alongPicks && { alongPicks: true as const }),
  };
  const moves = movesOf(order, n);
  return [...pointedAndBroken(n, moves, parts), ...undulating(moves, parts)];
}

/** The pointed, broken and herringbone twills on n ends whose order moves as this one does. */
function pointedAndBroken(n: number, moves: readonly number[], parts: Parts): BaseWeave[] {
  const threads = moves.length;
  const is = (order: readonly number[]) => order.length === threads && sameRound(movesOf(order, n), moves);
  const found: BaseWeave[] = [];
  if (threads === 2 * n - 2 && is(pointed(n))) found.push({ kind: "pointed twill", ...parts });
  if (threads === n && n > 2 && is(brokenByHalves(n))) found.push({ kind: "broken twill", ...parts });
  if (threads === n && n % 4 === 0 && n > 4 && is(brokenByFourths(n))) {
    found.push({ kind: "broken twill", break: { by: "fourths" }, ...parts });
  }
  const after = threads / 2;
  if (Number.isInteger(after) && after > 1 && is(herringbone(n, after))) {
    found.push({ kind: "herringbone twill", after, ...parts });
  }
  for (let take = 2; take <= n; take++) {
    for (let skip = 1; skip < n; skip++) {
      if (threads !== take * (n / commonDivisor(take + skip, n))) continue;
      if (is(brokenBySkipping(n, take, skip))) {
        found.push({ kind: "broken twill", break: { by: "skipping", take, skip }, ...parts });
      }
    }
  }
  return found;
}

/** An undulating twill, its moves begun where they read least. */
function undulating(moves: readonly number[], parts: Parts): BaseWeave[] {
  if (moves.some((move) => move > LARGEST_MOVE)) return [];
  const length = upTo(moves.length)
    .map((i) => i + 1)
    .find((period) => moves.length % period === 0 && moves.every((move, i) => move === moves[i % period]))!;
  return [{ kind: "undulating twill", moves: leastRound(moves.slice(0, length)), ...parts }];
}

/** How far each place of an order lies from the one before it, the order joined to itself. */
function movesOf(order: readonly number[], n: number): number[] {
  return order.map((place, i) => modulo(order[(i + 1) % order.length]! - place, n));
}

/** Whether two rounds are the same, begun at any place. */
function sameRound(a: readonly number[], b: readonly number[]): boolean {
  return a.some((_, start) => b.every((move, i) => move === a[(i + start) % a.length]));
}

/** How many threads of the other system later one thread begins than another like it; -1 if they are not alike. */
function startOf(thread: readonly boolean[], first: readonly boolean[]): number {
  const n = first.length;
  return upTo(n).findIndex((start) => thread.every((up, i) => up === first[modulo(i - start, n)]));
}
