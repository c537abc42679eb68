import type { CheckOptions, FloatLimit } from "./options.js";

/** The longest float allowed when the weaver names no limit, in cloth that is worn or washed often (common practice). */
const USUAL_MM = 6;

/** The sett that is assumed when none is known, in threads a cm: the usual 6 mm is then 12 threads. */
const ASSUMED_PER_CM = 20;

/** The longest float allowed along one thread. */
export interface AllowedFloat {
  /** In whole threads. */
  readonly threads: number;
  /** In mm, where the limit was set so. */
  readonly mm?: number;
  /** Threads a cm that a float along the thread passes. */
  readonly perCm: number;
  /** The sett was not known, so `perCm` is assumed. */
  readonly assumed: boolean;
}

/**
 * The longest float allowed along an end (`warp`) or along a pick of the weft by that name. A float along an end passes
 * picks, so it is as long as the picks lie close; a float along a pick passes ends.
 * @example allowedFloat({ sett: { picksPerCm: 10 } }, "warp").threads // 6
 */
export function allowedFloat(
  { limits = {}, sett = {} }: CheckOptions,
  system: "warp" | "weft",
  weft = "",
): AllowedFloat {
  const own = system === "warp" ? limits.warpFloat : (limits.floatOfWeft?.[weft] ?? limits.weftFloat);
  const limit: FloatLimit = own ?? limits.float ?? { mm: USUAL_MM };
  const known = system === "warp" ? sett.picksPerCm : sett.endsPerCm;
  const perCm = known ?? ASSUMED_PER_CM;
  const assumed = known === undefined;
  // A float of just the limit passes, whatever the last binary digit of its length in mm says.
  const threads =
    limit.mm === undefined ? Number.POSITIVE_INFINITY : Math.floor((limit.mm * perCm) / 10 + 1e-9);
  if (limit.threads !== undefined && limit.threads <= threads) {
    return { threads: Math.floor(limit.threads), perCm, assumed: false };
  }
  return { threads, ...(limit.mm !== undefined && { mm: limit.mm }), perCm, assumed };
}
