import { weftLetters } from "../card/letters.js";
import type { SheetPart } from "../part-names.js";
import { cornerPicture } from "../pictures/corner.js";
import type { Woven } from "../woven.js";
import type { Context } from "./context.js";

/** A part of the drawdown with both harnesses beside it. */
export function cornerPart({ woven, options, colours }: Context): SheetPart {
  return {
    name: "corner",
    title: "Drawdown, thread by thread",
    blocks: [
      {
        kind: "paragraph",
        tone: "lead",
        text: `Some ends and picks with the two harnesses that make them. An end is raised where the treadle raises its ground shaft, and where its unit is drawn and the treadle does not sink its ground shaft.${weftKey(woven)}`,
      },
      { kind: "pictures", pictures: [cornerPicture(woven, options.corner, colours)] },
    ],
  };
}

/** What the letters of the wefts stand for, where there are several. */
function weftKey(woven: Woven): string {
  return woven.wefts.length < 2 ? "" : ` Wefts: ${weftLetters(woven)}.`;
}
