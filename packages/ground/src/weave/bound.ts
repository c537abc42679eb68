import { type BitGrid, columnCounts, rowCounts } from "@drawcord/grid";
import { GroundError } from "../error.js";
import { drawdownOf, type Weave } from "./weave.js";

/**
 * The first end or pick of a repeat that never interlaces, counted from 1.
 * @example firstLooseThread(fromText("#.\n#.")) // { system: "end", number: 1 }
 */
export function firstLooseThread(drawdown: BitGrid): { system: "end" | "pick"; number: number } | undefined {
  const { rows, columns } = drawdown;
  const end = columnCounts(drawdown).findIndex((raised) => raised === 0 || raised === rows);
  if (end >= 0) return { system: "end", number: end + 1 };
  const pick = rowCounts(drawdown).findIndex((raised) => raised === 0 || raised === columns);
  return pick >= 0 ? { system: "pick", number: pick + 1 } : undefined;
}

/**
 * Hands a weave back when it binds every end and every pick.
 * @throws {GroundError} `unbound`
 */
export function boundWeave(weave: Weave, name: string): Weave {
  const loose = firstLooseThread(drawdownOf(weave));
  if (!loose) return weave;
  throw new GroundError(
    "unbound",
    `${name} never binds ${loose.system} ${loose.number} of its repeat; every end and every pick must go over and under`,
    loose,
  );
}
