import type { BaseWeave } from "../description/description.js";
import { GroundError } from "../error.js";
import { shaftCount } from "../size.js";
import { endsOf } from "./ratio.js";
import { satinSteps } from "./satin.js";

/**
 * Refuses a weave that needs more ground shafts than there are.
 * @param name the weave as described
 * @throws {GroundError} `too-large`
 */
export function checkShafts(base: BaseWeave, name: string, ends?: number, loomShafts?: number): void {
  const needed = shaftsNeeded(base, ends);
  if (loomShafts !== undefined && needed > loomShafts) {
    throw new GroundError(
      "too-large",
      `${name} needs ${needed} ground shafts and the loom has ${loomShafts}; it could weave ${whatFits(loomShafts)}`,
      { shafts: needed, loomShafts },
    );
  }
  shaftCount(needed, name);
}

function shaftsNeeded(base: BaseWeave, ends = 0): number {
  if ("ratio" in base && base.ratio) return endsOf(base.ratio);
  if ("ends" in base && typeof base.ends === "number") return base.ends;
  if (base.kind === "satin" && base.order) return base.order.length;
  return Math.max(2, ends);
}

/** The weaves that make the most of so many shafts. */
function whatFits(shafts: number): string {
  if (shafts < 3) return "plain";
  const [step] = satinSteps(shafts);
  const satin = step ? [`satin ${shafts} step ${step}`] : shafts === 6 ? ["satin 6"] : [];
  const broken = shafts > 3 ? [`broken twill 1/${shafts - 1}`] : [];
  const others = [...satin, ...broken];
  return `${others.join(", ")}${others.length > 0 ? " or " : ""}twill 1/${shafts - 1}`;
}
