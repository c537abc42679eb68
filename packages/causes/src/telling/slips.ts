/**
 * The slips of a line: where the shortest telling fails and one edit restores it. An edit is believed when the line that
 * it leaves is told in so many bits less that the slip itself is paid for: its place, and what was written instead.
 */

import { motifsOf, telling } from "./length.js";
import { type Alphabet, type EntryLine, edited, type LineEdit } from "./line.js";
import { suggestions } from "./suggest.js";

/**
 * Bits by which an edit must shorten the telling to be told, beside another slip; of a line that has no other, one that
 * lengthens it a little is noted: a plan in which one edit does so much has a slip more often than not.
 */
const LEAST_GAIN = 2.4;
const LEAST_ALONE = -1;

/** Bits of an edit that the telling alone cannot be believed in. */
const LEAST_DOUBTED = 4;

/** Bits from which an edit may be sure. */
const SURE_GAIN = 6;

/** An edit that lengthens the telling by up to so many bits is still told where findings speak for it. */
const WEAK_GAIN = -9;

/** Such edits that are told. */
const MOST_WEAK = 5;

/** Bits by which an edit must be ahead of every other to be sure. */
const LEAST_LEAD = 4;

/** Bits by which an edit must be ahead of making its counterpart alike instead: of two copies either may be the wrong one. */
const TWIN_LEAD = 8;

/** Steps of all tellings that are weighed for one slip. */
const MOST_STEPS = 4e7;

/** Slips of one line that are told. */
const MOST_SLIPS = 8;

/** A slip of a line, by its places before any slip is mended. */
export interface LineSlip {
  readonly edit: LineEdit;
  /** Bits that it saves, the slip paid for. */
  readonly gain: number;
  /** Whether no other edit comes near it. */
  readonly sure: boolean;
  /** Whether it can never be sure. */
  readonly doubted: boolean;
  /** Other edits that would do nearly as well, the likeliest first. */
  readonly rivals: readonly LineEdit[];
}

/** Edits of a source of its own, weighed besides those that the line suggests. */
export type More = (line: EntryLine) => readonly LineEdit[];

/** The slips of a line, that which shortens the telling most first. */
export function lineSlips(line: EntryLine, alphabet: Alphabet, more: More = () => []): LineSlip[] {
  const found: LineSlip[] = [];
  let current = line;
  // The place before all mends of each entry; one that was put in has the place it was put before.
  let origin: readonly number[] = line.map((_, i) => i);
  const touched = new Set<number>();
  while (found.length < MOST_SLIPS) {
    const slip = bestSlip(current, alphabet, more, found.length === 0 ? LEAST_ALONE : LEAST_GAIN);
    if (slip === undefined) break;
    const placed = (edit: LineEdit) => withPlaces(edit, (at) => origin[at] ?? line.length);
    const places = placesOf(placed(slip.edit));
    // A slip mended a second time was none.
    if (places.some((place) => touched.has(place))) break;
    for (const place of places) touched.add(place);
    found.push({ ...slip, edit: placed(slip.edit), rivals: slip.rivals.map(placed) });
    const { edit } = slip;
    current = edited(current, edit);
    if (edit.edit === "insert") origin = origin.toSpliced(edit.at, 0, origin[edit.at] ?? line.length);
    if (edit.edit === "remove") origin = origin.toSpliced(edit.at, 1);
  }
  return found;
}

function placesOf(edit: LineEdit): number[] {
  if (edit.edit === "swap") return [edit.at, edit.with];
  return [edit.edit === "shift" ? edit.from : edit.at];
}

function withPlaces(edit: LineEdit, place: (at: number) => number): LineEdit {
  switch (edit.edit) {
    case "swap":
      return { ...edit, at: place(edit.at), with: place(edit.with) };
    case "shift":
      return { ...edit, from: place(edit.from), to: place(edit.to) };
    default:
      return { ...edit, at: place(edit.at) };
  }
}

interface Weighed {
  readonly edit: LineEdit;
  readonly line: EntryLine;
  readonly gain: number;
  /** The gain, and how much likelier the edit is than that says. */
  readonly rank: number;
}

/** Edits that no telling is sure of, the likeliest first: of use only where findings speak for them. */
export function weakSlips(line: EntryLine, alphabet: Alphabet): LineEdit[] {
  const weak = weighedEdits(line, alphabet, () => []).filter(({ rank }) => rank < LEAST_ALONE);
  return weak.slice(0, MOST_WEAK).map(({ edit }) => edit);
}

/** Whether of two edits one makes this entry as that, and the other that as this. */
function isCounterpart(line: EntryLine, one: LineEdit, other: LineEdit): boolean {
  return (
    one.edit === "change" && other.edit === "change" && one.to === line[other.at] && other.to === line[one.at]
  );
}

/** Whether an entry stands beside its like. */
function isTwice(line: EntryLine, at: number): boolean {
  return line[at] === line[at - 1] || line[at] === line[at + 1];
}

/** The edits suggested, that which shortens the telling most first. */
function weighedEdits(line: EntryLine, alphabet: Alphabet, more: More): Weighed[] {
  const n = line.length;
  if (n < 3) return [];
  const most = Math.max(16, Math.min(500, Math.floor(MOST_STEPS / (2 * n * n))));
  const motifs = motifsOf(line, alphabet);
  const { bits: before, seams } = telling(line, alphabet, motifs);
  const edits = [...more(line), ...suggestions(line, alphabet, seams).map(({ edit }) => edit)];
  const lines = new Set<string>();
  const weighed: Weighed[] = [];
  for (const edit of edits.slice(0, most)) {
    const after = edited(line, edit);
    const key = after.join();
    if (lines.has(key)) continue;
    lines.add(key);
    const gain =
      before - telling(after, alphabet, movedMotifs(motifs, edit)).bits - slipBits(line, edit, alphabet);
    if (gain > WEAK_GAIN)
      weighed.push({ edit, line: after, gain, rank: gain + likelihood(line, edit, alphabet) });
  }
  return weighed.sort((a, b) => b.rank - a.rank);
}

function bestSlip(line: EntryLine, alphabet: Alphabet, more: More, least: number): LineSlip | undefined {
  const [likeliest, ...others] = weighedEdits(line, alphabet, more);
  if (likeliest === undefined) return undefined;
  const enough = canBeBelieved(line, likeliest.edit, alphabet) ? least : LEAST_DOUBTED;
  if (likeliest.rank < enough) return undefined;
  const near = others
    .slice(0, 12)
    .filter(
      (other) =>
        other.rank >
          likeliest.rank - (isCounterpart(line, likeliest.edit, other.edit) ? TWIN_LEAD : LEAST_LEAD) &&
        isRival(likeliest, other, alphabet),
    );
  // What was left out is put back rather than that what stands for it is taken out.
  const putBack =
    likeliest.edit.edit === "remove" && !isTwice(line, likeliest.edit.at)
      ? near.find(({ edit }) => edit.edit === "insert")
      : undefined;
  const best = putBack ?? likeliest;
  // First the place that it is unlike: of the two either may be the wrong one.
  const isTwin = ({ edit }: Weighed) => (isCounterpart(line, best.edit, edit) ? 0 : 1);
  const rivals = [likeliest, ...near]
    .filter((other) => other !== best)
    .sort((one, other) => isTwin(one) - isTwin(other));
  const believed = canBeBelieved(line, best.edit, alphabet);
  return {
    edit: best.edit,
    gain: believed ? best.gain : Math.min(best.gain, SURE_GAIN),
    doubted: !believed || best.edit.edit === "shift",
    // Where a stretch of rows lies too high or too low, what is beside it may as well.
    sure: rivals.length === 0 && best.gain >= SURE_GAIN && believed && best.edit.edit !== "shift",
    rivals: rivals.map(({ edit }) => edit),
  };
}

/** Whether the telling alone can be believed: what is blank is as wide as one wants, and a turned copy looks like an exchange. */
function canBeBelieved(line: EntryLine, edit: LineEdit, { apart, form }: Alphabet): boolean {
  switch (edit.edit) {
    case "change":
      return form(edit.to) !== 0 && form(line[edit.at]!) !== 0 && apart(edit.to, line[edit.at]!) <= FEW;
    case "insert":
      return form(edit.to) !== 0;
    case "remove":
      return form(line[edit.at]!) !== 0;
    case "swap":
      return edit.with - edit.at === 1;
    case "shift":
      return true;
  }
}

/** Bits by which an edit shortens the telling of a line, the slip that it undoes paid for. */
export function gainOf(line: EntryLine, edit: LineEdit, alphabet: Alphabet): number {
  const after = edited(line, edit);
  const motifs = motifsOf(line, alphabet);
  return (
    telling(line, alphabet, motifs).bits -
    telling(after, alphabet, movedMotifs(motifs, edit)).bits -
    slipBits(line, edit, alphabet)
  );
}

/** Whether an edit is another way to mend the same, and not a slip of its own: then it gains nothing upon the best. */
function isRival(best: Weighed, other: Weighed, alphabet: Alphabet): boolean {
  const moved = movedBy(best.edit);
  const edit = withPlaces(other.edit, moved);
  if (placesOf(edit).some((at) => at < 0 || at > best.line.length)) return true;
  try {
    return gainOf(best.line, edit, alphabet) < other.gain / 2;
  } catch {
    return true;
  }
}

/** The borders of motifs after an edit. */
function movedMotifs(motifs: readonly number[], edit: LineEdit): readonly number[] {
  return edit.edit === "insert" || edit.edit === "remove" ? motifs.map(movedBy(edit)) : motifs;
}

/** Where a place lies after an edit. */
function movedBy(edit: LineEdit): (at: number) => number {
  if (edit.edit === "insert") return (at) => (at >= edit.at ? at + 1 : at);
  if (edit.edit === "remove") return (at) => (at > edit.at ? at - 1 : at);
  return (at) => at;
}

/** Bits beside its others of a slip that only widens or narrows the cloth at its edge: borders are as wide as one wants. */
const BORDER = 8;

/** Bits of a slip that puts a blank entry between two motifs, or moves it: such bars are meant as a rule. */
const BAR = 10;

/** Bits for which an edit is the likelier which nobody makes on purpose: a stretch that comes again but for one entry, or two exchanged. */
const SELDOM_MEANT = 2.5;

/** Bits for which a row more or less is the less likely: figures are drawn out and drawn in as one wants them. */
const OFTEN_MEANT = 2;

/** How much likelier than its price says an edit is that undoes a slip, in bits. */
function likelihood(line: EntryLine, edit: LineEdit, { apart, form, roughness, runs }: Alphabet): number {
  if (edit.edit === "insert" || edit.edit === "remove") return runs ? 0 : -OFTEN_MEANT;
  const places = edit.edit === "change" ? [edit.at] : edit.edit === "swap" ? [edit.at, edit.with] : [];
  const isOfBlank =
    places.some((at) => form(line[at]!) === 0) || (edit.edit === "change" && form(edit.to) === 0);
  if (isOfBlank || (edit.edit === "change" && apart(edit.to, line[edit.at]!) > FEW)) return 0;
  const smoother =
    edit.edit === "change" ? roughness(line, edit.at) - roughness(edited(line, edit), edit.at) : 0;
  return SELDOM_MEANT + ROUGH * smoother;
}

/** Squares of a row that one slip makes otherwise, at most. */
const FEW = 2;

/** Bits of each two squares side by side, or one above the other, that are unlike, of an edit of squares. */
const ROUGH = 0.5;

/** Whether an edit puts in or takes out at the edge of the cloth, or in the blank border beside it. */
function isOfBorder(line: EntryLine, edit: LineEdit, { form }: Alphabet): boolean {
  if (edit.edit !== "insert" && edit.edit !== "remove") return false;
  const isBlank = (from: number, to: number) => line.slice(from, to).every((entry) => form(entry) === 0);
  const after = edit.edit === "remove" ? edit.at + 1 : edit.at;
  return isBlank(0, edit.at) || isBlank(after, line.length);
}

/** Bits that tell a slip: its kind, its place, and what was written for what was meant. */
function slipBits(line: EntryLine, edit: LineEdit, alphabet: Alphabet): number {
  const place = Math.log2(line.length) + 2 + (isOfBorder(line, edit, alphabet) ? BORDER : 0);
  const isBar = (at: number) => alphabet.form(line[at]!) === 0;
  const isBlank = (entry: number) => alphabet.form(entry) === 0;
  switch (edit.edit) {
    case "change":
      return (
        place +
        alphabet.mistaken(edit.to, line[edit.at]!) +
        (isBlank(edit.to) || isBar(edit.at) ? BAR / 2 : 0)
      );
    case "insert":
      return place + (isBlank(edit.to) ? BAR / 2 : 0);
    case "remove": {
      const gone = line[edit.at]!;
      if (alphabet.form(gone) === 0 && !isTwice(line, edit.at)) return place + BAR;
      return place + (isTwice(line, edit.at) ? 0 : alphabet.fresh(gone, line[edit.at - 1] ?? -1));
    }
    case "swap":
      return (
        place +
        0.5 +
        (isBar(edit.at) || isBar(edit.with) ? BAR / 2 : 0) +
        (edit.with - edit.at === 1 ? 0 : 2 + Math.log2(line.length))
      );
    case "shift":
      return place + 3 + Math.log2(edit.entries.length + 1);
  }
}
