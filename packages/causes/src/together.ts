import { applyChange, type Change, type UnitDraft } from "@drawcord/units";

/**
 * The draft with several changes made that all name places of the draft as it is: those that put units or rows in or take
 * them out are made last, from the end on, so that none moves what another names.
 * @param draft the draft, which stays as it is
 * @param changes the changes, in any order
 * @throws {UnitsError} as `applyChange`
 * @example applyTogether(draft, [{ change: "remove-row", row: 1 }, { change: "lift", row: 2, shafts: [1] }]).lifts // [[1]]
 */
export function applyTogether(draft: UnitDraft, changes: readonly Change[]): UnitDraft {
  const moving = changes.filter(moves).sort((a, b) => placeOf(b) - placeOf(a));
  return [...changes.filter((change) => !moves(change)), ...moving].reduce(applyChange, draft);
}

function moves({ change }: Change): boolean {
  return (
    change === "insert-unit" || change === "remove-unit" || change === "insert-row" || change === "remove-row"
  );
}

/** Of two changes at one place, the one that puts something in comes after. */
function placeOf(change: Change): number {
  const place = "row" in change ? change.row : "unit" in change ? change.unit : 0;
  return change.change.startsWith("insert") ? place - 0.5 : place;
}
