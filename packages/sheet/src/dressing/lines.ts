import type { UnitShafts } from "@drawcord/units";
import { range } from "../parts/number.js";
import type { Stretch, Woven } from "../woven.js";

/** More units than this are threaded by groups of ten. */
const MOST_SINGLE = 200;
const GROUP = 10;

/** Ends that are threaded and then ticked off: those of a unit, of some units, or of a selvedge. */
export interface DressingLine {
  /** `12`, `30–21`, `selvedge`: a single word. */
  readonly name: string;
  /** The pattern shaft or cord of each unit, in the order of threading; `X` for a static unit, `–` for a selvedge. */
  readonly pattern: readonly string[];
  /** The ground shaft of each end, in the order of threading, a list a unit. */
  readonly ground: readonly (readonly number[])[];
  /** All ends threaded when the line is done. */
  readonly done: number;
}

/** A part of the threading, before the line at which it begins, from 0. */
export interface DressingHead {
  readonly line: number;
  readonly name: string;
}

/**
 * The parts of a threading with a figure that repeats, in the order of threading: the repeats and the edges beside them; none
 * where nothing repeats or the lines are groups of units.
 */
export function dressingHeads(
  { repeat, unitSpans }: Woven,
  fromRight: boolean,
  edges: boolean,
): DressingHead[] {
  const { units, across } = repeat;
  const total = unitSpans.length;
  if (across < 2 || total > MOST_SINGLE) return [];
  const period = units.end - units.start;
  const parts = [
    { name: "left edge", start: 0, end: units.start },
    ...Array.from({ length: across }, (_, i) => ({
      name: `figure ${i + 1} of ${across}`,
      start: units.start + i * period,
      end: units.start + (i + 1) * period,
    })),
    { name: "right edge", start: units.start + across * period, end: total },
  ].filter(({ start, end }) => end > start);
  if (fromRight) parts.reverse();
  return parts.map(({ name, start, end }) => {
    const [first, last] = fromRight ? [end, start + 1] : [start + 1, end];
    const line = (fromRight ? total - end : start) + (edges ? 1 : 0);
    return { line, name: `Units ${range(first, last)}: ${name}` };
  });
}

/** Every end of the warp in the order in which it is threaded, selvedges and units in one list. */
export function dressingLines(woven: Woven, fromRight: boolean): DressingLine[] {
  const { draft, unitSpans, shaftOfEnd, ends } = woven;
  const shaftsOf = ({ start, end }: Stretch) => {
    const shafts = shaftOfEnd.slice(start, end);
    return fromRight ? shafts.reverse() : shafts;
  };
  const inside = { start: unitSpans[0]!.start, end: unitSpans.at(-1)!.end };
  const edge = (name: string, span: Stretch): Omit<DressingLine, "done">[] =>
    span.end === span.start ? [] : [{ name, pattern: ["–"], ground: [shaftsOf(span)] }];
  const order = [...unitSpans.keys()];
  if (fromRight) order.reverse();
  const size = order.length > MOST_SINGLE ? GROUP : 1;
  const units = Array.from({ length: Math.ceil(order.length / size) }, (_, i) => {
    const group = order.slice(i * size, (i + 1) * size);
    return {
      name: range(group[0]! + 1, group.at(-1)! + 1),
      pattern: group.map((unit) => patternText(draft.threading[unit]!)),
      ground: group.map((unit) => shaftsOf(unitSpans[unit]!)),
    };
  });
  const left = edge("selvedge", { start: 0, end: inside.start });
  const right = edge("selvedge", { start: inside.end, end: ends });
  const lines = fromRight ? [...right, ...units, ...left] : [...left, ...units, ...right];
  let done = 0;
  return lines.map((line) => {
    done += line.ground.reduce((sum, { length }) => sum + length, 0);
    return { ...line, done };
  });
}

function patternText(shafts: UnitShafts): string {
  return shafts.length === 0 ? "X" : shafts.join("+");
}

/** The ground shafts of a line; units that are threaded alike are told once. */
export function groundText({ ground }: DressingLine): string {
  const each = ground.map((shafts) => shafts.join(" "));
  if (each.length > 1 && each.every((text) => text === each[0])) return `${each[0]} in each`;
  return each.join(" / ");
}
