import type { Block, Text } from "@drawcord/page";
import { letterOf } from "../card/letters.js";
import type { SheetPart } from "../part-names.js";
import { spacedCount, spacedNumber } from "../parts/number.js";
import { pairs } from "../parts/pairs.js";
import type { PlainContext } from "./context.js";

/** How large the cloth is and which yarns it takes; the draft knows no lengths of yarn. */
export function numbersPart({ draft, woven, look, closeness, print }: PlainContext): SheetPart {
  const { endsPerCm, picksPerCm } = closeness;
  const { notes = [] } = draft;
  const sett = (value: number) => print({ value, unit: "per cm", kind: "sett" });
  const length = (threads: number, perCm: number) =>
    print({ value: (threads / perCm) * 10, unit: "mm", kind: "length" });
  const rows: (readonly [string, string])[] = [
    ["Threads", `${spacedCount(woven.ends, "end")}, ${spacedCount(woven.picks, "pick")}`],
    ...(endsPerCm === undefined
      ? []
      : ([
          ["Sett", sett(endsPerCm)],
          ["Width in the reed", length(woven.ends, endsPerCm)],
        ] as const)),
    ...(picksPerCm === undefined
      ? []
      : ([
          ["Picks", sett(picksPerCm)],
          ["Length on the loom", length(woven.picks, picksPerCm)],
        ] as const)),
  ];
  const blocks: Block[] = [
    ...(notes.length === 0 ? [] : [{ kind: "paragraph", tone: "lead", text: notes.join(" ") } as const]),
    {
      kind: "table",
      id: "materials",
      caption: "The yarns by their colours",
      columns: [
        { title: "Letter", kind: "head" },
        { title: "Colour" },
        { title: "Swatch", kind: "swatch" },
        { title: "Ends", kind: "number" },
        { title: "Picks", kind: "number" },
      ],
      rows: look.names.map((name, i): Text[] => {
        const given = name.startsWith("#");
        const used = (list: readonly number[]) => spacedNumber(list.filter((one) => one === i).length);
        return [
          letterOf(i),
          given ? name : "not named",
          given ? name : "",
          used(look.ends),
          used(look.picks),
        ];
      }),
    },
    pairs("sizes", "The cloth in numbers", rows),
    {
      kind: "paragraph",
      tone: "note",
      text: "A draft says nothing of take-up, shrinkage and loom waste, so lengths of warp and weights of yarn are not worked out; a recipe has them.",
    },
  ];
  return { name: "project", title: "The yarns, and the cloth in numbers", blocks };
}
