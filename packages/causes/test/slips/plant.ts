/** Slips that people make, each planted by the edit that its mend undoes. */
import { applyChange, expand, type UnitDraft } from "@drawcord/units";
import { type Toss, whole } from "./sound.js";

export const kinds = [
  "a unit on a wrong shaft",
  "two units swapped",
  "a unit left out",
  "a row left out",
  "a row doubled",
  "two rows swapped",
  "a shaft missing from a lift",
  "a shaft extra in a lift",
  "a stretch of lifts off by one shaft",
  "a raise tie missing",
  "a sink tie missing",
  "a wrong tie",
  "the ground begun a pick late",
  "a row held for a wrong number of picks",
  "a selvedge end on a wrong shaft",
] as const;
export type Kind = (typeof kinds)[number];

const any = (toss: Toss, things: { readonly length: number }) => whole(toss, 0, things.length - 1);

/** A draft with a slip of a kind; undefined where this draft has no room for it. */
export function plant(kind: Kind, draft: UnitDraft, toss: Toss): UnitDraft | undefined {
  const { ground, lifts, selvedge, threading } = draft;
  const highest = Math.max(...threading.flat());
  switch (kind) {
    case "a unit on a wrong shaft": {
      const hung = threading.flatMap((shafts, unit) => (shafts.length === 0 ? [] : [unit]));
      const unit = hung[any(toss, hung)]!;
      const was = threading[unit]![0]!;
      const near = toss() < 0.6;
      const shaft = near ? was + (toss() < 0.5 ? 1 : -1) : whole(toss, 1, highest);
      if (shaft < 1 || shaft > highest || shaft === was) return undefined;
      return applyChange(draft, { change: "thread", unit: unit + 1, shafts: [shaft] });
    }
    case "two units swapped": {
      const unit = whole(toss, 1, threading.length - 1);
      const other = unit + (toss() < 0.8 ? 1 : whole(toss, 1, 4));
      if (other > threading.length || threading[unit - 1]!.join() === threading[other - 1]!.join())
        return undefined;
      return applyChange(draft, { change: "swap-units", units: [unit, other] });
    }
    case "a unit left out":
      return applyChange(draft, { change: "remove-unit", unit: whole(toss, 1, threading.length) });
    case "a row left out":
      return applyChange(draft, { change: "remove-row", row: whole(toss, 1, lifts.length) });
    case "a row doubled": {
      const row = whole(toss, 1, lifts.length);
      return applyChange(draft, { change: "insert-row", row, shafts: lifts[row - 1]! });
    }
    case "two rows swapped": {
      const row = whole(toss, 1, lifts.length - 1);
      const other = row + (toss() < 0.8 ? 1 : whole(toss, 1, 4));
      if (other > lifts.length || lifts[row - 1]!.join() === lifts[other - 1]!.join()) return undefined;
      return applyChange(draft, { change: "swap-rows", rows: [row, other] });
    }
    case "a shaft missing from a lift": {
      const drawn = lifts.flatMap((lift, row) => (lift.length === 0 ? [] : [row]));
      const row = drawn[any(toss, drawn)]!;
      return applyChange(draft, {
        change: "leave",
        row: row + 1,
        shafts: [lifts[row]![any(toss, lifts[row]!)]!],
      });
    }
    case "a shaft extra in a lift": {
      const row = any(toss, lifts);
      const free = Array.from({ length: highest }, (_, i) => i + 1).filter(
        (shaft) => !lifts[row]!.includes(shaft),
      );
      if (free.length === 0) return undefined;
      return applyChange(draft, { change: "draw", row: row + 1, shafts: [free[any(toss, free)]!] });
    }
    case "a stretch of lifts off by one shaft": {
      const first = whole(toss, 1, lifts.length);
      const last = Math.min(lifts.length, first + whole(toss, 1, 5));
      const by = toss() < 0.5 ? 1 : -1;
      const shifted = applyChange(draft, { change: "shift", rows: [first, last], by });
      const fits = shifted.lifts.flat().every((shaft) => shaft >= 1 && shaft <= highest);
      return fits && lifts.slice(first - 1, last).some((lift) => lift.length > 0) ? shifted : undefined;
    }
    case "a raise tie missing":
    case "a sink tie missing":
    case "a wrong tie": {
      const part =
        kind === "a raise tie missing"
          ? "raise"
          : kind === "a sink tie missing"
            ? "sink"
            : toss() < 0.5
              ? "raise"
              : "sink";
      const tied = ground.steps.flatMap((step, i) => (step[part].length > 0 ? [i] : []));
      if (tied.length === 0) return undefined;
      const at = tied[any(toss, tied)]!;
      const { raise, sink } = ground.steps[at]!;
      const own = part === "raise" ? raise : sink;
      let shafts = own.slice(1);
      if (kind === "a wrong tie") {
        const free = Array.from({ length: ground.shafts }, (_, i) => i + 1).filter(
          (shaft) => !raise.includes(shaft) && !sink.includes(shaft),
        );
        if (free.length === 0) return undefined;
        shafts = [...shafts, free[any(toss, free)]!].sort((a, b) => a - b);
      }
      return applyChange(draft, { change: "tie", step: at + 1, raise, sink, [part]: shafts });
    }
    case "the ground begun a pick late":
      return applyChange(draft, { change: "start-ground", steps: 1 });
    case "a row held for a wrong number of picks": {
      const row = any(toss, lifts);
      const { picksPerRow } = draft;
      const was = typeof picksPerRow === "number" ? picksPerRow : picksPerRow[row]!;
      return applyChange(draft, { change: "row-picks", row: row + 1, picks: was + (toss() < 0.5 ? 1 : -1) });
    }
    case "a selvedge end on a wrong shaft": {
      const side = toss() < 0.5 ? "left" : "right";
      const own = selvedge?.[side] ?? [];
      if (own.length === 0) return undefined;
      const end = any(toss, own);
      const shaft = whole(toss, 1, ground.shafts);
      if (shaft === own[end]) return undefined;
      return applyChange(draft, { change: "selvedge", side, shafts: own.with(end, shaft) });
    }
  }
}

/** Whether two drafts weave the same. */
export function sameCloth(one: UnitDraft, other: UnitDraft): boolean {
  const [a, b] = [expand(one).drawdown, expand(other).drawdown];
  return a.rows === b.rows && a.columns === b.columns && a.equals(b);
}
