import type { Reading } from "@drawcord/files";
import type { BitGrid } from "@drawcord/grid";
import { expand } from "@drawcord/units";
import { pickLines } from "../drawing.js";
import { drawdownIn, titleIn } from "../plain/drawdown.js";
import { toJson } from "../printable.js";

/**
 * A cloth for a script, piece by piece. Ends and picks in their order, end 1 and pick 1 first; units, rows and steps,
 * which only a recipe has, are counted from 1.
 */
export function* expandedJson(reading: Reading, file: string): Iterable<string> {
  const { drawdown, plan } = worked(reading);
  const head = { file, title: titleIn(reading), ends: drawdown.columns, picks: drawdown.rows, ...plan };
  yield `${toJson(head).slice(0, -1)},"drawdown":[`;
  let comma = "";
  for (const line of pickLines(drawdown)) {
    yield `${comma}"${line}"`;
    comma = ",\n";
  }
  yield "]}\n";
}

function worked(reading: Reading): { readonly drawdown: BitGrid; readonly plan: object } {
  if (reading.kind !== "recipe") return { drawdown: drawdownIn(reading), plan: {} };
  const { drawdown, rowOfPick, stepOfPick, unitOfEnd } = expand(reading.recipe.draft);
  return {
    drawdown,
    plan: {
      unitOfEnd: Array.from(unitOfEnd, (unit) => (unit < 0 ? null : unit + 1)),
      rowOfPick: Array.from(rowOfPick, (row) => row + 1),
      stepOfPick: Array.from(stepOfPick, (step) => step + 1),
    },
  };
}
