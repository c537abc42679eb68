import type { Block } from "@drawcord/page";
import type { SheetPart } from "../part-names.js";
import { clothPictures } from "../pictures/cloth.js";
import { errorBlocks } from "./checked.js";
import type { Context } from "./context.js";
import { spacedCount } from "./number.js";

/** The cloth as it will look: the whole piece and one repeat, face and back. */
export function clothPart(context: Context): SheetPart {
  const { woven, colours, closeness, chosen } = context;
  const { repeat } = woven;
  const across = times(repeat.across, repeat.units.end - repeat.units.start, "unit", "across");
  const along = times(repeat.along, repeat.rows.end - repeat.rows.start, "row", "along");
  const repeats = repeat.across > 1 || repeat.along > 1;
  const blocks: Block[] = [
    ...errorBlocks(context.report),
    {
      kind: "paragraph",
      tone: "lead",
      text: repeats
        ? `The figure repeats: ${across}; ${along}.`
        : "The figure does not repeat within the piece: one repeat is the whole of it.",
    },
    ...chosen.map((text): Block => ({ kind: "paragraph", tone: "note", text })),
    ...clothPictures(woven, colours, closeness).map((pictures): Block => ({ kind: "pictures", pictures })),
  ];
  return { name: "cloth", title: "The cloth", blocks };
}

function times(count: number, length: number, noun: string, way: string): string {
  return count > 1 ? `${count} times ${way}, ${spacedCount(length, noun)} each` : `not ${way}`;
}
