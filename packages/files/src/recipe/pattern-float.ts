/** How far a pattern weft may float, read before the ground is, which is tied so that it floats no farther. */
import { allowedFloat } from "@drawcord/check";
import { parseQuantity, toMetric } from "@drawcord/yarn";
import { at, isSection, type Spot, scalar, textAt } from "../tree/spot.js";

/**
 * The longest float that the recipe allows a weft, in ends; undefined where that cannot be read, which is told where limits
 * and setts are.
 */
export function patternFloat(top: Spot): number | undefined {
  const limits = at(top, "limits");
  const float = limits && at(limits, "float");
  const parts = ["pattern", "weft"] as const;
  const own =
    float !== undefined && isSection(float) ? parts.map((part) => at(float, part)).find((of) => of) : float;
  const cloth = at(top, "cloth");
  try {
    const sett = textAt(cloth, "sett");
    const { threads } = allowedFloat(
      {
        ...(sett !== undefined && { sett: { endsPerCm: toMetric(parseQuantity(sett)).value } }),
        ...(own !== undefined && { limits: { float: sizeOf(own) } }),
      },
      "weft",
    );
    return Number.isFinite(threads) ? threads : undefined;
  } catch {
    return undefined;
  }
}

/** A number of threads, or a length. */
function sizeOf(of: Spot): { readonly threads?: number; readonly mm?: number } {
  const plain = scalar(of);
  return typeof plain === "number"
    ? { threads: plain }
    : { mm: toMetric(parseQuantity(String(plain), { kind: ["length"] })).value };
}
