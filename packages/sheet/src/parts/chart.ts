import type { SheetPart } from "../part-names.js";
import { chartPictures } from "../pictures/chart.js";
import type { Context } from "./context.js";
import { counted, range } from "./number.js";

/** The chart of one repeat on squared paper. */
export function chartPart({ woven }: Context): SheetPart {
  const { units, rows } = woven.repeat;
  const whole =
    units.end - units.start === woven.unitSpans.length && rows.end - rows.start === woven.rowSpans.length;
  const which = whole
    ? "The whole figure"
    : `One repeat of the figure, units ${range(units.start + 1, units.end)} and rows ${range(rows.start + 1, rows.end)}`;
  return {
    name: "chart",
    title: "Chart",
    blocks: [
      {
        kind: "paragraph",
        tone: "lead",
        text: `${which}: ${counted(units.end - units.start, "unit")} by ${counted(rows.end - rows.start, "row")}. Each square is one unit in one row; black is drawn (raised). The first row is at the bottom.`,
      },
      { kind: "pictures", pictures: chartPictures(woven) },
    ],
  };
}
