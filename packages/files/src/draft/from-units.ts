import type { ShaftDraft } from "@drawcord/check";
import { type BitGrid, transpose } from "@drawcord/grid";
import type { ShaftSet } from "@drawcord/ground";
import { expand, type UnitDraft } from "@drawcord/units";
import { FileError } from "../error.js";
import { top } from "../place.js";
import { groupRows } from "./group-rows.js";

/** How a unit draft becomes a shaft draft. */
export interface ShaftDraftOptions {
  /** The most shafts it may take; default 4096. */
  readonly mostShafts?: number;
  /** Whether the shafts are moved by a lift plan or by treadles, one tied up for each pick that differs; default a lift plan. */
  readonly shedding?: "lift-plan" | "tie-up";
}

/**
 * The shaft draft of a unit draft with the fewest shafts, each end on one of them: as many as there are ends that weave
 * differently, numbered as they first come.
 * @param draft a draft as `checkDraft` passes it
 * @param options the most shafts, and whether treadles or a lift plan move them
 * @throws {FileError} `too-many-shafts` when it takes more than `mostShafts`
 * @throws {UnitsError} for a draft that cannot be worked out
 * @example shaftDraftOf(unitDraft, { shedding: "tie-up" }).shafts // 2
 */
export function shaftDraftOf(draft: UnitDraft, options: ShaftDraftOptions = {}): ShaftDraft {
  return shaftDraftOfCloth(expand(draft).drawdown, options);
}

/**
 * The shaft draft with the fewest shafts that weaves a drawdown (picks x ends, pick 1 in row 0), as above.
 * @param drawdown picks x ends, pick 1 in row 0
 * @param options the most shafts, and whether treadles or a lift plan move them
 * @throws {FileError} `too-many-shafts`
 * @example shaftDraftOfCloth(fromText("#.#.\n.#.#")).threading // [[1], [2], [1], [2]]
 */
export function shaftDraftOfCloth(drawdown: BitGrid, options: ShaftDraftOptions = {}): ShaftDraft {
  const { mostShafts = 4096, shedding = "lift-plan" } = options;
  const ends = groupRows(transpose(drawdown));
  const shafts = ends.first.length;
  if (shafts > mostShafts) {
    const sentence = `the cloth takes ${shafts} shafts, for so many of its ends weave differently; ${mostShafts} are allowed`;
    throw new FileError("too-many-shafts", sentence, "draft", top);
  }
  const picks = groupRows(drawdown);
  const lifts = picks.first.map((pick): ShaftSet => {
    const raised: number[] = [];
    ends.first.forEach((end, shaft) => {
      if (drawdown.get(pick, end)) raised.push(shaft + 1);
    });
    return raised;
  });
  return {
    shafts,
    threading: oneEach(ends.group),
    shedding:
      shedding === "lift-plan"
        ? { kind: "lift-plan", liftPlan: picks.group.map((group) => lifts[group]!) }
        : { kind: "tie-up", tieUp: lifts, treadling: oneEach(picks.group) },
    rising: true,
    warp: {},
    weft: {},
  };
}

/** The set of one shaft or treadle for each thread. */
function oneEach(groups: readonly number[]): readonly ShaftSet[] {
  const sets: ShaftSet[] = [];
  return groups.map((group) => {
    sets[group] ??= [group + 1];
    return sets[group]!;
  });
}
