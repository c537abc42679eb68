import type { Project } from "./types.js";

/** Of two things that say the same, the one that the plan goes by: a clause each, where a project says both. */
export function goesBy(project: Project): string[] {
  const { length, picks, pieces, pickSett, reed, sett, sley, warpLength, width, woven = [] } = project;
  const lengths = length !== undefined || woven.some((piece) => piece.length !== undefined);
  return [
    ...(reed !== undefined && sley !== undefined && sett !== undefined
      ? ["widths and yarn go by the sley, not by the sett that is given too"]
      : []),
    ...(width !== undefined && sett !== undefined
      ? ["widths and yarn go by the ends that are threaded, and not by the width beside them"]
      : []),
    ...(lengths && pickSett !== undefined && picks > 0
      ? ["lengths and yarn go by the length of a piece, not by the rows that are given too"]
      : []),
    ...(warpLength !== undefined && pieces !== undefined
      ? ["yarn goes by the warp that is wound, not by the pieces that are given too"]
      : []),
  ];
}
