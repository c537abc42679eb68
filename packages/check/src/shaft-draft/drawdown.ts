import { BitGrid } from "@drawcord/grid";
import type { ShaftSet } from "@drawcord/ground";
import type { ShaftDraft } from "./types.js";

/**
 * The shafts moved on each pick, pick 1 first: those of its treadles, or as the lift plan says.
 * @param draft a draft as `soundWif` gives it
 * @example shaftsMoved({ ...shaftDraft, shedding: { kind: "tie-up", tieUp: [[1, 3], [2]], treadling: [[1, 2], []] } }) // [[1, 2, 3], []]
 */
export function shaftsMoved(draft: ShaftDraft): readonly ShaftSet[] {
  const { shedding } = draft;
  if (shedding.kind === "lift-plan") return shedding.liftPlan;
  const known = new Map<string, ShaftSet>();
  return shedding.treadling.map((treadles) => {
    const key = treadles.join(" ");
    const moved =
      known.get(key) ??
      [...new Set(treadles.flatMap((treadle) => shedding.tieUp[treadle - 1] ?? []))].sort((a, b) => a - b);
    known.set(key, moved);
    return moved;
  });
}

/**
 * The cloth of a shaft draft, picks x ends: with a rising shed an end lies over the pick where any of its shafts is moved,
 * with a sinking shed where none is.
 * @param draft a draft as `soundWif` gives it
 * @example toText(drawdownOfDraft(shaftDraft)) // "#.#.\n.#.#\n#.#.\n.#.#"
 */
export function drawdownOfDraft(draft: ShaftDraft): BitGrid {
  const { threading, rising } = draft;
  const stride = Math.ceil(threading.length / 32);
  const endsOn = new Map<number, number[]>();
  threading.forEach((shafts, end) => {
    for (const shaft of shafts) {
      const ends = endsOn.get(shaft);
      if (ends === undefined) endsOn.set(shaft, [end]);
      else ends.push(end);
    }
  });

  const picks = shaftsMoved(draft);
  const words = new Uint32Array(picks.length * stride);
  // A pick is decided by the shafts it moves, so each set is worked out once.
  const first = new Map<string, number>();
  picks.forEach((moved, pick) => {
    const start = pick * stride;
    const key = moved.join(" ");
    const before = first.get(key);
    if (before !== undefined) {
      words.copyWithin(start, before, before + stride);
      return;
    }
    first.set(key, start);
    for (const shaft of moved) {
      for (const end of endsOn.get(shaft) ?? []) words[start + (end >>> 5)]! |= 1 << (end & 31);
    }
    if (!rising) for (let i = 0; i < stride; i++) words[start + i] = ~words[start + i]!;
  });
  return BitGrid.fromWords(picks.length, threading.length, words);
}
