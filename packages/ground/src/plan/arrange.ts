import { commonDivisor, compareLists, upTo } from "../arithmetic.js";
import type { Ground, ShaftSet } from "../types.js";
import { borderCut, type FigureSize, type GroundCut } from "./cut.js";
import { type Lifts, matrix, openLengthways, openSideways, shareShaft } from "./open-pairs.js";

/** One way to lay the warp-faced weave of the drawn units against the weft-faced ground. */
export interface Arrangement {
  /** The two weaves as one raise and sink plan. */
  readonly ground: Ground;
  /** Whether the two weaves run in opposite directions. */
  readonly opposite: boolean;
  /** How its borders cut. */
  readonly cut: GroundCut;
}

/** A warp-faced weave to try: the shafts it binds on each pick. */
export interface Candidate {
  readonly sink: Lifts;
  readonly opposite: boolean;
}

/** As many kinds of cut are laid out; what cuts worse than all these is no rival. */
const MOST_KINDS = 24;

/** A kind of cut that was found, the candidate that makes it, and where the figure then begins. */
interface Found {
  readonly candidate: Candidate;
  readonly side: number;
  readonly length: number;
  readonly endStarts: readonly number[];
  readonly pickStarts: readonly number[];
}

/**
 * Every arrangement of a ground with the candidates, begun at every end and pick, one for each kind of cut, the best first,
 * 24 at the most.
 * A candidate that would raise and sink the same shaft on a pick is left out.
 *
 * How a border between units cuts depends on the end at which the figure begins, and not on the pick; how a border between
 * rows cuts depends on the pick, and not on the end. So each is counted once for every place, and the places of each kind
 * are put together afterwards.
 * @example arrange([1, 2, 3, 4], 4, [[1], [2], [3], [4]], [{ sink: [[4], [3], [2], [1]], opposite: true }], {})[0].cut.sideways.open // 0
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
  const weight = ({ side, length }: Found) => side * lengthPairs + length * sidePairs;
  const kinds = new Map<string, Found[]>();
  let least = Number.POSITIVE_INFINITY;

  for (const candidate of candidates) {
    const down = matrix(candidate.sink, shafts);
    if (shareShaft(up, down)) continue;
    const sides = byOpen(openSideways(up, down, threading, shafts, unit));
    const lengths = byOpen(openLengthways(up, down, threading, shafts, row));
    for (const [side, length] of worthTrying([...sides.keys()], [...lengths.keys()])) {
      const found = {
        candidate,
        side,
        length,
        endStarts: sides.get(side)!,
        pickStarts: lengths.get(length)!,
      };
      least = Math.min(least, weight(found));
      const key = `${candidate.opposite} ${side} ${length}`;
      const alike = kinds.get(key);
      if (!alike) kinds.set(key, [found]);
      // Of the best, all are kept to choose from; of the others a few will do.
      else if (weight(found) === least || alike.length < 4) alike.push(found);
    }
  }
  return [...kinds.values()]
    .sort(
      ([a], [b]) =>
        weight(a!) - weight(b!) ||
        Number(b!.candidate.opposite) - Number(a!.candidate.opposite) ||
        a!.side - b!.side,
    )
    .slice(0, MOST_KINDS)
    .map((alike) => ({
      ground: firstOf(alike.flatMap((found) => groundsOf(threading, shafts, raise, found))),
      opposite: alike[0]!.candidate.opposite,
      cut: {
        sideways: borderCut(alike[0]!.side, sidePairs),
        lengthways: borderCut(alike[0]!.length, lengthPairs),
      },
    }));
}

/** The grounds of a candidate, begun at each of its places. */
function groundsOf(threading: readonly number[], shafts: number, raise: Lifts, found: Found): Ground[] {
  return found.endStarts.flatMap((endStart) =>
    found.pickStarts.map((pickStart) =>
      begun(threading, shafts, raise, found.candidate.sink, endStart, pickStart),
    ),
  );
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

/** The ground that raises the lower shafts earlier; a mere order, so that the choice between equals is fixed. */
function firstOf(grounds: readonly Ground[]): Ground {
  const ranked = grounds.map((ground) => ({ ground, numbers: numbersOf(ground) }));
  return ranked.reduce((a, b) => (compareLists(b.numbers, a.numbers) < 0 ? b : a)).ground;
}

function numbersOf({ steps }: Ground): number[] {
  return [...steps.flatMap(({ raise }) => raise), ...steps.flatMap(({ sink }) => sink)];
}
