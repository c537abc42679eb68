import type { Ground, GroundStep } from "@drawcord/ground";
import { checkDraft, draftSize } from "./draft-check.js";
import { shaftUses } from "./shaft-uses.js";
import type { UnitDraft } from "./types.js";

/** What hangs on one shaft. */
export interface ShaftLoad {
  /** Its number, from 1. */
  readonly shaft: number;
  /** Leashes of a pattern shaft, heddles of a ground shaft. */
  readonly count: number;
}

/** What the loom must have for a draft. */
export interface LoomNeeds {
  /** Ends, selvedges included. */
  readonly ends: number;
  /** Picks of all rows together. */
  readonly picks: number;
  /** Units, static ones included. */
  readonly units: number;
  /** Units on no pattern shaft. */
  readonly staticUnits: number;
  /** One for each unit, the static ones too. */
  readonly lingos: number;
  /** The pattern shafts that units hang on, or that a lift draws. */
  readonly patternShafts: number;
  /** The highest number among them. */
  readonly highestPatternShaft: number;
  /** Leashes on each pattern shaft that has any, ascending; a unit on two shafts has one on each. */
  readonly leashes: readonly ShaftLoad[];
  /** The cords that are drawn: one for each pattern shaft, which in single-unit draw is one for each unit. */
  readonly cords: number;
  /** Whether no two units share a pattern shaft. */
  readonly singleUnitDraw: boolean;
  /** Shafts of the ground harness. */
  readonly groundShafts: number;
  /** Heddles on each ground shaft, the selvedges' too; one entry a shaft of the harness. */
  readonly heddles: readonly ShaftLoad[];
  /** Treadles: one for each step unlike the others that moves a shaft. A pick of the figure alone needs none. */
  readonly treadles: number;
  /** Cords from treadles to ground shafts, one for each shaft that a treadle raises or sinks. */
  readonly ties: number;
  /**
   * Ties with damask pulleys, which couple two shafts so that one goes up as the other goes down: one a treadle. None
   * where the plan does not always sink the same shaft against a raised one and the other way about.
   */
  readonly tiesWithPulleys: number | undefined;
}

/**
 * What the loom must have for a draft: lingos, leashes, heddles, cords, shafts, treadles and ties.
 * @param draft the draft that is to be woven
 * @throws {UnitsError} for a draft that `checkDraft` refuses
 * Source: common practice.
 * @example loomNeeds(draft).lingos // 3
 */
export function loomNeeds(draft: UnitDraft): LoomNeeds {
  checkDraft(draft);
  const { threading, ground } = draft;
  const { ends, picks, units } = draftSize(draft);
  const used = shaftUses(draft);
  const leashes = used.flatMap(({ shaft, units: hung }) =>
    hung.length === 0 ? [] : [{ shaft, count: hung.length }],
  );
  const treadles = unlikeSteps(ground);
  return {
    ends,
    picks,
    units,
    staticUnits: threading.filter((unit) => unit.length === 0).length,
    lingos: units,
    patternShafts: used.length,
    highestPatternShaft: used.at(-1)?.shaft ?? 0,
    leashes,
    cords: used.length,
    singleUnitDraw: leashes.length > 0 && leashes.every(({ count }) => count === 1),
    groundShafts: ground.shafts,
    heddles: heddles(draft, ends),
    treadles: treadles.length,
    ties: treadles.reduce((sum, { raise, sink }) => sum + raise.length + sink.length, 0),
    tiesWithPulleys: isCoupled(treadles) ? treadles.length : undefined,
  };
}

/** Heddles on each ground shaft: the ground's repeat over the ends of units, and the selvedges' own. */
function heddles(draft: UnitDraft, ends: number): readonly ShaftLoad[] {
  const { threading, shafts } = draft.ground;
  const { left = [], right = [] } = draft.selvedge ?? {};
  const ofUnits = ends - left.length - right.length;
  const counts = Array.from({ length: shafts }, () => 0);
  threading.forEach((shaft, place) => {
    counts[shaft - 1]! += Math.max(0, Math.ceil((ofUnits - place) / threading.length));
  });
  for (const shaft of [...left, ...right]) counts[shaft - 1]!++;
  return counts.map((count, i) => ({ shaft: i + 1, count }));
}

/** The steps unlike each other that move any shaft. */
function unlikeSteps(ground: Ground): readonly GroundStep[] {
  const told = new Map<string, GroundStep>();
  for (const step of ground.steps) {
    if (step.raise.length + step.sink.length > 0) told.set(`${step.raise} / ${step.sink}`, step);
  }
  return [...told.values()];
}

/** Whether every treadle raises one shaft and sinks one, always the same two together. */
function isCoupled(treadles: readonly GroundStep[]): boolean {
  const partner = new Map<number, number>();
  for (const { raise, sink } of treadles) {
    const [up, down] = [raise[0], sink[0]];
    if (raise.length !== 1 || sink.length !== 1 || up === undefined || down === undefined) return false;
    if ((partner.get(up) ?? down) !== down || (partner.get(down) ?? up) !== up) return false;
    partner.set(up, down).set(down, up);
  }
  return treadles.length > 0;
}
