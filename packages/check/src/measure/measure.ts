import { type BitGrid, rowCounts, transpose } from "@drawcord/grid";
import { type Expansion, expandEnds, shaftUses, type UnitDraft } from "@drawcord/units";
import type { Cloth, Figure, System, UnitLayout } from "../cloth.js";
import type { OptionsOf } from "../options.js";
import { acrossCuts, sideCuts } from "./borders.js";
import { draftEnds, draftPicks } from "./draft-threads.js";
import { inferDrawn } from "./infer.js";
import { integrityOf } from "./integrity.js";
import { kindsOf } from "./kinds.js";
import { patchesOf } from "./patches.js";
import { shuttlesOf } from "./shuttles.js";
import { draftSquares, plainSquares } from "./squares.js";
import { type DraftThreads, measureStretches, type Stretches } from "./stretches.js";
import { measureThreads } from "./threads.js";

/**
 * Measures the cloth of a draft that was worked out to every end and pick.
 * @param draft a draft as `checkDraft` passes it
 * @param expansion what `expand` gave for it
 * @param options sett, limits and the rest that the check is asked with
 * @example measureDraft(draft, expand(draft), {}).warp.count // 4
 */
export function measureDraft(draft: UnitDraft, expansion: Expansion, options: OptionsOf): Cloth {
  const { drawdown, drawn, squares, unitOfEnd, rowOfPick, stepOfPick } = expansion;
  const shafts = new Map(shaftUses(draft).map((use) => [use.shaft, use]));
  const layout: UnitLayout = { draft, unitOfEnd, rowOfPick, stepOfPick, shafts };
  const joins = joinsOf(options);
  const sorted = sortWefts(draft, stepOfPick);
  const figure = squaresOf(squares, joins);
  const picks = draftPicks(layout, expansion, figure, joins.columns);
  const ends = draftEnds(layout, expansion, figure, joins.rows);
  const alongPicks = measureStretches(picks);
  const alongEnds = measureStretches(ends);
  const weft = systemOf(() => drawdown, picks, alongPicks);
  const warp = systemOf(() => expandEnds(draft, expansion), ends, alongEnds);
  return {
    options,
    weft,
    warp,
    ...sorted,
    ...shuttlesOf(sorted, options),
    squares: draftSquares(layout),
    layout,
    figure: {
      ...figure,
      drawn,
      share: shareOf(alongPicks.drawn, drawn.rows * unitOfEnd.filter((unit) => unit >= 0).length),
      side: alongPicks.cuts,
      across: alongEnds.cuts,
    },
    integrity: integrityOf(weft.raised, warp.raised),
  };
}

/** Measures a drawdown of which nothing else is known. */
export function measurePlain(drawdown: BitGrid, options: OptionsOf): Cloth {
  const joins = joinsOf(options);
  const weft = measureSystem(drawdown, joins.columns);
  const warp = measureSystem(transpose(drawdown), joins.rows);
  const { drawn, ...inferred } = inferDrawn(drawdown);
  const onlyWeft = { wefts: [""], weftOfPick: new Int32Array(drawdown.rows) };
  const figure: Figure | undefined = drawn && {
    ...squaresOf(drawn, joins),
    drawn,
    share: shareOf(
      rowCounts(drawn).reduce((sum, one) => sum + one, 0),
      drawn.rows * drawn.columns,
    ),
    side: sideCuts(drawdown, drawn, joins.columns),
    across: acrossCuts(drawdown, drawn, joins.rows),
  };
  return {
    options,
    weft,
    warp,
    ...onlyWeft,
    ...shuttlesOf(onlyWeft, options),
    squares: plainSquares(drawdown),
    ...(figure && { figure }),
    inferred,
    integrity: integrityOf(weft.raised, warp.raised),
  };
}

/** Whether the rows of a cloth, and its columns, go on in a repeat. */
function joinsOf({ repeat = "none" }: OptionsOf): { readonly rows: boolean; readonly columns: boolean } {
  return { rows: repeat === "picks" || repeat === "both", columns: repeat === "ends" || repeat === "both" };
}

/** A system whose threads are worked out one by one only when a rule looks at them. */
function systemOf(
  workOut: () => BitGrid,
  { length, joined, kinds }: DraftThreads,
  { threads, raised }: Stretches,
): System {
  let grid: BitGrid | undefined;
  return {
    get grid() {
      grid ??= workOut();
      return grid;
    },
    count: kinds.kindOf.length,
    length,
    joined,
    kinds,
    threads,
    raised: Uint32Array.from(kinds.kindOf, (kind) => raised[kind]!),
  };
}

function measureSystem(grid: BitGrid, joined: boolean): System {
  const kinds = kindsOf(grid);
  return {
    grid,
    count: grid.rows,
    length: grid.columns,
    joined,
    kinds,
    threads: measureThreads(grid, kinds, joined),
    raised: rowCounts(grid),
  };
}

/** The squares of a figure, and what follows from them alone. */
function squaresOf(
  squares: BitGrid,
  joins: { readonly rows: boolean; readonly columns: boolean },
): Pick<Figure, "squares" | "columns" | "rowKinds" | "columnKinds" | "areas"> {
  const columns = transpose(squares);
  return {
    squares,
    columns,
    rowKinds: kindsOf(squares),
    columnKinds: kindsOf(columns),
    areas: patchesOf(squares, joins),
  };
}

function sortWefts(draft: UnitDraft, stepOfPick: Int32Array): { wefts: string[]; weftOfPick: Int32Array } {
  const wefts = [""];
  const weftOfStep = draft.ground.steps.map(({ weft = "" }) => {
    if (!wefts.includes(weft)) wefts.push(weft);
    return wefts.indexOf(weft);
  });
  return { wefts, weftOfPick: stepOfPick.map((step) => weftOfStep[step]!) };
}

/** The share that some interlacements are of all that could be so; 0 where there are none at all. */
function shareOf(some: number, all: number): number {
  return some === 0 ? 0 : some / all;
}
