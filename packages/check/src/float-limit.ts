import { floatLimit } from "./limits/float.js";
import { type AllowedLength, allowedLength } from "./measured-length.js";
import type { OptionsOf } from "./options.js";

/**
 * The longest float allowed along an end (`warp`) or along a pick of the weft by that name. A float along an end passes
 * picks, so it is as long as the picks lie close; a float along a pick passes ends.
 * @param options the limits, and the sett that turns mm into threads
 * @param system along the ends, or along the picks
 * @param weft the weft by its name; the ground weft by default
 * @example allowedFloat({ sett: { picksPerCm: 10 } }, "warp").threads // 6
 */
export function allowedFloat(options: OptionsOf, system: "warp" | "weft", weft = ""): AllowedLength {
  const { limits = {} } = options;
  const own = system === "warp" ? limits.warpFloat : (limits.floatOfWeft?.[weft] ?? limits.weftFloat);
  return allowedLength(options, system === "warp" ? "pick" : "end", own ?? limits.float ?? floatLimit.usual);
}
