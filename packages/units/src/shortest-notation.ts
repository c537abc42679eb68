/**
 * The shortest text for a list of units. Every text is a row of pieces with a blank between: a unit (`5`, `3+9`, `X`),
 * a run (`1-8`), a unit or a bracket with its number of times. The shortest text up to each unit is the best of: the
 * shortest up to an earlier unit, and one piece more. What stands in a bracket is written in the same way, once for
 * each stretch that is repeated at all.
 */

/** A list to be written: the kind of each entry, and the text of each kind. */
export interface NotationList {
  readonly kinds: ArrayLike<number>;
  readonly texts: readonly string[];
  /** Whether the kind may be followed by `*` as it stands. */
  readonly bare: (kind: number) => boolean;
  /** +1 or -1 where the next entry goes on a run upwards or downwards, else 0. */
  readonly steps: ArrayLike<number>;
}

/** What a text costs. Of texts as long the one of fewer pieces reads better, then the one whose runs begin lower. */
interface Cost {
  readonly length: number;
  readonly pieces: number;
  readonly starts: number;
}

/** A piece of text for the entries from `from` on, up to the place it is kept for, and the cost of all up to there. */
interface Piece {
  readonly from: number;
  readonly times: number;
  readonly run: boolean;
  readonly upTo: Cost;
}

/** The shortest text for entries that stand next to each other. */
interface EntryStretch {
  readonly cost: Cost;
  readonly text: () => string;
}

/** The shortest text of a whole script; takes memory and time with the square of its length. */
export function shortestText(script: NotationList): string {
  const { kinds, texts, bare, steps } = script;
  const count = kinds.length;
  const alike = alikeFrom(kinds);
  const written = new Map<number, EntryStretch>();

  /** The stretch of `size` entries from `start`, written once. */
  const stretch = (start: number, size: number): EntryStretch => {
    const key = start * (count + 1) + size;
    const known = written.get(key);
    if (known !== undefined) return known;
    const made = write(start, size);
    written.set(key, made);
    return made;
  };

  const write = (start: number, size: number): EntryStretch => {
    const last: Piece[] = [];
    const offer = (from: number, to: number, piece: Cost, times: number, run: boolean) => {
      const before = last[from]?.upTo ?? { length: -1, pieces: 0, starts: 0 };
      const length = before.length + 1 + piece.length;
      const known = last[to]?.upTo;
      if (known !== undefined && length > known.length) return;
      const upTo = { length, pieces: before.pieces + piece.pieces, starts: before.starts + piece.starts };
      if (known === undefined || isLess(upTo, known)) last[to] = { from, times, run, upTo };
    };

    for (let from = 0; from < size; from++) {
      const kind = kinds[start + from]!;
      const own = { length: texts[kind]!.length, pieces: 1, starts: 0 };
      offer(from, from + 1, own, 1, false);
      const times = Math.min(alike(start + from, 1) + 1, size - from);
      for (let m = 2; m <= times; m++) offer(from, from + m, repeated(own, m, !bare(kind)), m, false);

      const step = steps[start + from]!;
      for (let to = from + 1; step !== 0 && to < size && steps[start + to - 1] === step; to++) {
        if (to === from + 1) continue; // two units are as short without the dash
        const length = own.length + 1 + texts[kinds[start + to]!]!.length;
        offer(from, to + 1, { length, pieces: 1, starts: Number.parseInt(texts[kind]!, 10) }, 1, true);
      }

      for (let period = 2; from + 2 * period <= size; period++) {
        const repeats = Math.floor(Math.min(alike(start + from, period) + period, size - from) / period);
        if (repeats < 2 || isRepeated(start + from, period)) continue;
        const inside = stretch(start + from, period).cost;
        for (let m = 2; m <= repeats; m++)
          offer(from, from + m * period, repeated(inside, m, true), m, false);
      }
    }

    const text = () => {
      const pieces: string[] = [];
      for (let to = size; to > 0; to = last[to]!.from) {
        const { from, times, run } = last[to]!;
        pieces.push(pieceText(start + from, to - from, times, run));
      }
      return pieces.reverse().join(" ");
    };
    return { cost: last[size]!.upTo, text };
  };

  /** Whether `period` entries are a shorter stretch again and again. */
  const isRepeated = (start: number, period: number): boolean => {
    for (let part = 1; part <= period / 2; part++) {
      if (period % part === 0 && alike(start, part) + part >= period) return true;
    }
    return false;
  };

  const pieceText = (start: number, size: number, times: number, run: boolean): string => {
    const kind = kinds[start]!;
    if (run) return `${texts[kind]}-${texts[kinds[start + size - 1]!]}`;
    if (times === 1) return texts[kind]!;
    const inside = size === times ? texts[kind]! : stretch(start, size / times).text();
    return size === times && bare(kind) ? `${inside}*${times}` : `(${inside})*${times}`;
  };

  return stretch(0, count).text();
}

function isLess(a: Cost, b: Cost): boolean {
  return (a.length - b.length || a.pieces - b.pieces || a.starts - b.starts) < 0;
}

/** The cost of a text with its number of times, in brackets or not. */
function repeated(text: Cost, times: number, brackets: boolean): Cost {
  const length = text.length + (brackets ? 2 : 0) + 1 + String(times).length;
  return { length, pieces: text.pieces, starts: text.starts };
}

/** For each entry and distance: how many entries from it on are each like the one that distance further. */
function alikeFrom(kinds: ArrayLike<number>): (entry: number, distance: number) => number {
  const count = kinds.length;
  const table = new Uint16Array((count + 1) * (count + 1));
  for (let entry = count - 1; entry >= 0; entry--) {
    for (let distance = 1; entry + distance < count; distance++) {
      if (kinds[entry] === kinds[entry + distance]) {
        table[entry * (count + 1) + distance] = table[(entry + 1) * (count + 1) + distance]! + 1;
      }
    }
  }
  return (entry, distance) => table[entry * (count + 1) + distance]!;
}
