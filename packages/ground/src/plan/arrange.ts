import { commonDivisor, compareLists, modulo, upTo } from "../arithmetic.js";
import type { Ground, ShaftSet } from "../types.js";
import { borderCut, type FigureSize, type PlanCut } from "./cut.js";

/** What a ground harness raises or sinks, pick by pick. */
export type Lifts = readonly ShaftSet[];

/** One way to lay the warp-faced weave of the drawn units against the weft-faced ground. */
export interface Arrangement {
  readonly ground: Ground;
  /** Whether the two weaves run in opposite directions. */
  readonly opposite: boolean;
  readonly cut: PlanCut;
}

/** A warp-faced weave to try: the shafts it binds on each pick. */
export interface Candidate {
  readonly sink: Lifts;
  readonly opposite: boolean;
}

interface Found {
  readonly opposite: boolean;
  readonly side: number;
  readonly length: number;
  /** The ground as it is then woven. */
  readonly ground: Ground;
}

/**
 * Every arrangement of a ground with the candidates, begun at every end and pick, one for each kind of cut, the best first.
 * A candidate that would raise and sink the same shaft on a pick is left out.
 *
 * How a border between units cuts depends on the end at which the figure begins, and not on the pick; how a border between
 * rows cuts depends on the pick, and not on the end. So each is counted once for every place, and the places of each kind
 * are put together afterwards.
 */
export function arrange(
  threading: readonly number[],
  shafts: number,
  raise: Lifts,
  candidates: Iterable<Candidate>,
  size: FigureSize,
): Arrangement[] {
  const up = matrix(raise, shafts);
  const unit = commonDivisor(size.unitEnds ?? threading.length, threading.length);
  const row = commonDivisor(size.picksPerRow ?? raise.length, raise.length);
  const sidePairs = 2 * (threading.length / unit) * raise.length;
  const lengthPairs = 2 * (raise.length / row) * threading.length;
  const best = new Map<string, Found>();

  for (const candidate of candidates) {
    const down = matrix(candidate.sink, shafts);
    if (up.some((bit, i) => bit === 1 && down[i] === 1)) continue;
    const sides = byOpen(openSideways(up, down, threading, shafts, unit));
    const lengths = byOpen(openLengthways(up, down, threading, shafts, row));
    for (const [side, length] of worthTrying([...sides.keys()], [...lengths.keys()])) {
      const key = `${candidate.opposite} ${side} ${length}`;
      for (const endStart of sides.get(side)!) {
        for (const pickStart of lengths.get(length)!) {
          const ground = begun(threading, shafts, raise, candidate.sink, endStart, pickStart);
          const rival = best.get(key);
          if (rival && !comesFirst(ground, rival.ground)) continue;
          best.set(key, { opposite: candidate.opposite, side, length, ground });
        }
      }
    }
  }
  return [...best.values()]
    .sort(
      (a, b) =>
        a.side * lengthPairs + a.length * sidePairs - (b.side * lengthPairs + b.length * sidePairs) ||
        Number(b.opposite) - Number(a.opposite) ||
        a.side - b.side,
    )
    .map((found) => ({
      ground: found.ground,
      opposite: found.opposite,
      cut: {
        sideways: borderCut(found.side, sidePairs),
        lengthways: borderCut(found.length, lengthPairs),
      },
    }));
}

/** Shafts by pick, a row a pick, as 0 and 1. */
function matrix(lifts: Lifts, shafts: number): Uint8Array {
  const bits = new Uint8Array(lifts.length * shafts);
  for (const [pick, set] of lifts.entries()) for (const shaft of set) bits[pick * shafts + shaft - 1] = 1;
  return bits;
}

/** Pairs left open between units, for a figure begun at each end of one unit. */
function openSideways(
  up: Uint8Array,
  down: Uint8Array,
  threading: readonly number[],
  shafts: number,
  unit: number,
): number[] {
  const open = new Array<number>(unit).fill(0);
  for (let end = 0; end < threading.length; end++) {
    const right = threading[end]! - 1;
    const left = threading[modulo(end - 1, threading.length)]! - 1;
    let pairs = 0;
    for (let pick = 0; pick < up.length; pick += shafts) {
      if (up[pick + left] !== down[pick + right]) pairs += 1;
      if (down[pick + left] !== up[pick + right]) pairs += 1;
    }
    open[end % unit]! += pairs;
  }
  return open;
}

/** Pairs left open between rows, for a figure begun at each pick of one row. */
function openLengthways(
  up: Uint8Array,
  down: Uint8Array,
  threading: readonly number[],
  shafts: number,
  row: number,
): number[] {
  const open = new Array<number>(row).fill(0);
  const picks = up.length / shafts;
  for (let pick = 0; pick < picks; pick++) {
    const before = modulo(pick - 1, picks) * shafts - 1;
    const after = pick * shafts - 1;
    let pairs = 0;
    for (const shaft of threading) {
      if (up[before + shaft] !== down[after + shaft]) pairs += 1;
      if (down[before + shaft] !== up[after + shaft]) pairs += 1;
    }
    open[pick % row]! += pairs;
  }
  return open;
}

/** Of all meetings of sides and lengths those where one of the two is the least: what a wrong start costs. */
function worthTrying(sides: readonly number[], lengths: readonly number[]): [side: number, length: number][] {
  const side = Math.min(...sides);
  const length = Math.min(...lengths);
  return [
    ...lengths.map((other): [number, number] => [side, other]),
    ...sides.filter((other) => other !== side).map((other): [number, number] => [other, length]),
  ];
}

/** The places by the number of pairs they leave open; two of each will do to choose from. */
function byOpen(open: readonly number[]): Map<number, number[]> {
  const places = new Map<number, number[]>();
  for (const [place, pairs] of open.entries()) {
    const known = places.get(pairs);
    if (!known) places.set(pairs, [place]);
    else if (known.length < 2) known.push(place);
  }
  return places;
}

/** The ground begun at an end and a pick, its shafts numbered anew in the order in which the ends meet them. */
function begun(
  threading: readonly number[],
  shafts: number,
  raise: Lifts,
  sink: Lifts,
  endStart: number,
  pickStart: number,
): Ground {
  const turned = upTo(threading.length).map((i) => threading[(i + endStart) % threading.length]!);
  const number = new Map<number, number>();
  for (const shaft of turned) if (!number.has(shaft)) number.set(shaft, number.size + 1);
  const anew = (set: ShaftSet) => set.map((shaft) => number.get(shaft)!).sort((a, b) => a - b);
  return {
    shafts,
    threading: turned.map((shaft) => number.get(shaft)!),
    steps: upTo(raise.length).map((i) => {
      const pick = (i + pickStart) % raise.length;
      return { raise: anew(raise[pick]!), sink: anew(sink[pick]!) };
    }),
  };
}

/** Whether one ground raises lower shafts earlier than another; a mere order, so that the choice between equals is fixed. */
function comesFirst(a: Ground, b: Ground): boolean {
  const numbers = ({ steps }: Ground) => [
    ...steps.flatMap(({ raise }) => raise),
    ...steps.flatMap(({ sink }) => sink),
  ];
  return compareLists(numbers(a), numbers(b)) < 0;
}
