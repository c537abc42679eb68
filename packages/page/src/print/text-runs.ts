import bidiModule, { type Bidi } from "bidi-js";
import { fontRuns } from "../drawing/font-runs.js";
import type { Face } from "../drawing/shape.js";
import type { FontName } from "./font-names.js";

/** Its declarations describe another build than the one Node loads, whose one export is the factory itself. */
const bidiFactory = bidiModule as unknown as () => Bidi;

/** Scripts that run from right to left. */
const RTL = /[\p{Script=Hebrew}\p{Script=Arabic}]/u;

let bidi: Bidi | undefined;

/** The tables are made when a line first needs them. */
function tables(): Bidi {
  bidi ??= bidiFactory();
  return bidi;
}

/** Direction levels of the characters of a line. */
function levelsOf(text: string, rtl: boolean): Uint8Array {
  if (!RTL.test(text)) return new Uint8Array(text.length);
  return tables().getEmbeddingLevels(text, rtl ? "rtl" : "ltr").levels;
}

/** A stretch of a line in one font and one direction. */
export interface TextRun {
  readonly text: string;
  readonly font: FontName;
}

/**
 * A line of text in the order in which it is read, cut where its font or direction changes and, in scripts that run from
 * right to left, at every word; with the order from left to right in which the runs stand on the paper.
 * @param rtl whether the paragraph that it is a line of runs from right to left
 * Source of the order: Unicode Standard Annex 9, rules L2 and L4.
 */
export function textRuns(
  text: string,
  face: Face,
  rtl: boolean,
): { runs: readonly TextRun[]; fromLeft: readonly number[] } {
  const levels = levelsOf(text, rtl);
  const runs: (TextRun & { readonly level: number })[] = [];
  let at = 0;
  for (const { text: run, script } of fontRuns(text)) {
    const font = script === "latin" ? face : script;
    for (const part of script === "latin" && !RTL.test(text) ? [run] : (run.match(/\s+|\S+/gu) ?? [])) {
      for (const piece of leveled(part, levels, at)) {
        const turns = script === "latin" && piece.level % 2 === 1;
        runs.push({ ...piece, ...(turns ? { text: turned(piece.text) } : {}), font });
      }
      at += part.length;
    }
  }
  return { runs, fromLeft: visualOrder(runs.map(({ level }) => level)) };
}

/** Signs among letters that run from right to left, which no font of theirs turns: in that order, and brackets turned too. */
function turned(signs: string): string {
  return [...signs]
    .reverse()
    .map((sign) => tables().getMirroredCharacter(sign) ?? sign)
    .join("");
}

function leveled(part: string, levels: Uint8Array, start: number): { text: string; level: number }[] {
  const pieces: { text: string; level: number }[] = [];
  let at = start;
  for (const char of part) {
    const level = levels[at]!;
    const last = pieces.at(-1);
    if (last?.level === level) last.text += char;
    else pieces.push({ text: char, level });
    at += char.length;
  }
  return pieces;
}

/** From the highest level down to the lowest odd one, every stretch at that level or higher is turned round. */
function visualOrder(levels: readonly number[]): number[] {
  const order = levels.map((_, i) => i);
  for (let level = Math.max(0, ...levels); level > 0; level--) {
    for (let start = 0; start < order.length; start++) {
      let end = start;
      while (end < order.length && levels[order[end]!]! >= level) end++;
      if (end - start > 1) order.splice(start, end - start, ...order.slice(start, end).reverse());
      start = Math.max(start, end - 1);
    }
  }
  return order;
}
