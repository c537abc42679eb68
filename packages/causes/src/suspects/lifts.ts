import type { ShaftSet } from "@drawcord/ground";
import type { Change, UnitDraft } from "@drawcord/units";
import { liftsLine } from "../telling/lifts.js";
import { type EntryLine, edited, type LineEdit } from "../telling/line.js";
import { lineSlips } from "../telling/slips.js";
import { likenessAt, sayLikeness } from "../telling/why.js";
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
    message: sayEdit(edit, line, written, shaftsOf),
    why: sayLikeness(
      likenessAt(edited(line, edit), placeOf(edit), alphabet),
      isWhole ? "lift plan" : "plan as it is written",
      "row",
    ),
  });
  return lineSlips(line, alphabet, more).map(({ edit, gain, rivals, sure }) => ({
    changes: changesOf(edit),
    ...tell(edit),
    gain,
    sure,
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

function sayEdit(
  edit: LineEdit,
  line: EntryLine,
  written: Written,
  shaftsOf: (entry: number) => ShaftSet,
): string {
  const row = (at: number) => (written[at]?.[0] ?? 0) + 1;
  const again = "at" in edit ? otherTimes(written[Math.min(edit.at, written.length - 1)], "woven") : "";
  switch (edit.edit) {
    case "change": {
      const was = shaftsOf(line[edit.at]!);
      const is = shaftsOf(edit.to);
      const more = is.filter((shaft) => !was.includes(shaft));
      const gone = was.filter((shaft) => !is.includes(shaft));
      const parts = [
        ...(more.length === 0 ? [] : [`leaves ${named(more)} down`]),
        ...(gone.length === 0 ? [] : [`draws ${named(gone)}`]),
      ];
      if (more.length + gone.length > 4)
        return `row ${row(edit.at)}${again} draws another lift than the rest of the plan says`;
      return `row ${row(edit.at)}${again} ${parts.join(" and ")} where the rest of the plan does not`;
    }
    case "insert":
      return `a row is missing ${edit.at === 0 ? "before row 1" : `after row ${row(edit.at - 1)}`}: one that draws ${shaftsOf(edit.to).length === 0 ? "nothing" : named(shaftsOf(edit.to))}`;
    case "remove":
      return `row ${row(edit.at)}${again} is one too many`;
    case "swap":
      return `rows ${row(edit.at)} and ${row(edit.with)} are exchanged`;
    case "shift": {
      const by = shiftOf(edit, line, shaftsOf);
      return `rows ${row(edit.from)} to ${row(edit.to)} are drawn ${Math.abs(by)} ${Math.abs(by) === 1 ? "shaft" : "shafts"} too ${by < 0 ? "high" : "low"}`;
    }
  }
}

function named(shafts: ShaftSet): string {
  return `${shafts.length === 1 ? "shaft" : "shafts"} ${shafts.join(" ")}`;
}
