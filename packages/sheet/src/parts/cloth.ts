import type { Block, Part, Pictures } from "../document/types.js";
import { piecePictures, repeatPictures } from "../pictures/cloth.js";
import type { Context } from "./context.js";
import { counted } from "./number.js";

/** The cloth as it will look: one repeat and the whole piece, face and back. */
export function clothPart(context: Context): Part {
  const { woven, colours, closeness, chosen } = context;
  const { repeat, unitSpans, rowSpans, ends, picks } = woven;
  const repeats = repeat.across > 1 || repeat.along > 1;
  const blocks: Block[] = [
    {
      kind: "paragraph",
      tone: "lead",
      text: `${counted(ends, "end")} and ${counted(picks, "pick")}: ${counted(unitSpans.length, "unit")} across, ${counted(rowSpans.length, "row")} along.`,
    },
  ];
  const piece: Block = { kind: "pictures", pictures: piecePictures(woven, colours, closeness) };
  const close: Pictures = { kind: "pictures", pictures: repeatPictures(woven, colours, closeness) };
  if (repeats) {
    const across = times(repeat.across, repeat.units.end - repeat.units.start, "unit", "across");
    const along = times(repeat.along, repeat.rows.end - repeat.rows.start, "row", "along");
    blocks.push({ kind: "paragraph", text: `The figure repeats: ${across}; ${along}.` }, close, piece);
  } else {
    const text = "The figure does not repeat within the piece: one repeat is the whole of it.";
    blocks.push({ kind: "paragraph", text }, piece, ...(close.pictures.length === 0 ? [] : [close]));
  }
  for (const text of chosen) blocks.push({ kind: "paragraph", tone: "note", text });
  return { name: "cloth", title: "The cloth", blocks };
}

function times(count: number, length: number, noun: string, way: string): string {
  return count > 1 ? `${count} times ${way}, ${counted(length, noun)} each` : `not ${way}`;
}
