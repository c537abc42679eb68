import type { Cloth } from "../cloth.js";
import type { Counted } from "./project.js";

/** The weft of picks whose step names none. */
const GROUND_WEFT = "weft";

/** What a project needs of a cloth, counted. */
export function countedIn({ layout, warp, weft, weftOfPick, wefts }: Cloth): Counted {
  const picks = new Int32Array(wefts.length);
  for (const of of weftOfPick) picks[of]!++;
  const units = layout?.draft.threading.length;
  return {
    ends: warp.count,
    picks: weft.count,
    ...(units !== undefined && { units }),
    picksOf: (name) => picks[wefts.indexOf(name === GROUND_WEFT ? "" : name)] ?? 0,
  };
}
