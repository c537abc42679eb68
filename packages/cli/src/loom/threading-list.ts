import { describeThreading, printThreading, type ThreadingGroup, type UnitShafts } from "@drawcord/units";
import { wrapText } from "../text.js";
import { csvLine } from "./csv.js";
import { heading } from "./heading.js";

/** The threading of a recipe, listed. */
export interface ThreadingSheet {
  readonly file: string;
  readonly title: string | undefined;
  readonly threading: readonly UnitShafts[];
  readonly from: "right" | "left";
  readonly groups: readonly ThreadingGroup[];
  /** The part of the threading that each unit is of, unit 1 first. */
  readonly parts: readonly string[];
}

/** The list for people, a group to tick off on each line. */
export function* threadingText(sheet: ThreadingSheet, width: number): Iterable<string> {
  const { file, title, threading, from, groups, parts } = sheet;
  const other = from === "right" ? "left" : "right";
  const line = Math.min(width, 100);
  yield `${heading(file, title)}\n\n`;
  yield `threading  ${wrapText(printThreading(threading), line - 11).join(`\n${" ".repeat(11)}`)}\n`;
  yield `           ${wrapText(describeThreading(threading), line - 11).join(`\n${" ".repeat(11)}`)}\n\n`;
  yield `from ${from} to ${other}, as seen from the weaver's bench; X is a static unit\n\n`;

  const names = groups.map(({ units }) => spanOf(units));
  const nameWidth = names.reduce((most, name) => Math.max(most, name.length), "units".length);
  const shaftWidth = groups.reduce(
    (most, { shafts }) => Math.max(most, ...shafts.map((text) => text.length)),
    1,
  );
  const lists = groups.map(({ shafts }) => shafts.map((text) => text.padStart(shaftWidth)).join(" "));
  const listWidth = lists.reduce((most, list) => Math.max(most, list.length), "shafts".length);
  yield `      ${"units".padEnd(nameWidth)}  ${"shafts".padEnd(listWidth)}  done  part\n`;
  for (const [i, { done, units }] of groups.entries()) {
    const part = [...new Set(units.map((unit) => parts[unit]!))].join(", ");
    yield `[ ]   ${names[i]!.padEnd(nameWidth)}  ${lists[i]!.padEnd(listWidth)}  ${String(done).padEnd(4)}  ${part}\n`;
  }
}

/** The list for a script; units count from 1. */
export function threadingJson({ file, title, threading, from, groups, parts }: ThreadingSheet): object {
  return {
    file,
    title,
    notation: printThreading(threading),
    description: describeThreading(threading),
    from,
    groups: groups.map(({ units, shafts, done }) => ({
      units: units.map((unit) => unit + 1),
      shafts,
      parts: units.map((unit) => parts[unit]),
      done,
    })),
  };
}

/** The list for a table, a line a unit. */
export function* threadingCsv({ groups, parts }: ThreadingSheet): Iterable<string> {
  yield csvLine(["order", "unit", "shafts", "group", "part"]);
  let order = 0;
  for (const [i, { units, shafts }] of groups.entries()) {
    for (const [k, unit] of units.entries())
      yield csvLine([++order, unit + 1, shafts[k], i + 1, parts[unit]]);
  }
}

function spanOf(units: readonly number[]): string {
  return units.length === 1 ? `${units[0]! + 1}` : `${units[0]! + 1}-${units.at(-1)! + 1}`;
}
