import { listed, many } from "@drawcord/base";
import type { Change } from "./change.js";

/**
 * What a change asks of the weaver, as a clause.
 * @param change the change
 * @example sayChange({ change: "draw", row: 3, shafts: [1, 4] }) // "draw shafts 1 and 4 in row 3"
 */
export function sayChange(change: Change): string {
  switch (change.change) {
    case "thread":
      return change.shafts.length === 0
        ? `let unit ${change.unit} be static`
        : `hang unit ${change.unit} on ${shaftsInWords(change.shafts)}`;
    case "insert-unit":
      return change.shafts.length === 0
        ? `put a static unit in as unit ${change.unit}`
        : `put a unit on ${shaftsInWords(change.shafts)} in as unit ${change.unit}`;
    case "remove-unit":
      return `leave out unit ${change.unit}`;
    case "swap-units":
      return `exchange units ${change.units[0]} and ${change.units[1]}`;
    case "lift":
      return change.shafts.length === 0
        ? `draw nothing in row ${change.row}`
        : `draw just ${shaftsInWords(change.shafts)} in row ${change.row}`;
    case "draw":
      return `draw ${shaftsInWords(change.shafts)} in row ${change.row}`;
    case "leave":
      return `leave ${shaftsInWords(change.shafts)} down in row ${change.row}`;
    case "insert-row":
      return change.shafts.length === 0
        ? `put a row that draws nothing in as row ${change.row}`
        : `put a row that draws ${shaftsInWords(change.shafts)} in as row ${change.row}`;
    case "remove-row":
      return `leave out row ${change.row}`;
    case "swap-rows":
      return `exchange rows ${change.rows[0]} and ${change.rows[1]}`;
    case "shift": {
      const [first, last] = change.rows;
      const rows = first === last ? `row ${first}` : `rows ${first} to ${last}`;
      const by = Math.abs(change.by);
      return `draw in ${rows} every shaft ${many(by, "number")} ${change.by < 0 ? "lower" : "higher"}`;
    }
    case "row-picks":
      return `hold row ${change.row} for ${many(change.picks, "pick")}`;
    case "tie":
      return `tie step ${change.step} of the ground to raise ${orNothing(change.raise)} and to sink ${orNothing(change.sink)}`;
    case "start-ground":
      return `begin the ground's treadling ${many(Math.abs(change.steps), "step")} ${change.steps < 0 ? "earlier" : "later"}`;
    case "swap-ground":
      return "sink on every treadle what it raises, and raise what it sinks";
    case "ground-threading":
      return `hang end ${change.end} of the ground threading on ground shaft ${change.shaft}`;
    case "selvedge":
      return change.shafts.length === 0
        ? `leave out the ${change.side} selvedge`
        : `thread the ${change.side} selvedge on ground ${shaftsInWords(change.shafts)}`;
    case "number":
      return `write ${change.value} for ${change.key}`;
  }
}

function orNothing(shafts: readonly number[]): string {
  return shafts.length === 0 ? "nothing" : shaftsInWords(shafts);
}

function shaftsInWords(shafts: readonly number[]): string {
  return `${shafts.length === 1 ? "shaft" : "shafts"} ${listed(shafts.map(String))}`;
}
