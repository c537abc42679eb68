import type { ShaftSet } from "@drawcord/ground";
import type { Change, UnitDraft } from "@drawcord/units";
import type { Slip } from "../slip.js";
import { liftsLine } from "../telling/lifts.js";
import { type EntryLine, edited, type LineEdit } from "../telling/line.js";
import { lineSlips } from "../telling/slips.js";
import { likenessAt, likenessReason } from "../telling/why.js";
import type { Suspect } from "./suspect.js";
import { MOST_ENTRIES } from "./threading.js";
import { eachByItself, otherTimes, type Written } from "./written.js";

/** Rows written otherwise than the shortest telling of the lift plan says. */
export function liftSuspects({ lifts }: UnitDraft, written: Written = eachByItself(lifts)): Suspect[] {
  if (written.length > MOST_ENTRIES) return [];
  const isWhole = written.length === lifts.length;
  const { alphabet, line, more, shaftsOf } = liftsLine(
    written.map(([row]) => lifts[row!]!),
    isWhole,
  );
  const changesOf = (edit: LineEdit) => rowChanges(edit, line, written, shaftsOf);
  const tell = (edit: LineEdit) => ({
    slip: slipOf(edit, line, written, shaftsOf),
    reason: likenessReason(likenessAt(edited(line, edit), placeOf(edit), alphabet), "lifts", isWhole),
  });
  return lineSlips(line, alphabet, more).map(({ doubted, edit, gain, rivals, sure }) => ({
    changes: changesOf(edit),
    ...tell(edit),
    gain,
    sure,
    doubted,
    rivals: rivals.map(changesOf),
    told: rivals.map(tell),
  }));
}

function placeOf(edit: LineEdit): number {
  if (edit.edit === "shift") return edit.from;
  return edit.edit === "remove" ? Math.max(0, edit.at - 1) : edit.at;
}

/** An edit of what is written as changes of every row that it weaves; the last row first where rows are put in or taken out. */
function rowChanges(
  edit: LineEdit,
  line: EntryLine,
  written: Written,
  shaftsOf: (entry: number) => ShaftSet,
): readonly Change[] {
  const rowsOf = (at: number) => written[at] ?? [];
  switch (edit.edit) {
    case "change":
      return rowsOf(edit.at).map((row) => liftChange(row, shaftsOf(line[edit.at]!), shaftsOf(edit.to)));
    case "insert": {
      const after = edit.at > 0;
      const rows = rowsOf(after ? edit.at - 1 : 0);
      return rows
        .map(
          (row): Change => ({ change: "insert-row", row: row + (after ? 2 : 1), shafts: shaftsOf(edit.to) }),
        )
        .toReversed();
    }
    case "remove":
      return rowsOf(edit.at)
        .map((row): Change => ({ change: "remove-row", row: row + 1 }))
        .toReversed();
    case "swap":
      return rowsOf(edit.at).flatMap((row, i): Change[] => {
        const other = rowsOf(edit.with)[i];
        return other === undefined ? [] : [{ change: "swap-rows", rows: [row + 1, other + 1] }];
      });
    case "shift": {
      const by = shiftOf(edit, line, shaftsOf);
      return rowsOf(edit.from).flatMap((row, i): Change[] => {
        const last = rowsOf(edit.to)[i];
        return last === undefined ? [] : [{ change: "shift", rows: [row + 1, last + 1], by }];
      });
    }
  }
}

/** One shaft or two drawn or left; more is another lift. */
function liftChange(row: number, was: ShaftSet, is: ShaftSet): Change {
  const more = is.filter((shaft) => !was.includes(shaft));
  const gone = was.filter((shaft) => !is.includes(shaft));
  if (gone.length === 0 && more.length < 3) return { change: "draw", row: row + 1, shafts: more };
  if (more.length === 0 && gone.length < 3) return { change: "leave", row: row + 1, shafts: gone };
  return { change: "lift", row: row + 1, shafts: is };
}

function shiftOf(
  edit: Extract<LineEdit, { edit: "shift" }>,
  line: EntryLine,
  shaftsOf: (entry: number) => ShaftSet,
): number {
  for (const [i, entry] of edit.entries.entries()) {
    const [was] = shaftsOf(line[edit.from + i]!);
    const [is] = shaftsOf(entry);
    if (was !== undefined && is !== undefined) return is - was;
  }
  return 0;
}

/** What was written wrong where an edit sets it right. */
function slipOf(
  edit: LineEdit,
  line: EntryLine,
  written: Written,
  shaftsOf: (entry: number) => ShaftSet,
): Slip {
  const row = (at: number) => (written[at]?.[0] ?? 0) + 1;
  switch (edit.edit) {
    case "change": {
      const was = shaftsOf(line[edit.at]!);
      const is = shaftsOf(edit.to);
      return {
        slip: "row-shafts",
        row: row(edit.at),
        again: otherTimes(written, edit.at),
        leaves: is.filter((shaft) => !was.includes(shaft)),
        draws: was.filter((shaft) => !is.includes(shaft)),
      };
    }
    case "insert":
      return {
        slip: "row-missing",
        after: edit.at === 0 ? 0 : row(edit.at - 1),
        shafts: shaftsOf(edit.to),
      };
    case "remove":
      return { slip: "row-extra", row: row(edit.at), again: otherTimes(written, edit.at) };
    case "swap":
      return { slip: "rows-exchanged", rows: [row(edit.at), row(edit.with)] };
    case "shift":
      return {
        slip: "rows-shifted",
        rows: [row(edit.from), row(edit.to)],
        by: shiftOf(edit, line, shaftsOf),
      };
  }
}
