import { calculate } from "../formula/calculate.js";
import type { Given } from "../formula/input.js";
import { toMetric } from "../quantity/convert.js";
import { printQuantity } from "../quantity/print.js";
import { quantity } from "../quantity/units.js";
import type { Plan, PlanPiece, Project, ProjectPiece } from "./types.js";

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
> & { readonly designs: readonly Design[] };

/** A design along the cloth; its wefts are worked out with the widths. */
export type Design = Omit<PlanPiece, "wefts"> & { readonly of: ProjectPiece };

/**
 * The designs of a project: those it names, or its own picks as the only one.
 */
function piecesOf({
  length,
  over,
  picks,
  pieces = 1,
  wefts = [],
  woven = [],
}: Project): readonly ProjectPiece[] {
  if (woven.length > 0) return woven;
  return [
    {
      name: "",
      count: pieces,
      picks,
      wefts,
      ...(over === undefined ? {} : { over }),
      ...(length === undefined ? {} : { length }),
    },
  ];
}

const onePiece: Given = { value: 1, unit: "pieces", kind: "number", assumed: "one piece" };

/** Picks, lengths and pieces of a project. */
export function planLength(project: Project): Length {
  const designs = piecesOf(project).map((piece) => planPiece(project, piece));
  const [first] = designs as [Design];
  const { clothLength, finishedLength, picks, warpOfPiece } = first;
  const warp = planWarp(project, designs);
  return {
    picks,
    ...(clothLength === undefined ? {} : { clothLength }),
    ...(finishedLength === undefined ? {} : { finishedLength }),
    ...(warpOfPiece === undefined ? {} : { warpOfPiece }),
    ...warp,
    missing: designs.every((design) => design.warpOfPiece !== undefined)
      ? []
      : ["lengths need the length of a piece, or the picks of the cloth"],
    notes: warp.notes,
  };
}

/** Picks and lengths of one design. */
function planPiece(project: Project, of: ProjectPiece): Design {
  const { hems, pickSett, shrinkage } = project;
  const s = shrinkage?.length;
  const assumed = project.woven === undefined && project.pieces === undefined;
  const known = {
    of,
    name: of.name,
    count: assumed ? onePiece : quantity(of.count, "pieces"),
    ...(of.rows === undefined ? {} : { rows: of.rows }),
    ...(of.over === undefined || of.over === 0 ? {} : { over: of.over }),
  };
  const clothLength =
    of.length !== undefined
      ? calculate("cloth-of-a-piece", { f: of.length, h: hems, s })
      : pickSett !== undefined && of.picks > 0
        ? calculate("length-of-picks", { p: of.picks, P: pickSett })
        : undefined;
  const drawn = quantity(of.picks, "picks");
  if (clothLength === undefined) return { ...known, picks: drawn };
  const finishedLength = of.length ?? calculate("finished-length", { c: clothLength, s, h: hems });
  return {
    ...known,
    picks:
      of.length !== undefined && pickSett !== undefined
        ? calculate("picks-in-length", { P: pickSett, c: clothLength })
        : drawn,
    clothLength,
    finishedLength,
    warpOfPiece: calculate("warp-of-a-piece", { c: clothLength, k: project.takeUp, r: project.fringe }),
  };
}

/** The warp for the pieces, or the pieces from the warp, and what is left. */
function planWarp(
  project: Project,
  designs: readonly Design[],
): Pick<Length, "warpLength" | "pieces" | "leftOver" | "notes" | "designs"> {
  const [only] = designs as [Design];
  const total = designs.reduce((sum, { count }) => sum + count.value, 0);
  const wanted: Given = designs.length === 1 ? only.count : quantity(total, "pieces");
  if (designs.some(({ warpOfPiece }) => warpOfPiece === undefined)) {
    return { pieces: wanted, notes: [], designs };
  }
  const allowances = { g: project.gaps, q: project.sampling, w: project.waste };
  const P_i = designs.map(({ count, warpOfPiece }) =>
    calculate("warp-of-like-pieces", { N: count, p: warpOfPiece! }),
  );
  const p = only.warpOfPiece!;
  const several = designs.length > 1;
  const need = several
    ? calculate("warp-of-designs", { P_i, N: wanted, ...allowances })
    : calculate("warp-length", { N: wanted, p, ...allowances });
  const { warpLength: wound } = project;
  const L = wound ?? need;
  const short = wound !== undefined && need.value > toMetric(wound).value * (1 + 1e-12);
  if (several) {
    const notes = short ? [shortOf(L, need, `${total} pieces take`)] : [];
    if (short) return { warpLength: L, pieces: wanted, notes, designs };
    const leftOver = calculate("warp-left-of-designs", { L, P_i, N: wanted, ...allowances });
    return {
      warpLength: L,
      pieces: wanted,
      leftOver,
      notes,
      designs: designs.map(withMore(project, leftOver)),
    };
  }
  const possible = wound === undefined ? wanted : calculate("pieces-of-warp", { L: wound, p, ...allowances });
  const pieces = wound === undefined || (project.pieces !== undefined && !short) ? wanted : possible;
  const leftOver = calculate("warp-left-over", { L, N: pieces, p, ...allowances });
  const notes =
    short && project.pieces !== undefined
      ? [`the warp of ${printQuantity(L)} gives ${printQuantity(possible)}; ${project.pieces} are wanted`]
      : [];
  return {
    warpLength: L,
    pieces,
    leftOver,
    notes,
    designs: [withMore(project, leftOver)({ ...only, count: pieces })],
  };
}

function shortOf(wound: Given, need: Given, lead: string): string {
  const meant = printQuantity(toMetric(need), { decimals: 0 });
  return `the warp of ${printQuantity(wound)} is too short: ${lead} ${meant}`;
}

/** How many more of a design the warp left over would give. */
function withMore({ gaps }: Project, leftOver: Given): (design: Design) => Design {
  return (design) => ({
    ...design,
    more: calculate("more-pieces", { o: leftOver, p: design.warpOfPiece!, g: gaps }),
  });
}
