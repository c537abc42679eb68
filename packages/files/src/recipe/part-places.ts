/** Where in the text of a recipe each row of its lift plan and each unit of its threading is written. */
import type { ShaftSet } from "@drawcord/ground";
import { changedLifts, parseRows, parseWovenBlock, threadingColumns } from "@drawcord/units";
import type { Place } from "../place.js";
import { at, entries, isList, items, placeOf, placesInText, type Spot, textOf } from "../tree/spot.js";
import { linesOf } from "./lifts.js";
import { pictureLines } from "./picture.js";

/**
 * The places of the rows of the section `lifts`, which was read before, row 1 first: the line of the list or of the picture,
 * in a block too; for the rows of a border the line of the order that frames with it.
 */
export function rowPlaces(section: Spot, patternShafts: number): readonly Place[] {
  const order = at(section, "order");
  if (order === undefined) return placesOfLines(section);
  const blocks = new Map(entries(at(section, "blocks")!).map(([name, of]) => [name, placesOfLines(of)]));
  return items(order).flatMap((part) => {
    const { block, changes } = parseWovenBlock(textOf(part));
    const rows = blocks.get(block)!;
    const marked = changes.reduce(
      (before, change) => changedLifts(before, change, patternShafts).map(markOf),
      rows.map((_, i): ShaftSet => [MARK + i]),
    );
    const own = placeOf(part);
    return marked.map(([mark]) => (mark === undefined ? own : rows[mark - MARK]!));
  });
}

/** Above every shaft there is: a row that draws it besides is known again after any change of the plan. */
const MARK = 1_000_000;

/** The mark alone of a row that bears one. */
function markOf(row: ShaftSet): ShaftSet {
  return row.filter((shaft) => shaft >= MARK);
}

/** The places of the rows of a plan or a block that lists or draws them. */
function placesOfLines(plan: Spot): readonly Place[] {
  const rows = at(plan, "rows");
  if (rows === undefined) {
    const picture = at(plan, "picture")!;
    const begun = pictureLines(picture).map(({ index }) => index);
    return placesInText(picture, begun).toReversed();
  }
  const lines = linesOf(rows);
  const places = isList(rows)
    ? lines.map(({ of }) => placeOf(of))
    : placesInText(
        rows,
        lines.map(({ from, text }) => from + text.search(/\S/)),
      );
  const counts = new Map(lines.map(({ text }) => [text, 0]));
  for (const text of counts.keys()) counts.set(text, parseRows(text).length);
  return lines.flatMap(({ text }, i) => new Array<Place>(counts.get(text)!).fill(places[i]!));
}

/** The places of the units of a threading, which was read before, unit 1 first: the shaft or the run they are written by. */
export function unitPlaces(threading: Spot): readonly Place[] {
  const columns = threadingColumns(textOf(threading));
  const indexes = [...new Set(columns)].sort((a, b) => a - b).map((column) => column - 1);
  const places = placesInText(threading, indexes);
  const byColumn = new Map(indexes.map((index, i) => [index + 1, places[i]!]));
  return columns.map((column) => byColumn.get(column)!);
}
