import type { Watched } from "@drawcord/base";
import type { Cloth, Figure, System } from "./cloth.js";
import { findAll } from "./findings.js";
import type { FloatTally, ReportOf, Spread } from "./report.js";
import { eachLoose } from "./rules/loose-thread.js";
import type { AnyRule, FindingOf } from "./rules/rule.js";

/** Writes down what was measured of a cloth and what the rules find in it. */
export function reportOf<R extends AnyRule>(
  cloth: Cloth,
  rules: readonly R[],
  watched: Watched = {},
): ReportOf<FindingOf<R>> {
  const { warp, weft, layout, figure, integrity } = cloth;
  const { ok, summary, waived, rules: looked, findings } = findAll(cloth, rules, watched);
  const none = { cutting: 0, open: 0 };
  return {
    ok,
    size: {
      ends: warp.count,
      picks: weft.count,
      units: layout?.draft.threading.length ?? 0,
      rows: layout?.draft.lifts.length ?? 0,
    },
    summary,
    waived,
    floats: {
      warpFace: floats(warp.threads.raised),
      warpBack: floats(warp.threads.lowered),
      weftFace: floats(weft.threads.lowered),
      weftBack: floats(weft.threads.raised),
    },
    cut: { side: figure?.side ?? none, across: figure?.across ?? none },
    balance: {
      warpFaceShare: warpFaceShare(weft),
      drawnShare: figure?.share ?? 0,
      intersections: { ends: spread(warp), picks: spread(weft) },
      areas: areas(figure),
    },
    ...(cloth.inferred && { inferred: cloth.inferred }),
    integrity: {
      hangsTogether: integrity.layers <= 1,
      layers: integrity.layers,
      looseEnds: loose(warp),
      loosePicks: loose(weft),
    },
    rules: looked,
    findings,
  };
}

function floats(counts: Float64Array): FloatTally {
  const lengths: Record<string, number> = {};
  let longest = 0;
  counts.forEach((count, length) => {
    if (count === 0) return;
    lengths[length] = count;
    longest = length;
  });
  return { longest, lengths };
}

/** The share of interlacements with the warp on the face; 0 where there are none at all. */
function warpFaceShare({ count, length, raised }: System): number {
  const ones = raised.reduce((sum, one) => sum + one, 0);
  return ones === 0 ? 0 : ones / (count * length);
}

function spread({ kinds, threads }: System): Spread {
  if (kinds.first.length === 0) return { least: 0, most: 0, mean: 0 };
  let least = Number.POSITIVE_INFINITY;
  let most = 0;
  let sum = 0;
  threads.changes.forEach((changes, kind) => {
    least = Math.min(least, changes);
    most = Math.max(most, changes);
    sum += changes * kinds.times[kind]!;
  });
  return { least, most, mean: sum / kinds.kindOf.length };
}

function areas(figure: Figure | undefined): { count: number; largest: number } {
  if (figure === undefined) return { count: 0, largest: 0 };
  const { count, squares } = figure.areas;
  return { count, largest: squares.reduce((most, size) => Math.max(most, size), 0) };
}

/** The threads of a system that never interlace, from 1. */
function loose(system: System): number[] {
  const threads: number[] = [];
  for (const state of [0, 1] as const) eachLoose(system, state, (thread) => threads.push(thread + 1));
  return threads.sort((a, b) => a - b);
}
