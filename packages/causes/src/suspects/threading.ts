import { type Change, sayChange, type UnitDraft } from "@drawcord/units";
import { type EntryLine, edited, type LineEdit } from "../telling/line.js";
import { type LineSlip, lineSlips, weakSlips } from "../telling/slips.js";
import { type ThreadingLine, threadingLine } from "../telling/threading.js";
import { likenessAt, sayLikeness } from "../telling/why.js";
import type { Suspect } from "./suspect.js";

/** Units beyond which the telling of a threading is not weighed: its cost grows with their square. */
export const MOST_ENTRIES = 2600;

/** Units threaded otherwise than the shortest telling of the threading says. */
export function threadingSuspects(draft: UnitDraft): Suspect[] {
  if (draft.threading.length > MOST_ENTRIES) return [];
  const told = threadingLine(draft);
  return suspectsOf(told, lineSlips(told.line, told.alphabet));
}

/** Units that may be threaded otherwise, though the telling is not shorter for it: only findings can speak for them. */
export function weakThreadingSuspects(draft: UnitDraft): Suspect[] {
  if (draft.threading.length > MOST_ENTRIES) return [];
  const told = threadingLine(draft);
  const slips = weakSlips(told.line, told.alphabet).map((edit) => ({
    edit,
    gain: 0,
    sure: false,
    rivals: [],
  }));
  return suspectsOf(told, slips).map((suspect) => ({ ...suspect, slipOf: "threading" }));
}

function suspectsOf({ alphabet, line, shaftsOf }: ThreadingLine, slips: readonly LineSlip[]): Suspect[] {
  const changeOf = (edit: LineEdit): readonly Change[] => {
    switch (edit.edit) {
      case "change":
        return [{ change: "thread", unit: edit.at + 1, shafts: shaftsOf(edit.to) }];
      case "insert":
        return [{ change: "insert-unit", unit: edit.at + 1, shafts: shaftsOf(edit.to) }];
      case "remove":
        return [{ change: "remove-unit", unit: edit.at + 1 }];
      case "swap":
        return [{ change: "swap-units", units: [edit.at + 1, edit.with + 1] }];
      case "shift":
        return [];
    }
  };
  const tell = (edit: LineEdit) => ({
    message: sayEdit(edit, line, shaftsOf),
    why: sayLikeness(likenessAt(edited(line, edit), placeOf(edit), alphabet), "threading", "unit"),
  });
  return slips.map(({ edit, gain, rivals, sure }) => ({
    changes: changeOf(edit),
    ...tell(edit),
    gain,
    sure,
    rivals: rivals.map(changeOf),
    told: rivals.map(tell),
  }));
}

function placeOf(edit: LineEdit): number {
  if (edit.edit === "shift") return edit.from;
  return edit.edit === "remove" ? Math.max(0, edit.at - 1) : edit.at;
}

function sayEdit(edit: LineEdit, line: EntryLine, shaftsOf: (entry: number) => readonly number[]): string {
  switch (edit.edit) {
    case "change":
      return `unit ${edit.at + 1} ${hangs(shaftsOf(line[edit.at]!))} where the rest of the threading says ${shaftsOf(edit.to).length === 0 ? "static" : shaftsOf(edit.to).join("+")}`;
    case "insert":
      return `a unit is missing ${edit.at === 0 ? "before unit 1" : `after unit ${edit.at}`}: one that ${hangs(shaftsOf(edit.to))}`;
    case "remove":
      return `unit ${edit.at + 1}, which ${hangs(shaftsOf(line[edit.at]!))}, is one too many`;
    case "swap":
      return `units ${edit.at + 1} and ${edit.with + 1} are exchanged`;
    case "shift":
      return sayChange({ change: "shift", rows: [edit.from + 1, edit.to + 1], by: 0 });
  }
}

function hangs(shafts: readonly number[]): string {
  if (shafts.length === 0) return "is static";
  return `hangs on ${shafts.length === 1 ? "shaft" : "shafts"} ${shafts.join("+")}`;
}
