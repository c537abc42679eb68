import { type Change, sayChange, type UnitDraft } from "@drawcord/units";
import { type EntryLine, edited, type LineEdit } from "../telling/line.js";
import { type LineSlip, lineSlips, weakSlips } from "../telling/slips.js";
import { type ThreadingLine, threadingLine } from "../telling/threading.js";
import { likenessAt, sayLikeness } from "../telling/why.js";
import type { Suspect } from "./suspect.js";
import { eachByItself, otherTimes, type Written } from "./written.js";

/** Units beyond which the telling of a threading is not weighed: its cost grows with their square. */
export const MOST_ENTRIES = 2600;

/** Units threaded otherwise than the shortest telling of the threading says. */
export function threadingSuspects(
  draft: UnitDraft,
  written: Written = eachByItself(draft.threading),
): Suspect[] {
  if (written.length > MOST_ENTRIES) return [];
  const told = writtenLine(draft, written);
  return suspectsOf(told, lineSlips(told.line, told.alphabet), written);
}

/** Units that may be threaded otherwise, though the telling is not shorter for it: only findings can speak for them. */
export function weakThreadingSuspects(
  draft: UnitDraft,
  written: Written = eachByItself(draft.threading),
): Suspect[] {
  if (written.length > MOST_ENTRIES) return [];
  const told = writtenLine(draft, written);
  const slips = weakSlips(told.line, told.alphabet).map((edit) => ({
    edit,
    gain: 0,
    sure: false,
    rivals: [],
  }));
  return suspectsOf(told, slips, written).map((suspect) => ({ ...suspect, slipOf: "threading" }));
}

function writtenLine({ threading }: UnitDraft, written: Written): ThreadingLine {
  const isWhole = written.length === threading.length;
  return threadingLine({ threading: written.map(([unit]) => threading[unit!]!) }, isWhole);
}

function suspectsOf(
  { alphabet, line, shaftsOf }: ThreadingLine,
  slips: readonly LineSlip[],
  written: Written,
): Suspect[] {
  const changesOf = (edit: LineEdit) => unitChanges(edit, written, shaftsOf);
  const tell = (edit: LineEdit) => ({
    message: sayEdit(edit, line, written, shaftsOf),
    why: sayLikeness(
      likenessAt(edited(line, edit), placeOf(edit), alphabet),
      alphabet.whole ? "threading" : "threading as it is written",
      "unit",
    ),
  });
  return slips.map(({ edit, gain, rivals, sure }) => ({
    changes: changesOf(edit),
    ...tell(edit),
    gain,
    sure,
    rivals: rivals.map(changesOf),
    told: rivals.map(tell),
  }));
}

/** An edit of what is written as changes of every unit that it threads. */
function unitChanges(
  edit: LineEdit,
  written: Written,
  shaftsOf: (entry: number) => readonly number[],
): readonly Change[] {
  const unitsOf = (at: number) => written[at] ?? [];
  switch (edit.edit) {
    case "change":
      return unitsOf(edit.at).map((unit) => ({
        change: "thread",
        unit: unit + 1,
        shafts: shaftsOf(edit.to),
      }));
    case "insert": {
      const after = edit.at > 0;
      return unitsOf(after ? edit.at - 1 : 0)
        .map(
          (unit): Change => ({
            change: "insert-unit",
            unit: unit + (after ? 2 : 1),
            shafts: shaftsOf(edit.to),
          }),
        )
        .toReversed();
    }
    case "remove":
      return unitsOf(edit.at)
        .map((unit): Change => ({ change: "remove-unit", unit: unit + 1 }))
        .toReversed();
    case "swap":
      return unitsOf(edit.at).flatMap((unit, i): Change[] => {
        const other = unitsOf(edit.with)[i];
        return other === undefined ? [] : [{ change: "swap-units", units: [unit + 1, other + 1] }];
      });
    case "shift":
      return [];
  }
}

function placeOf(edit: LineEdit): number {
  if (edit.edit === "shift") return edit.from;
  return edit.edit === "remove" ? Math.max(0, edit.at - 1) : edit.at;
}

function sayEdit(
  edit: LineEdit,
  line: EntryLine,
  written: Written,
  shaftsOf: (entry: number) => readonly number[],
): string {
  const unit = (at: number) => (written[at]?.[0] ?? 0) + 1;
  const again = "at" in edit ? otherTimes(written[Math.min(edit.at, written.length - 1)], "threaded") : "";
  switch (edit.edit) {
    case "change":
      return `unit ${unit(edit.at)}${again} ${hangs(shaftsOf(line[edit.at]!))} where the rest of the threading says ${shaftsOf(edit.to).length === 0 ? "static" : shaftsOf(edit.to).join("+")}`;
    case "insert":
      return `a unit is missing ${edit.at === 0 ? "before unit 1" : `after unit ${unit(edit.at - 1)}`}: one that ${hangs(shaftsOf(edit.to))}`;
    case "remove":
      return `unit ${unit(edit.at)}${again}, which ${hangs(shaftsOf(line[edit.at]!))}, is one too many`;
    case "swap":
      return `units ${unit(edit.at)} and ${unit(edit.with)}${again} are exchanged`;
    case "shift":
      return sayChange({ change: "shift", rows: [edit.from + 1, edit.to + 1], by: 0 });
  }
}

function hangs(shafts: readonly number[]): string {
  if (shafts.length === 0) return "is static";
  return `hangs on ${shafts.length === 1 ? "shaft" : "shafts"} ${shafts.join("+")}`;
}
