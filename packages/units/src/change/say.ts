import { listed, many, type Sentence } from "@drawcord/base";
import type { Change } from "./change.js";

/**
 * What the changes of an edit ask of the weaver, in clauses. A table in another language is of this type: one that lacks a kind
 * of change, or has one that there is none of, does not compile.
 */
export interface ChangeSentences {
  /**
   * A clause for every kind of change.
   */
  readonly changes: {
    readonly [Kind in Change["change"]]: Sentence<Extract<Change, { readonly change: Kind }>>;
  };
  /**
   * That the same is done in so many rows more, to follow the clauses of the first.
   * @param rows how many
   */
  readonly more: (rows: number) => string;
}

/** The clauses of changes in English. */
export const changeSentences: ChangeSentences = {
  changes: {
    thread: ({ shafts, unit }) =>
      shafts.length === 0 ? `let unit ${unit} be static` : `hang unit ${unit} on ${shaftsInWords(shafts)}`,
    "insert-unit": ({ shafts, unit }) =>
      shafts.length === 0
        ? `put a static unit in as unit ${unit}`
        : `put a unit on ${shaftsInWords(shafts)} in as unit ${unit}`,
    "remove-unit": ({ unit }) => `leave out unit ${unit}`,
    "swap-units": ({ units: [one, other] }) => `exchange units ${one} and ${other}`,
    lift: ({ row, shafts }) =>
      shafts.length === 0 ? `draw nothing in row ${row}` : `draw just ${shaftsInWords(shafts)} in row ${row}`,
    draw: ({ row, shafts }) => `draw ${shaftsInWords(shafts)} in row ${row}`,
    leave: ({ row, shafts }) => `leave ${shaftsInWords(shafts)} down in row ${row}`,
    "insert-row": ({ row, shafts }) =>
      shafts.length === 0
        ? `put a row that draws nothing in as row ${row}`
        : `put a row that draws ${shaftsInWords(shafts)} in as row ${row}`,
    "remove-row": ({ row }) => `leave out row ${row}`,
    "swap-rows": ({ rows: [one, other] }) => `exchange rows ${one} and ${other}`,
    shift: ({ by, rows: [first, last] }) => {
      const rows = first === last ? `row ${first}` : `rows ${first} to ${last}`;
      return `draw in ${rows} every shaft ${many(Math.abs(by), "number")} ${by < 0 ? "lower" : "higher"}`;
    },
    "row-picks": ({ picks, row }) => `hold row ${row} for ${many(picks, "pick")}`,
    tie: ({ raise, sink, step }) =>
      `tie step ${step} of the ground to raise ${orNothing(raise)} and to sink ${orNothing(sink)}`,
    "start-ground": ({ steps }) =>
      `begin the ground's treadling ${many(Math.abs(steps), "step")} ${steps < 0 ? "earlier" : "later"}`,
    "swap-ground": () => "sink on every treadle what it raises, and raise what it sinks",
    "ground-threading": ({ end, shaft }) =>
      `hang end ${end} of the ground threading on ground shaft ${shaft}`,
    selvedge: ({ shafts, side }) =>
      shafts.length === 0
        ? `leave out the ${side} selvedge`
        : `thread the ${side} selvedge on ground ${shaftsInWords(shafts)}`,
    number: ({ key, value }) => `write ${value} for ${key}`,
  },
  more: (rows) => `and so in ${many(rows, "row")} more`,
};

/**
 * What a change asks of the weaver, as a clause.
 * @param change the change
 * @param sentences a clause for every kind of change; default: English
 * @example sayChange({ change: "draw", row: 3, shafts: [1, 4] }) // "draw shafts 1 and 4 in row 3"
 */
export function sayChange(change: Change, sentences: ChangeSentences = changeSentences): string {
  // Each clause is asked for its own kind, which the type of the table cannot follow.
  return (sentences.changes[change.change] as (of: Change) => string)(change);
}

/** Rows of a block that is woven again and again: the edit is said for the first of so many. */
const MOST_SAID = 4;

/**
 * What the changes of one edit ask of the weaver, as clauses, of an edit in many rows those of the first.
 * @param changes the changes
 * @param sentences a clause for every kind of change; default: English
 * @example sayEdit([{ change: "remove-row", row: 9 }, { change: "remove-row", row: 3 }]) // "leave out row 9; leave out row 3"
 */
export function sayEdit(changes: readonly Change[], sentences: ChangeSentences = changeSentences): string {
  const said = changes.slice(0, MOST_SAID).map((change) => sayChange(change, sentences));
  const more = changes.length - said.length;
  return [...said, ...(more === 0 ? [] : [sentences.more(more)])].join("; ");
}

function orNothing(shafts: readonly number[]): string {
  return shafts.length === 0 ? "nothing" : shaftsInWords(shafts);
}

function shaftsInWords(shafts: readonly number[]): string {
  return `${shafts.length === 1 ? "shaft" : "shafts"} ${listed(shafts.map(String))}`;
}
