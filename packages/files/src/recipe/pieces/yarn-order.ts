/**
 * An order of yarns over the threads of a system, in the notation of the threading: `indigo*12 (natural indigo*2)*3`. It
 * begins again where it ends.
 */
import { nearest } from "@drawcord/base";
import { type Piece, type Spot, textOf, wayTo, wrong } from "../../tree/spot.js";

/** The most threads of one order, written out. */
const mostThreads = 1_000_000;

/** How deep groups may stand in groups. */
const mostNested = 32;

interface Word {
  readonly text: string;
  readonly column: number;
}

/** The names of the yarns that there are; undefined where they are not known, and any may be named. */
export type KnownYarns = readonly string[] | undefined;

/**
 * Reads an order of yarns.
 * @param known the yarns that there are
 * @returns the yarn of each thread, by its name
 * @throws {FileError} `bad-notation`; `unknown-yarn` for a name that is no yarn's; `too-large` past a million threads
 */
export function readYarnOrder(of: Spot, known: KnownYarns): readonly string[] {
  const words = [...textOf(of).matchAll(/\*\s*\d*|[()]|[^\s,()*]+/g)].map(
    ({ 0: text, index }): Word => ({ text, column: index + 1 }),
  );
  let at = 0;
  const order = group(0);
  if (order.length === 0) throw refused(undefined, "the name of a yarn");
  return order;

  function group(depth: number): readonly string[] {
    const threads: string[] = [];
    while (at < words.length) {
      const word = words[at++]!;
      if (word.text === ")") {
        if (depth === 0) throw refused(word, "the name of a yarn");
        return threads;
      }
      const one = word.text === "(" ? nested(word, depth) : [yarn(word)];
      const times = repeats();
      if (threads.length + one.length * times > mostThreads) {
        throw wrong(of, "too-large", `${wayTo(of.path)} comes to more than ${mostThreads} threads`);
      }
      for (let i = 0; i < times; i++) for (const thread of one) threads.push(thread);
    }
    if (depth > 0) throw refused(undefined, `")"`);
    return threads;
  }

  function nested(word: Word, depth: number): readonly string[] {
    if (depth === mostNested) throw refused(word, `no more than ${mostNested} brackets within each other`);
    const threads = group(depth + 1);
    if (threads.length === 0) throw refused(word, "yarns between the brackets");
    return threads;
  }

  function repeats(): number {
    const word = words[at];
    if (word === undefined || !word.text.startsWith("*")) return 1;
    at++;
    const times = Number(word.text.slice(1));
    if (!(times >= 1)) throw refused(word, "* and how many times");
    return times;
  }

  function yarn({ text, column }: Word): string {
    if (text.startsWith("*")) throw refused({ text, column }, "the name of a yarn");
    if (known === undefined || known.includes(text)) return text;
    const meant = nearest(text, known);
    const hint = meant === undefined ? `the yarns are ${known.join(", ")}` : `did you mean "${meant}"?`;
    const sentence = `${wayTo(of.path)} names "${text}", which is no yarn of this recipe; ${hint}`;
    throw wrong(of, "unknown-yarn", sentence, pieceOf({ text, column }));
  }

  function refused(word: Word | undefined, expected: string) {
    const found = word === undefined ? "the end of the order" : `"${word.text}"`;
    const sentence = `${wayTo(of.path)}: ${found} was found; expected ${expected}`;
    return wrong(of, "bad-notation", sentence, word && pieceOf(word));
  }

  function pieceOf({ column, text }: Word): Piece {
    return { from: column - 1, to: column - 1 + text.length };
  }
}

/**
 * Writes an order of yarns as short as runs and a repeat of the whole make it.
 * @example printYarnOrder(["madder", "madder", "gold", "madder", "madder", "gold"]) // "madder*2 gold"
 */
export function printYarnOrder(order: readonly string[]): string {
  const runs: { yarn: string; times: number }[] = [];
  for (const yarn of leastRepeat(order)) {
    const run = runs.at(-1);
    if (run?.yarn === yarn) run.times++;
    else runs.push({ yarn, times: 1 });
  }
  return runs.map(({ yarn, times }) => (times === 1 ? yarn : `${yarn}*${times}`)).join(" ");
}

/** The shortest order that comes to the same when it begins again and again. */
function leastRepeat(order: readonly string[]): readonly string[] {
  for (let length = 1; length <= order.length / 2; length++) {
    if (order.length % length === 0 && order.every((yarn, i) => yarn === order[i % length])) {
      return order.slice(0, length);
    }
  }
  return order;
}
