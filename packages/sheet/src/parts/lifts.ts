import { printShafts } from "@drawcord/units";
import type { Block, Part, Text } from "../document/types.js";
import { liftPlanPictures } from "../pictures/lift-plan.js";
import type { Woven } from "../woven.js";
import type { Context } from "./context.js";
import { counted, range } from "./number.js";

/** The lift plan: strips to read at the loom, and the same as a list. */
export function liftsPart({ woven }: Context): Part {
  const pictures = liftPlanPictures(woven);
  const { rowSpans, patternShafts } = woven;
  const blocks: Block[] = [
    {
      kind: "paragraph",
      tone: "lead",
      text: `${counted(rowSpans.length, "row")} on ${counted(patternShafts, "handle")}, each numbered as the pattern shaft that it draws. Row 1 is woven first and stands lowest: read upwards. Pull the handles of a row, hold them for its picks, let go, tick the row.`,
    },
  ];
  if (pictures.length > 0) blocks.push({ kind: "pictures", pictures });
  else if (patternShafts > 0) {
    blocks.push({
      kind: "paragraph",
      text: "There are too many handles or rows to draw them as a plan that can be read; the list holds them all.",
    });
  }
  blocks.push({
    kind: "table",
    id: "lift-list",
    caption: "The lifts in weaving order, row 1 first; neighbouring rows alike stand together",
    columns: [
      { title: "Row", kind: "head" },
      { title: "Done", kind: "tick" },
      { title: "Pull handles" },
      { title: "Picks", kind: "number" },
    ],
    rows: liftRows(woven),
    narrow: true,
  });
  return { name: "lifts", title: "Lift plan", blocks };
}

function liftRows({ draft, rowSpans }: Woven): Text[][] {
  const rows: Text[][] = [];
  for (let first = 0; first < rowSpans.length; ) {
    const lift = printShafts(draft.lifts[first]!);
    const picks = lengthOf(rowSpans[first]!);
    let last = first;
    while (
      last + 1 < rowSpans.length &&
      printShafts(draft.lifts[last + 1]!) === lift &&
      lengthOf(rowSpans[last + 1]!) === picks
    ) {
      last++;
    }
    rows.push([range(first + 1, last + 1), "", lift, range(rowSpans[first]!.start + 1, rowSpans[last]!.end)]);
    first = last + 1;
  }
  return rows;
}

function lengthOf({ start, end }: { readonly start: number; readonly end: number }): number {
  return end - start;
}
