import type { Change, UnitDraft } from "@drawcord/units";

/**
 * The ties that would set a counted weave right. In a counted weave every step raises (or sinks) one shaft, and each
 * shaft comes equally often; where a single step keeps it from being one, because a tie is missing, one too many, or on
 * the wrong shaft, that step is tied anew.
 */
export function slippedTies({ ground }: UnitDraft): Change[] {
  const { steps, shafts } = ground;
  return (["raise", "sink"] as const).flatMap((part) => {
    const moved = steps.map((step) => step[part]);
    if (isCounted(moved, shafts)) return [];
    return moved.flatMap((_, step) =>
      Array.from({ length: shafts }, (_, i) => i + 1).flatMap((shaft): Change[] => {
        if (!isCounted(moved.with(step, [shaft]), shafts)) return [];
        const raise = part === "raise" ? [shaft] : steps[step]!.raise;
        const sink = part === "sink" ? [shaft] : steps[step]!.sink;
        return raise.some((one) => sink.includes(one))
          ? []
          : [{ change: "tie", step: step + 1, raise, sink }];
      }),
    );
  });
}

/** Whether every step moves one shaft, and each shaft is moved equally often. */
function isCounted(moved: readonly (readonly number[])[], shafts: number): boolean {
  const times = new Int32Array(shafts + 1);
  for (const [shaft, another] of moved) {
    if (shaft === undefined || another !== undefined) return false;
    times[shaft]!++;
  }
  return times.every((count, shaft) => shaft === 0 || count * shafts === moved.length);
}
