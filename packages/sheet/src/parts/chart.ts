import type { SheetPart } from "../part-names.js";
import { chartPictures } from "../pictures/chart.js";
import type { Context } from "./context.js";
import { spacedCount } from "./number.js";

/** The whole chart on squared paper; rows that are woven again and again once. */
export function chartPart({ woven, sections }: Context): SheetPart {
  const again = sections.some(({ times }) => times > 1)
    ? " Rows that are woven again are shown once, with their repeats beside them."
    : "";
  return {
    name: "chart",
    title: "Chart",
    blocks: [
      {
        kind: "paragraph",
        tone: "lead",
        text: `The whole figure with its borders, ${spacedCount(woven.unitSpans.length, "unit")} by ${spacedCount(woven.rowSpans.length, "row")}. Each square is one unit in one row; black is drawn (raised). Read upwards: the first row is at the foot.${again}`,
      },
      { kind: "pictures", pictures: chartPictures(woven, sections) },
    ],
  };
}
