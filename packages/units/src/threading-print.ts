import { type NotationList, shortestText } from "./shortest-notation.js";
import type { UnitShafts } from "./types.js";

/** Up to this many units, or pieces of a longer threading, the shortest text is looked for. */
const MOST_SEARCHED = 2000;

/**
 * Writes a unit threading as short as the notation allows, so that `parseThreading` reads it back. Past 2000 units,
 * runs and like units are folded first and the shortest text of those pieces is looked for.
 * @param threading an entry a unit, unit 1 first; an empty one is a static unit
 * @example printThreading(parseThreading("1 2 3 2 1 2 3 2 X X")) // "(1-3 2)*2 X*2"
 */
export function printThreading(threading: readonly UnitShafts[]): string {
  if (threading.length === 0) return "";
  const texts = threading.map(unitText);
  const steps = threading.map((_, unit) => stepAfter(threading, unit));
  if (threading.length <= MOST_SEARCHED) return shortestText(scriptOf(texts, steps));
  const pieces = foldPieces(texts, steps);
  return pieces.length <= MOST_SEARCHED ? shortestText(scriptOf(pieces)) : pieces.join(" ");
}

/** One unit as text. */
export function unitText(unit: UnitShafts): string {
  return unit.length === 0 ? "X" : unit.join("+");
}

/** +1 or -1 where `unit` and the next hang on one shaft each and the next one's is that much further, else 0. */
export function stepAfter(threading: readonly UnitShafts[], unit: number): number {
  const here = threading[unit]!;
  const next = threading[unit + 1];
  if (here.length !== 1 || next?.length !== 1) return 0;
  const step = next[0]! - here[0]!;
  return Math.abs(step) === 1 ? step : 0;
}

function scriptOf(
  entries: readonly string[],
  steps: ArrayLike<number> = new Int8Array(entries.length),
): NotationList {
  const numbers = new Map<string, number>();
  const kinds = entries.map((text) => {
    const kind = numbers.get(text) ?? numbers.size;
    numbers.set(text, kind);
    return kind;
  });
  const texts = [...numbers.keys()];
  return { kinds, texts, bare: (kind) => !/[-*]/.test(texts[kind]!), steps };
}

/** Runs and like units as pieces of text, each as long as it goes. */
function foldPieces(texts: readonly string[], steps: readonly number[]): string[] {
  const pieces: string[] = [];
  for (let start = 0; start < texts.length; ) {
    let like = start;
    while (texts[like + 1] === texts[start]) like++;
    let end = start;
    while (steps[start] !== 0 && steps[end] === steps[start]) end++;
    if (end - start >= 2) pieces.push(`${texts[start]}-${texts[end]}`);
    else if (like > start) pieces.push(`${texts[start]}*${like - start + 1}`);
    else pieces.push(texts[start]!);
    start = (end - start >= 2 ? end : like) + 1;
  }
  return pieces;
}
