/**
 * The cloth of a draft, along its picks and along its ends. The figure is worked out once as squares, a bit for each row
 * of the lift plan and each unit; the cloth is these squares, widened to threads and interlaced by the ground harness.
 */
import { BitGrid, transpose } from "@drawcord/grid";
import type { ShaftSet } from "@drawcord/ground";
import { checkDraft, draftSize } from "./draft-check.js";
import { edgesOf, interlace, repeatRows, widen } from "./interlace.js";
import type { Expansion, UnitDraft } from "./types.js";

/** Places as bits, a word of them, and the places in the words before it. */
interface Places {
  readonly word: number;
  bits: number;
  readonly before: Places | undefined;
}

/**
 * Works a draft out to every end and pick:
 * `raised(e, p) = shaft(e) in R(p) or (drawn(e, p) and shaft(e) not in S(p))`, where pick `p` raises the ground shafts
 * `R(p)` and sinks `S(p)`. Ends run selvedge left, units, selvedge right; the ground threading begins at the first end
 * of unit 1, the treadling at pick 1; both repeat. A selvedge end is never drawn.
 * @param draft a draft as `checkDraft` passes it
 * @throws {UnitsError} for a draft that `checkDraft` refuses
 * @example expand(draft).drawdown.rows // 12
 */
export function expand(draft: UnitDraft): Expansion {
  checkDraft(draft);
  const { ends, picks } = draftSize(draft);
  const { steps } = draft.ground;
  const unitEdges = edgesOf(draft.unitEnds, draft.threading.length, draft.selvedge?.left?.length ?? 0);
  const unitOfEnd = layOut(unitEdges, ends);
  const rowOfPick = layOut(edgesOf(draft.picksPerRow, draft.lifts.length, 0), picks);
  const stepOfPick = rowOfPick.map((_, pick) => pick % steps.length);
  const shaftOfEnd = groundShafts(draft, unitOfEnd);

  const squares = drawnSquares(draft);
  const drawn = widen(squares, unitEdges, ends);
  const endsOn = placesOn(ends, (end) => [shaftOfEnd[end]!]);
  const row = () => new Uint32Array(drawn.stride);
  return {
    drawdown: interlace(drawn, rowOfPick, stepOfPick, {
      raised: steps.map((step) => raise(row(), 0, step.raise, endsOn)),
      sunk: steps.map((step) => raise(row(), 0, step.sink, endsOn)),
    }),
    drawn: repeatRows(drawn, rowOfPick),
    squares,
    unitOfEnd,
    shaftOfEnd,
    rowOfPick,
    stepOfPick,
  };
}

/**
 * The cloth of an expanded draft end by end: rows are ends, columns are picks. It is the drawdown transposed, at the
 * cost of transposing its squares alone.
 * @param draft the draft that was expanded
 * @param expansion what `expand` gave for it
 * @example transpose(expandEnds(draft, expand(draft))).equals(expand(draft).drawdown) // true
 */
export function expandEnds(draft: UnitDraft, expansion: Expansion): BitGrid {
  const { squares, unitOfEnd, shaftOfEnd, rowOfPick, stepOfPick } = expansion;
  const picks = rowOfPick.length;
  const drawn = widen(transpose(squares), edgesOf(draft.picksPerRow, draft.lifts.length, 0), picks);
  const { steps } = draft.ground;
  const raisedOn = placesOn(picks, (pick) => steps[stepOfPick[pick]!]!.raise);
  const sunkOn = placesOn(picks, (pick) => steps[stepOfPick[pick]!]!.sink);
  const row = () => new Uint32Array(drawn.stride);
  const raised: Uint32Array[] = [];
  const sunk: Uint32Array[] = [];
  for (const shaft of new Set(shaftOfEnd)) {
    raised[shaft] = raise(row(), 0, [shaft], raisedOn);
    sunk[shaft] = raise(row(), 0, [shaft], sunkOn);
  }
  return interlace(drawn, unitOfEnd, shaftOfEnd, { raised, sunk });
}

/** The square that each thread lies on, -1 outside all. */
function layOut(edges: Int32Array, threads: number): Int32Array {
  const squareOf = new Int32Array(threads).fill(-1);
  for (let square = 0; square + 1 < edges.length; square++) {
    squareOf.fill(square, edges[square]!, edges[square + 1]!);
  }
  return squareOf;
}

/** The ground shaft of each end. */
function groundShafts({ ground, selvedge }: UnitDraft, unitOfEnd: Int32Array): Int32Array {
  const { threading } = ground;
  const { left = [], right = [] } = selvedge ?? {};
  const firstRight = unitOfEnd.length - right.length;
  return unitOfEnd.map((unit, end) =>
    unit !== -1
      ? threading[(end - left.length) % threading.length]!
      : (left[end] ?? right[end - firstRight]!),
  );
}

/** Rows x units: the units that hang on any of the pattern shafts that a row draws. */
function drawnSquares({ threading, lifts }: UnitDraft): BitGrid {
  const stride = (threading.length + 31) >>> 5;
  const unitsOn = placesOn(threading.length, (unit) => threading[unit]!);
  const words = new Uint32Array(lifts.length * stride);
  // A lift that comes again is mostly one list named over and over: it is read once, and its squares are copied.
  const firstRow = new Map<ShaftSet, number>();
  for (let row = 0; row < lifts.length; row++) {
    const start = row * stride;
    const alike = firstRow.get(lifts[row]!);
    if (alike !== undefined) words.copyWithin(start, alike * stride, (alike + 1) * stride);
    else {
      firstRow.set(lifts[row]!, row);
      raise(words, start, lifts[row]!, unitsOn);
    }
  }
  return BitGrid.own(lifts.length, threading.length, words);
}

/** For each shaft the places that name it, of so many places. */
function placesOn(places: number, shaftsAt: (place: number) => ShaftSet): (Places | undefined)[] {
  const placesOnShaft: (Places | undefined)[] = [];
  for (let place = 0; place < places; place++) {
    const word = place >>> 5;
    for (const shaft of shaftsAt(place)) {
      let last = placesOnShaft[shaft];
      if (last?.word !== word) {
        last = { word, bits: 0, before: last };
        placesOnShaft[shaft] = last;
      }
      last.bits |= 1 << (place & 31);
    }
  }
  return placesOnShaft;
}

/** Sets the bits of all places that name any of `shafts`, in the words that begin at `start`. */
function raise(
  words: Uint32Array,
  start: number,
  shafts: ShaftSet,
  placesOnShaft: readonly (Places | undefined)[],
): Uint32Array {
  for (let i = 0; i < shafts.length; i++) {
    for (let places = placesOnShaft[shafts[i]!]; places !== undefined; places = places.before) {
      words[start + places.word]! |= places.bits;
    }
  }
  return words;
}
