import { calculate } from "../formula/calculate.js";
import type { Given } from "../formula/input.js";
import { quantity } from "../quantity/units.js";
import { writeQuantity } from "../quantity/write.js";
import type { Plan, Project } from "./types.js";

/** The part of a plan that lies along the cloth. */
type Length = Pick<
  Plan,
  | "picks"
  | "clothLength"
  | "finishedLength"
  | "warpOfPiece"
  | "warpLength"
  | "pieces"
  | "leftOver"
  | "missing"
  | "notes"
>;

/** Picks, lengths and pieces of a project. */
export function planLength(project: Project): Length {
  const { length, hems, pickSett, picks: draftPicks, shrinkage } = project;
  const s = shrinkage?.length;
  const drawn = quantity(draftPicks, "picks");
  const wanted: Given = project.pieces === undefined ? onePiece : quantity(project.pieces, "pieces");
  const clothLength =
    length !== undefined
      ? calculate("cloth-of-a-piece", { f: length, h: hems, s })
      : pickSett !== undefined && draftPicks > 0
        ? calculate("length-of-picks", { p: draftPicks, P: pickSett })
        : undefined;
  if (clothLength === undefined) {
    return {
      picks: drawn,
      pieces: wanted,
      missing: ["lengths need the length of a piece, or the picks of the cloth"],
      notes: [],
    };
  }
  const picks =
    length !== undefined && pickSett !== undefined
      ? calculate("picks-in-length", { P: pickSett, c: clothLength })
      : drawn;
  const finishedLength = length ?? calculate("finished-length", { c: clothLength, s, h: hems });
  const warpOfPiece = calculate("warp-of-a-piece", { c: clothLength, k: project.takeUp, r: project.fringe });
  return {
    picks,
    clothLength,
    finishedLength,
    warpOfPiece,
    ...planWarp(project, warpOfPiece, wanted),
    missing: [],
  };
}

const onePiece: Given = { value: 1, unit: "pieces", kind: "number", assumed: "one piece" };

/** The warp for the pieces, or the pieces from the warp. */
function planWarp(
  project: Project,
  p: Given,
  wanted: Given,
): Pick<Length, "warpLength" | "pieces" | "leftOver" | "notes"> {
  const allowances = { g: project.gaps, q: project.sampling, w: project.waste };
  const { warpLength: wound } = project;
  if (wound === undefined) {
    const L = calculate("warp-length", { N: wanted, p, ...allowances });
    return {
      warpLength: L,
      pieces: wanted,
      leftOver: calculate("warp-left-over", { L, N: wanted, p, ...allowances }),
      notes: [],
    };
  }
  const possible = calculate("pieces-of-warp", { L: wound, p, ...allowances });
  const short = project.pieces !== undefined && possible.value < project.pieces;
  const pieces = project.pieces === undefined || short ? possible : wanted;
  const notes = short
    ? [`the warp of ${writeQuantity(wound)} gives ${writeQuantity(possible)}; ${project.pieces} are wanted`]
    : [];
  return {
    warpLength: wound,
    pieces,
    leftOver: calculate("warp-left-over", { L: wound, N: pieces, p, ...allowances }),
    notes,
  };
}
