import type { Range } from "@drawcord/base";
import { lineStarts, stretchIn } from "../place.js";

/** Something to be taken out of a text, from an offset to another, and what stands in its place. */
export interface Splice {
  readonly from: number;
  readonly to: number;
  readonly by: string;
}

/** An edit of a text: what is taken out, by its place in the text before all edits, and what stands in its place. */
export interface TextEdit {
  /** What is taken out; of no length where something is put in. */
  readonly range: Range;
  /** What stands in its place; empty where something is taken out. */
  readonly text: string;
}

/**
 * A text with all splices made; their places are those of the text before.
 * @param splices in the order of their places, none over another
 * @example spliced("sett 12", [{ from: 5, to: 7, by: "10" }]) // "sett 10"
 */
export function spliced(text: string, splices: readonly Splice[]): string {
  let done = 0;
  const parts = splices.map(({ from, to, by }) => {
    const part = text.slice(done, from) + by;
    done = to;
    return part;
  });
  return parts.join("") + text.slice(done);
}

/** Splices of a text as edits of the file that it was read from. */
export function placedEdits(text: string, file: string, splices: readonly Splice[]): readonly TextEdit[] {
  const starts = lineStarts(text);
  return splices.map(({ by, from, to }) => ({ range: { file, ...stretchIn(starts, from, to) }, text: by }));
}

/**
 * Edits of a text, and others of the text that they lead to, as edits of the text before.
 * @param text before all edits
 * @param file its name, for the places
 * @param first in the order of their places, none over another
 * @param then so too, by the places in the text that the first lead to
 * @example composedEdits(text, "least", reviseRecipe(text, "least", [{ path: ["units", "ends"], value: 4 }]).edits, [])[0]?.text // "4"
 */
export function composedEdits(
  text: string,
  file: string,
  first: readonly TextEdit[],
  then: readonly TextEdit[],
): readonly TextEdit[] {
  return placedEdits(text, file, followedByAll(first.map(spliceOf), then.map(spliceOf)));
}

function spliceOf({ range, text }: TextEdit): Splice {
  return { from: range.offset, to: range.end.offset, by: text };
}

/** Splices of a text, and others of the text with them made, all as splices of the text before. */
export function followedByAll(made: readonly Splice[], then: readonly Splice[]): readonly Splice[] {
  // The last comes first, so that the places of the others stay what they are.
  return then.reduceRight(followedBy, made);
}

/** Whether each splice ends before the next begins, so that it is all the same which is made first. */
export function areApart(splices: readonly Splice[]): boolean {
  return splices.every(({ from }, i) => i === 0 || splices[i - 1]!.to < from);
}

/**
 * The splices of a text, and one more whose place is that in the text with them made, as splices of the text before them.
 * @example followedBy([{ from: 0, to: 1, by: "two" }], { from: 4, to: 5, by: "x" }) // [{ from: 0, to: 1, by: "two" }, { from: 2, to: 3, by: "x" }]
 */
export function followedBy(made: readonly Splice[], next: Splice): readonly Splice[] {
  // How much longer the text before a place has become.
  let grown = 0;
  const placed = made.map((splice) => {
    const start = splice.from + grown;
    grown += splice.by.length - (splice.to - splice.from);
    return { splice, start, end: start + splice.by.length, after: grown };
  });
  const ahead = placed.filter(({ end }) => end < next.from);
  const met = placed.filter(({ end, start }) => end >= next.from && start <= next.to);
  const behind = placed.filter(({ start }) => start > next.to);
  const until = ahead.at(-1)?.after ?? 0;
  const [first, last] = [met[0], met.at(-1)];
  // What it meets and does not take out stands around it.
  const [from, head] =
    first !== undefined && first.start <= next.from
      ? [first.splice.from, first.splice.by.slice(0, next.from - first.start)]
      : [next.from - until, ""];
  const [to, tail] =
    last !== undefined && last.end >= next.to
      ? [last.splice.to, last.splice.by.slice(next.to - last.start)]
      : [next.to - (last?.after ?? until), ""];
  const only = (those: typeof placed) => those.map(({ splice }) => splice);
  return [...only(ahead), { from, to, by: head + next.by + tail }, ...only(behind)];
}
