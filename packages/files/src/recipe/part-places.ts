/** Where in the text of a recipe each row of its lift plan and each unit of its threading is written. */
import type { Range } from "@drawcord/base";
import { parseRows, threadingColumns, wovenRows } from "@drawcord/units";
import { at, entries, isList, items, need, placeOf, placesInText, type Spot, textOf } from "../tree/spot.js";
import { linesOf, readableLines } from "./lifts.js";
import { wordAt } from "./notation.js";
import { pictureLines } from "./picture.js";
import { readableThreading } from "./threading.js";
import type { RecipePiece } from "./types.js";

/**
 * The places of the rows of a section of lifts, which was read before, row 1 first: the line of the list or of the picture,
 * in a block too; for the rows of a border the line of the order that frames with it, and for those of a block that fills a
 * length the line that fills with it.
 * @param shared the section with the blocks that all pieces share, where that is another
 */
export function rowPlaces(section: Spot, shared: Spot | undefined, piece: WovenPlan): readonly Range[] {
  const order = at(section, "order");
  if (order === undefined || piece.order === undefined) return placesOfLines(section);
  const spots = items(order);
  const blocks = new Map(
    [shared, section].flatMap((of) => {
      const own = of && at(of, "blocks");
      return own === undefined ? [] : entries(own).map(([name, block]) => [name, block] as const);
    }),
  );
  const places = new Map(
    Object.keys(piece.blocks ?? {}).map((name) => [name, placesOfLines(blocks.get(name)!)]),
  );
  return wovenRows(piece.order, (block) => places.get(block)!.length).map(({ entry, blocks: [first] }) =>
    first?.row === undefined ? placeOf(spots[entry]!) : places.get(first.block)![first.row]!,
  );
}

/** How the blocks of a piece are put together. */
type WovenPlan = Pick<RecipePiece, "order" | "blocks">;

/** The places of the rows of a plan or a block that lists or draws them. */
function placesOfLines(plan: Spot): readonly Range[] {
  const rows = at(plan, "rows");
  if (rows === undefined) {
    const picture = need(plan, "picture");
    const lines = pictureLines(picture).map(({ index, text }) => ({ from: index, to: index + text.length }));
    return placesInText(picture, lines).toReversed();
  }
  const lines = linesOf(rows);
  const places = isList(rows)
    ? lines.map(({ of }) => placeOf(of))
    : placesInText(
        rows,
        lines.map(({ from, text }) => ({
          from: from + text.search(/\S/),
          to: from + text.trimEnd().length,
        })),
      );
  const texts = readableLines(lines);
  const counts = new Map(texts.map((text) => [text, 0]));
  for (const text of counts.keys()) counts.set(text, parseRows(text).length);
  return texts.flatMap((text, i) => new Array<Range>(counts.get(text)!).fill(places[i]!));
}

/** The places of the units of a threading, which was read before, unit 1 first: the shaft or the run they are written by. */
export function unitPlaces(threading: Spot): readonly Range[] {
  const written = textOf(threading);
  const columns = threadingColumns(readableThreading(threading));
  const indexes = [...new Set(columns)].sort((a, b) => a - b).map((column) => column - 1);
  const places = placesInText(
    threading,
    indexes.map((index) => wordAt(written, index)),
  );
  const byColumn = new Map(indexes.map((index, i) => [index + 1, places[i]!]));
  return columns.map((column) => byColumn.get(column)!);
}
