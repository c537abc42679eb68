import type { Block, Text } from "@drawcord/page";
import { printShafts } from "@drawcord/units";
import type { SheetPart } from "../part-names.js";
import { liftPlanPictures } from "../pictures/lift-plan.js";
import type { Section } from "../sections.js";
import type { Woven } from "../woven.js";
import type { Context } from "./context.js";
import { count, counted, range } from "./number.js";

/** Boxes beside a row at the most; of more times, the order of weaving keeps count. */
const MOST_BOXES = 12;

/** The lift plan: strips to read at the loom, and the same as a list. What repeats is there once. */
export function liftsPart({ woven }: Context): SheetPart {
  const pictures = liftPlanPictures(woven, MOST_BOXES);
  const { rowSpans, patternShafts, sections } = woven;
  const picks = new Set(rowSpans.map(lengthOf));
  const each = picks.size === 1 ? `, ${counted([...picks][0]!, "pick")} to a row` : "";
  const blocks: Block[] = [
    {
      kind: "paragraph",
      tone: "lead",
      text: `${counted(rowSpans.length, "row")} on ${counted(patternShafts, "handle")}, each numbered as the pattern shaft that it draws${each}. Row 1 is woven first and stands lowest: read upwards. Pull the handles of a row, hold them for its picks, let go, tick the row.`,
    },
  ];
  const repeats = sections.some(({ times }) => times > 1);
  if (repeats) blocks.push({ kind: "paragraph", text: repeatText(sections) });
  if (pictures.length > 0) blocks.push({ kind: "pictures", pictures });
  else if (patternShafts > 0) {
    blocks.push({
      kind: "paragraph",
      text: "There are too many handles or rows to draw them as a plan that can be read; the list holds them all.",
    });
  }
  if (repeats) blocks.push(orderTable(woven));
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
    rows: sections.flatMap((section) => liftRows(woven, section)),
    narrow: true,
  });
  return { name: "lifts", title: "Lift plan", blocks };
}

/** `Weave rows 1–9 once; then rows 10–38, 12 times running; then rows 358–366 once.` */
function repeatText(sections: readonly Section[]): string {
  const woven = sections.map(({ start, end, times }) => {
    const rows = `${end - start === 1 ? "row" : "rows"} ${range(start + 1, end)}`;
    return times === 1 ? `${rows} once` : `${rows}, ${count(times)} times running`;
  });
  return `Weave ${woven.join("; then ")}. Rows that are woven again stand here once, under the numbers of their first time.`;
}

/** Every time that a section is woven, with the numbers that its rows and picks have then. */
function orderTable({ sections, rowSpans }: Woven): Block {
  const rows = sections.flatMap(({ start, end, times }) =>
    Array.from({ length: times }, (_, time): Text[] => {
      const first = start + time * (end - start);
      const last = first + end - start - 1;
      return [
        range(first + 1, last + 1),
        "",
        times === 1 ? range(start + 1, end) : `${range(start + 1, end)}, time ${time + 1} of ${times}`,
        range(rowSpans[first]!.start + 1, rowSpans[last]!.end),
      ];
    }),
  );
  return {
    kind: "table",
    id: "lift-order",
    caption: "The order of weaving, with the numbers that rows and picks have in the whole piece",
    columns: [
      { title: "Rows", kind: "head" },
      { title: "Done", kind: "tick" },
      { title: "Woven as rows" },
      { title: "Picks", kind: "number" },
    ],
    rows,
    narrow: true,
  };
}

/** The rows of one time of a section, with a box for each time. */
function liftRows({ draft, rowSpans }: Woven, { start, end, times }: Section): Text[][] {
  const rows: Text[][] = [];
  for (let first = start; first < end; ) {
    const lift = printShafts(draft.lifts[first]!);
    const picks = lengthOf(rowSpans[first]!);
    let last = first;
    while (
      last + 1 < end &&
      printShafts(draft.lifts[last + 1]!) === lift &&
      lengthOf(rowSpans[last + 1]!) === picks
    ) {
      last++;
    }
    const boxes = times > 1 && times <= MOST_BOXES ? `${times}` : "";
    rows.push([range(first + 1, last + 1), boxes, lift, count(picks * (last - first + 1))]);
    first = last + 1;
  }
  return rows;
}

function lengthOf({ start, end }: { readonly start: number; readonly end: number }): number {
  return end - start;
}
