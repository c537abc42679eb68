import { type BitGrid, columnCounts, complement, rowCounts, toBooleans, transpose } from "@drawcord/grid";
import { compareLists, leastRound, modulo, upTo } from "../arithmetic.js";
import type { BaseWeave } from "../description/description.js";
import { printWeave } from "../description/print.js";
import { LARGEST } from "../size.js";
import { firstLooseThread } from "../weave/bound.js";
import { baseWeave } from "../weave/build.js";
import { ratioOf } from "../weave/ratio.js";
import { irregularSatins } from "../weave/satin.js";
import { drawdownOf } from "../weave/weave.js";
import { moveOf } from "./line.js";
import { orderedNames } from "./name-ordered.js";
import { leastRepeat, type RepeatOptions, rowKeys, sameCloth } from "./repeat.js";

/**
 * The name of the weave in a drawdown, as `parseWeave` reads it.
 * @param drawdown whole repeats, begun at any end and pick; or a piece, with the option `piece`
 * @param options whether the drawdown is a piece; by default it is whole repeats
 * @returns nothing for a weave that has no name here
 * @example nameOf(fromText("#..#..\n.#..#.\n..#..#")) // "twill 1/2 s"
 */
export function nameOf(drawdown: BitGrid, options?: RepeatOptions): string | undefined {
  const repeat = leastRepeat(drawdown, options);
  if (firstLooseThread(repeat)) return undefined;
  const moving = movingNames(repeat);
  const ordered = orderedNames(repeat);
  const found = [
    ...groupedNames(repeat),
    ...moving.filter(isPlainSpoken),
    ...irregularNames(repeat),
    ...ordered.filter(({ kind }) => kind !== "undulating twill"),
    ...moving,
    ...ordered,
  ];
  const base = found.find((name) => sameCloth(leastRepeat(drawdownOf(baseWeave(name))), repeat));
  return base && printWeave({ base });
}

/** Whether a name says at once what is woven, as a twill of another step than 1 does not. */
function isPlainSpoken(base: BaseWeave): boolean {
  return base.kind !== "twill" || base.step === undefined;
}

/** Plain weave, ribs and hopsack: two kinds of picks, one the other's counterchange, each in one group. */
function groupedNames(repeat: BitGrid): BaseWeave[] {
  const picks = groupsOf(rowKeys(repeat));
  const ends = groupsOf(rowKeys(transpose(repeat)));
  if (!picks || !ends) return [];
  const alone = (group: readonly number[]) => group.every((threads) => threads === 1);
  if (alone(picks) && alone(ends)) return [{ kind: "plain" }];
  if (alone(ends)) return [{ kind: "warp rib", group: picks }];
  if (alone(picks)) return [{ kind: "weft rib", group: ends }];
  const other: [number, number] = [ends[1], ends[0]];
  const alike = picks[0] === ends[0] && picks[1] === ends[1];
  return [
    { kind: "hopsack", picks, ...(!alike && { ends }) },
    { kind: "hopsack", picks, ends: other },
  ];
}

/** The sizes of the two groups into which a round of threads falls, the greater first; nothing if it falls otherwise. */
function groupsOf(keys: readonly string[]): [number, number] | undefined {
  if (new Set(keys).size !== 2) return undefined;
  const changes = keys.filter((key, i) => key !== keys[modulo(i - 1, keys.length)]).length;
  if (changes !== 2) return undefined;
  const first = keys.filter((key) => key === keys[0]).length;
  return [Math.max(first, keys.length - first), Math.min(first, keys.length - first)];
}

/** Twills, satins of a constant step and corkscrews: each pick is the one before it moved on. */
function movingNames(repeat: BitGrid): BaseWeave[] {
  const n = repeat.columns;
  const move = n > LARGEST.shafts ? undefined : moveOf(repeat);
  if (move === undefined) return [];
  const [first] = toBooleans(repeat);
  const raised = first!.filter(Boolean).length;
  const left = move > n / 2;
  const step = left ? n - move : move;
  const direction = left ? { direction: "s" as const } : {};
  const corkscrew: BaseWeave[] =
    step === 2 && n % 2 === 1 && n > 4 ? [{ kind: "corkscrew", ends: n, ...direction }] : [];
  if (step > 1 && (raised === 1 || raised === n - 1)) {
    return [{ kind: "satin", ends: n, step: move, ...(raised > 1 && { warpFaced: true as const }) }];
  }
  return [...corkscrew, { kind: "twill", ratio: ratioOf(first!), ...(step > 1 && { step }), ...direction }];
}

/** Satins of no constant step: each pick and each end bound once, and no two binding points touching. */
function irregularNames(repeat: BitGrid): BaseWeave[] {
  const n = repeat.rows;
  if (n !== repeat.columns || n < 4 || n > LARGEST.shafts) return [];
  const once = (grid: BitGrid) => [...rowCounts(grid), ...columnCounts(grid)].every((raised) => raised === 1);
  const weftFaced = once(repeat);
  if (!weftFaced && !once(complement(repeat))) return [];
  if (n === 4) return [{ kind: "broken twill", ratio: weftFaced ? [1, 3] : [3, 1] }];
  const bound = toBooleans(repeat).map((row) => row.indexOf(weftFaced));
  const touching = bound.some((end, pick) => {
    const apart = modulo(bound[(pick + 1) % n]! - end, n);
    return apart === 1 || apart === n - 1;
  });
  if (touching) return [];
  const orders = upTo(n).map((end) => leastRound(bound.map((place) => modulo(place - end, n) + 1)));
  const order = orders.reduce((least, other) => (compareLists(other, least) < 0 ? other : least));
  const usual = irregularSatins(n)[0];
  const isUsual = usual !== undefined && compareLists(order, usual) === 0;
  return [
    { kind: "satin", ends: n, ...(!isUsual && { order }), ...(!weftFaced && { warpFaced: true as const }) },
  ];
}
