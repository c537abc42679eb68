import type { Sett } from "../options.js";
import type { ShaftDraft, ThreadLook, ThreadUnit } from "./types.js";

/** How many of a unit make a centimetre; a decipoint is 1/720 inch. */
const perCm: Readonly<Record<ThreadUnit, number>> = {
  centimeters: 1,
  inches: 1 / 2.54,
  decipoints: 720 / 2.54,
};

/**
 * The sett of a draft's threads by their spacing, on average where threads have their own.
 * @param draft a draft as `soundWif` gives it; its spacing tells the sett
 * @example settOf({ ...shaftDraft, warp: { unit: "centimeters", spacing: { all: 0.125 } } }) // { endsPerCm: 8 }
 */
export function settOf({ warp, weft }: ShaftDraft): Sett {
  const endsPerCm = threadsPerCm(warp);
  const picksPerCm = threadsPerCm(weft);
  return {
    ...(endsPerCm === undefined ? {} : { endsPerCm }),
    ...(picksPerCm === undefined ? {} : { picksPerCm }),
  };
}

function threadsPerCm({ spacing, unit = "decipoints" }: ThreadLook): number | undefined {
  if (spacing === undefined) return undefined;
  const { all = 0, each = [] } = spacing;
  const mean = each.length === 0 ? all : each.reduce((sum, one) => sum + one, 0) / each.length;
  const count = perCm[unit] / mean;
  return count > 0 && Number.isFinite(count) ? count : undefined;
}
