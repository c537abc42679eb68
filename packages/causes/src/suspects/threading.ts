import type { Change, UnitDraft } from "@drawcord/units";
import type { Slip } from "../slip.js";
import { type EntryLine, edited, type LineEdit } from "../telling/line.js";
import { type LineSlip, lineSlips, weakSlips } from "../telling/slips.js";
import { type ThreadingLine, threadingLine } from "../telling/threading.js";
import { likenessAt, likenessReason } from "../telling/why.js";
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
    doubted: false,
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
  const changesOf = (edit: UnitEdit) => unitChanges(edit, written, shaftsOf);
  const tell = (edit: UnitEdit) => ({
    slip: slipOf(edit, line, written, shaftsOf),
    reason: likenessReason(
      likenessAt(edited(line, edit), placeOf(edit), alphabet),
      "threading",
      alphabet.whole,
    ),
  });
  return slips.flatMap(({ doubted, edit, gain, rivals, sure }): Suspect[] => {
    if (!isOfUnits(edit)) return [];
    const others = rivals.filter(isOfUnits);
    return [
      {
        changes: changesOf(edit),
        ...tell(edit),
        gain,
        sure,
        doubted,
        rivals: others.map(changesOf),
        told: others.map(tell),
      },
    ];
  });
}

/** An edit of units; only rows are shifted. */
type UnitEdit = Exclude<LineEdit, { readonly edit: "shift" }>;

function isOfUnits(edit: LineEdit): edit is UnitEdit {
  return edit.edit !== "shift";
}

/** An edit of what is written as changes of every unit that it threads. */
function unitChanges(
  edit: UnitEdit,
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
  }
}

function placeOf(edit: UnitEdit): number {
  return edit.edit === "remove" ? Math.max(0, edit.at - 1) : edit.at;
}

/** What was written wrong where an edit sets it right. */
function slipOf(
  edit: UnitEdit,
  line: EntryLine,
  written: Written,
  shaftsOf: (entry: number) => readonly number[],
): Slip {
  const unit = (at: number) => (written[at]?.[0] ?? 0) + 1;
  const again = otherTimes(written, edit.at);
  switch (edit.edit) {
    case "change":
      return {
        slip: "unit-shafts",
        unit: unit(edit.at),
        again,
        shafts: shaftsOf(line[edit.at]!),
        says: shaftsOf(edit.to),
      };
    case "insert":
      return {
        slip: "unit-missing",
        after: edit.at === 0 ? 0 : unit(edit.at - 1),
        shafts: shaftsOf(edit.to),
      };
    case "remove":
      return { slip: "unit-extra", unit: unit(edit.at), again, shafts: shaftsOf(line[edit.at]!) };
    case "swap":
      return { slip: "units-exchanged", units: [unit(edit.at), unit(edit.with)], again };
  }
}
