import { type BitGrid, onesIn, rowCounts, transpose } from "@drawcord/grid";
import type { Expansion, UnitDraft } from "@drawcord/units";
import type { Cloth, Figure, Plan, System } from "../cloth.js";
import type { CheckOptions } from "../options.js";
import { acrossCuts, sideCuts } from "./borders.js";
import { inferDrawn } from "./infer.js";
import { integrityOf } from "./integrity.js";
import { type Kinds, kindsOf } from "./kinds.js";
import { patchesOf } from "./patches.js";
import { shaftUses } from "./shafts.js";
import { draftSquares, drawnUnits, plainSquares } from "./squares.js";
import { measureThreads } from "./threads.js";

/** Measures the cloth of a draft that was worked out to every end and pick. */
export function measureDraft(draft: UnitDraft, expansion: Expansion, options: CheckOptions): Cloth {
  const { drawdown, drawn, unitOfEnd, rowOfPick, stepOfPick } = expansion;
  const plan: Plan = { draft, unitOfEnd, rowOfPick, stepOfPick, shafts: shaftUses(draft) };
  const systems = measureSystems(drawdown, options);
  return {
    options,
    ...systems,
    ...sortWefts(draft, stepOfPick),
    squares: draftSquares(plan),
    plan,
    figure: measureFigure(systems.weft, systems.warp.joined, drawn, drawnUnits(drawn, plan)),
    integrity: integrityOf(systems.weft.raised, systems.warp.raised),
  };
}

/** Measures a drawdown of which nothing else is known. */
export function measurePlain(drawdown: BitGrid, options: CheckOptions): Cloth {
  const systems = measureSystems(drawdown, options);
  const { drawn, sureness } = inferDrawn(drawdown);
  return {
    options,
    ...systems,
    wefts: [""],
    weftOfPick: new Int32Array(drawdown.rows),
    squares: plainSquares(drawdown),
    ...(drawn && { figure: measureFigure(systems.weft, systems.warp.joined, drawn, drawn) }),
    sureness,
    integrity: integrityOf(systems.weft.raised, systems.warp.raised),
  };
}

function measureSystems(
  drawdown: BitGrid,
  { repeat = "none" }: CheckOptions,
): { warp: System; weft: System } {
  return {
    warp: measureSystem(transpose(drawdown), repeat === "picks" || repeat === "both"),
    weft: measureSystem(drawdown, repeat === "ends" || repeat === "both"),
  };
}

function measureSystem(grid: BitGrid, joined: boolean): System {
  const kinds = kindsOf(grid);
  return { grid, kinds, joined, threads: measureThreads(grid, kinds, joined), raised: rowCounts(grid) };
}

function measureFigure(weft: System, picksJoined: boolean, drawn: BitGrid, units: BitGrid): Figure {
  const kinds = kindsOf(drawn);
  return {
    drawn,
    kinds,
    share: shareOf(drawn, kinds),
    squares: units,
    areas: patchesOf(units, { columns: weft.joined, rows: picksJoined }),
    side: sideCuts(weft.grid, drawn, kinds, weft.joined),
    across: acrossCuts(weft.grid, drawn, kinds, picksJoined),
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

/** The share of 1 bits; 0 where there are no bits at all. */
function shareOf(grid: BitGrid, { first, times }: Kinds): number {
  let ones = 0;
  first.forEach((row, kind) => {
    let inRow = 0;
    for (let i = row * grid.stride; i < (row + 1) * grid.stride; i++) inRow += onesIn(grid.words[i]!);
    ones += inRow * times[kind]!;
  });
  return ones === 0 ? 0 : ones / (grid.rows * grid.columns);
}
