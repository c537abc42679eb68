import type { UnitDraft } from "@drawcord/units";
import type { Change } from "./change.js";

/**
 * The tie that a counted weave lacks: where every other step raises (or sinks) one shaft, each another, and one step
 * none, that step wants the shaft that is left. Nothing where no tie is missing.
 */
export function missingTie({ ground }: UnitDraft): Change | undefined {
  const { steps, shafts } = ground;
  for (const part of ["raise", "sink"] as const) {
    const moved = steps.map((step) => step[part]);
    const bare = moved.flatMap((set, step) => (set.length === 0 ? [step] : []));
    const tied = new Set(moved.flat());
    const [step] = bare;
    if (step === undefined || bare.length > 1 || steps.length !== shafts) continue;
    if (tied.size !== shafts - 1 || moved.some((set) => set.length > 1)) continue;
    const missing = Array.from({ length: shafts }, (_, i) => i + 1).find((shaft) => !tied.has(shaft))!;
    const { raise, sink } =
      part === "raise" ? { ...steps[step]!, raise: [missing] } : { ...steps[step]!, sink: [missing] };
    if (!raise.some((shaft) => sink.includes(shaft))) return { change: "tie", step: step + 1, raise, sink };
  }
  return undefined;
}
