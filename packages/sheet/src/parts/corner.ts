import type { SheetPart } from "../part-names.js";
import { cornerPicture } from "../pictures/corner.js";
import type { Context } from "./context.js";

/** A corner of the drawdown with both harnesses beside it. */
export function cornerPart({ woven, options }: Context): SheetPart {
  return {
    name: "corner",
    title: "Drawdown of a corner",
    blocks: [
      {
        kind: "paragraph",
        tone: "lead",
        text: "Every end and pick of a corner with the two harnesses that make it. An end is raised where the treadle raises its ground shaft, and where its unit is drawn and the treadle does not sink its ground shaft.",
      },
      { kind: "pictures", pictures: [cornerPicture(woven, options.corner)] },
    ],
  };
}
