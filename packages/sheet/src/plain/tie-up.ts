import type { Block, Text } from "@drawcord/page";
import { printShafts } from "@drawcord/units";
import type { SheetPart } from "../part-names.js";
import { spacedCount } from "../parts/number.js";
import { tieUpPicture } from "../pictures/tie-up.js";
import type { PlainContext } from "./context.js";

/** The tie-up of a plain draft; a part without blocks where its shafts are moved by a lift plan. */
export function tieUpPart({ draft }: PlainContext): SheetPart {
  const { shedding, shafts, rising } = draft;
  const title = "Tie-up";
  if (shedding.kind === "lift-plan" || shedding.tieUp.length === 0)
    return { name: "ground", title, blocks: [] };
  const { tieUp } = shedding;
  const treadles = tieUp.map((tied) => (rising ? { raise: tied, sink: [] } : { raise: [], sink: tied }));
  const moves = rising ? "raises" : "sinks";
  const rest = rising ? "down" : "up";
  const blocks: Block[] = [
    {
      kind: "paragraph",
      tone: "lead",
      text: `${spacedCount(tieUp.length, "treadle")} and ${spacedCount(shafts, "shaft")}. A treadle ${moves} the shafts that it is tied to; the others stay ${rest}. On a loom whose treadles move shafts the other way, tie each treadle to the shafts that it is not tied to here; on a countermarch, tie both.`,
    },
    {
      kind: "pictures",
      pictures: [
        tieUpPicture(
          { shafts, treadles },
          treadles.map((_, i) => i + 1),
          `blank: stays ${rest}`,
        ),
      ],
    },
    {
      kind: "table",
      id: "tie-up",
      caption: "The treadles from left to right as they hang",
      columns: [{ title: "Treadle", kind: "head" }, { title: "Raises shafts" }, { title: "Sinks shafts" }],
      rows: treadles.map(({ raise, sink }, i): Text[] => [
        `${i + 1}`,
        rising ? printShafts(raise) : "none",
        rising ? "none" : printShafts(sink),
      ]),
    },
  ];
  return { name: "ground", title, blocks };
}
