import { upTo } from "../arithmetic.js";
import { shaftCount, soundCount } from "../size.js";
import { floatsOf } from "../study/floats.js";
import type { Ground } from "../types.js";
import { satinSteps } from "../weave/satin.js";
import { drawdownOf } from "../weave/weave.js";
import type { GroundPlanKind } from "./choose.js";
import type { FigureSize, GroundCut } from "./cut.js";
import { irregularPair, touching } from "./irregular.js";
import { groundPlanOf } from "./plan.js";

/** One ground that so many ends allow. */
export interface PossibleGround {
  /** The weave; nothing for the irregular pair, which has no description of its own. */
  readonly description?: string;
  /** How ground and figure share the shafts. */
  readonly kind: GroundPlanKind;
  /** The raise and sink plan. */
  readonly ground: Ground;
  /** How its borders cut. */
  readonly cut: GroundCut;
  /** Binding points that touch the next pick's, in a repeat of the undrawn weave, where each pick has one. */
  readonly touching?: number;
  /** The longest float of the undrawn weave, in threads. */
  readonly longestFloat: number;
}

/** Above so many ends only the twill with one binding point is listed. */
const MOST_TWILLS = 16;

/**
 * The grounds that can be counted on `ends` ends, best first: those in two weaves before those that leave the figure no
 * say, the cleaner cut first, then the one with fewer touching binding points, then the one with the shorter float.
 * @param ends ends of a repeat, from 2 to 64
 * @param size the figure; left out, units and rows are whole repeats
 * @throws {GroundError} `bad-size` below 2 ends, `too-large` above 64
 * @example groundsOn(8)[0].description // "satin 8 step 3"
 */
export function groundsOn(ends: number, size: FigureSize = {}): PossibleGround[] {
  shaftCount(soundCount(ends, "the number of ends of a ground", 2), `a ground on ${ends} ends`);
  const found = descriptionsOn(ends).map((description): PossibleGround => {
    const { kind, ground, cut } = groundPlanOf(description, { ...size, ends });
    return { description, kind, cut, ...measured(ground, kind) };
  });
  const whole = (size.unitEnds ?? ends) % ends === 0 && (size.picksPerRow ?? ends) % ends === 0;
  const pair = whole && ends % 2 === 1 ? irregularPair(ends) : undefined;
  if (pair) found.push({ kind: "two weaves", cut: pair.cut, ...measured(pair.ground, "two weaves") });
  return found.sort(
    (a, b) =>
      Number(b.kind === "two weaves") - Number(a.kind === "two weaves") ||
      openShare(a.cut) - openShare(b.cut) ||
      (a.touching ?? ends) - (b.touching ?? ends) ||
      a.longestFloat - b.longestFloat,
  );
}

function descriptionsOn(n: number): string[] {
  const satins = satinSteps(n)
    .filter((step) => step < n / 2)
    .map((step) => `satin ${n} step ${step}`);
  const irregular = n === 6 ? ["satin 6"] : [];
  const broken = n > 3 ? [`broken twill 1/${n - 1}`] : [];
  const fourths = n > 4 && n % 4 === 0 ? [`broken twill 1/${n - 1} by fourths`] : [];
  const most = n > MOST_TWILLS ? 1 : Math.floor(n / 2);
  const twills = n > 2 ? upTo(most).map((i) => `twill ${i + 1}/${n - i - 1}`) : [];
  const grouped = n % 2 === 0 ? ["plain"] : [];
  const hopsack = n % 2 === 0 && n > 2 ? [`hopsack ${n / 2}/${n / 2}`] : [];
  const corkscrew = n > 4 && n % 2 === 1 ? [`corkscrew ${n}`] : [];
  return [...satins, ...irregular, ...broken, ...fourths, ...twills, ...grouped, ...hopsack, ...corkscrew];
}

function measured(
  ground: Ground,
  kind: GroundPlanKind,
): Pick<PossibleGround, "ground" | "touching" | "longestFloat"> {
  const raised = ground.steps.map(({ raise }) => raise);
  const floats = floatsOf(drawdownOf({ ...ground, raised }));
  const counted = kind === "two weaves" && raised.every((set) => set.length === 1);
  return {
    ground,
    ...(counted && { touching: touching(raised.flat()) }),
    longestFloat: Math.max(...Object.values(floats).map(({ longest }) => longest)),
  };
}

function openShare({ sideways, lengthways }: GroundCut): number {
  return 2 - sideways.share - lengthways.share;
}
