import { commonDivisor } from "../arithmetic.js";
import type { Ground } from "../types.js";
import type { FigureSize, GroundCut } from "./cut.js";

/** What there is to say of a plan: what its name does not tell, and why a border lies open. */
export function reasonsOf(ground: Ground, cut: GroundCut, size: FigureSize, warpFaced: boolean): string[] {
  const { steps } = ground;
  const covered = steps.filter(({ raise, sink }) => raise.length + sink.length === ground.shafts).length;
  if (covered === steps.length) {
    return ["every pick raises or sinks every shaft, so no figure can show; add a pattern weft to show one"];
  }
  if (covered > 0) {
    return ["no figure can show on the ground's own picks; it shows on the picks of the pattern weft alone"];
  }
  const faces =
    "drawing can only raise ends, so drawn units weave this warp-faced weave and undrawn units its weft-faced counterpart";
  return [...(warpFaced ? [faces] : []), ...whyOpen(ground, cut, size)];
}

/** Why each kind of border that lies open does. */
function whyOpen(ground: Ground, { sideways, lengthways }: GroundCut, size: FigureSize): string[] {
  const { threading, steps } = ground;
  const unit = size.unitEnds ?? threading.length;
  const row = size.picksPerRow ?? steps.length;
  const partUnits = sideways.open > 0 && unit % threading.length !== 0;
  const partRows = lengthways.open > 0 && row % steps.length !== 0;
  const reasons: string[] = [];
  if (partUnits) {
    reasons.push(
      `a unit of ${unit} ends is no multiple of the ${threading.length} ends of the repeat, so units end at ${threading.length / commonDivisor(unit, threading.length)} places of it`,
    );
  }
  if (partRows) {
    reasons.push(
      `a row of ${row} picks is no multiple of the ${steps.length} picks of the repeat, so rows end at ${steps.length / commonDivisor(row, steps.length)} places of it`,
    );
  }
  const unexplained = (sideways.open > 0 && !partUnits) || (lengthways.open > 0 && !partRows);
  if (unexplained) reasons.push(whyNotClean(ground));
  return reasons;
}

function whyNotClean(ground: Ground): string {
  const { shafts, steps } = ground;
  const counted = steps.every(({ raise, sink }) => raise.length === 1 && sink.length === 1);
  return counted && shafts % 2 === 1
    ? `on ${shafts} ends the mirrored pair would raise and sink shaft ${(shafts + 1) / 2} on one pick, so two regular orders never cut clean all round`
    : "no start of either weave lets all their bindings fall against each other at the borders";
}
