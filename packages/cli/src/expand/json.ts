import { drawdownIn, type Reading, titleIn } from "@drawcord/files";
import type { BitGrid } from "@drawcord/grid";
import { expand } from "@drawcord/units";
import { pickLines } from "../drawing.js";
import { toJson } from "../printable.js";

/**
 * A cloth for a script, piece by piece. Ends and picks in their order, end 1 and pick 1 first; units, rows and steps,
 * which only a recipe has, are counted from 1, in each piece anew.
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
  const { pieces } = reading.recipe;
  const plans = pieces.map(({ draft, name }) => ({ name, ...expand(draft) }));
  let firstPick = 1;
  const stretches = plans.map(({ drawdown, name }) => {
    const piece = { name, firstPick, picks: drawdown.rows };
    firstPick += drawdown.rows;
    return piece;
  });
  return {
    drawdown: drawdownIn(reading),
    plan: {
      ...(pieces.length > 1 && { pieces: stretches }),
      unitOfEnd: Array.from(plans[0]!.unitOfEnd, (unit) => (unit < 0 ? null : unit + 1)),
      rowOfPick: plans.flatMap(({ rowOfPick }) => Array.from(rowOfPick, (row) => row + 1)),
      stepOfPick: plans.flatMap(({ stepOfPick }) => Array.from(stepOfPick, (step) => step + 1)),
    },
  };
}
