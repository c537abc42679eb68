import { many } from "@drawcord/base";
import { UnitsError } from "./error.js";
import { changedRows, type LiftChange } from "./lift-change.js";
import type { ChangedBlock, WovenBlock } from "./woven-block.js";

/** A weaving order in which every block has its number of repeats. */
export interface FilledOrder {
  /** Its lines, the first woven first, each block with its repeats. */
  readonly order: readonly WovenBlock[];
  /** The rows that no whole repeat of the filling block had room in; 0 in an order that fills nothing. */
  readonly over: number;
}

/**
 * A weaving order with `*fill` worked out: the block as often, whole, as the piece has room for.
 * @param order what is woven, first to last
 * @param rowsOf the rows of a block by its name
 * @param rows the rows that the whole order is to come to; undefined where no length is known
 * @throws {UnitsError} `no-length` when a block fills and no length is known, `unknown-word` when more than one fills,
 * `bad-size` when there is no room for it once; each with the `entry` (from 1)
 * @example filledOrder([parseWovenBlock("moth *fill")], () => 4, 15).over // 3
 */
export function filledOrder(
  order: readonly WovenBlock[],
  rowsOf: (block: string) => number,
  rows: number | undefined,
): FilledOrder {
  const filling = order.flatMap((line, i) => (blocksOf(line).some(fills) ? [i] : []));
  const [entry] = filling;
  if (entry === undefined) return { order, over: 0 };
  const facts = { entry: entry + 1 };
  const line = order[entry]!;
  if (filling.length > 1 || blocksOf(line).filter(fills).length > 1) {
    throw new UnitsError("unknown-word", `"*fill" stands more than once; one block of a piece can fill it`, {
      entry: (filling[1] ?? entry) + 1,
    });
  }
  if (rows === undefined) {
    throw new UnitsError(
      "no-length",
      `"*fill" fills a piece to its length; the length of this one is not known`,
      facts,
    );
  }
  const others = order.reduce((sum, other, i) => (i === entry ? sum : sum + lengthOf(other, rowsOf)), 0);
  const filled = blocksOf(line).find(fills)!;
  const one = lengthOfBlock({ ...filled, changes: filled.changes.slice(0, -1) }, rowsOf);
  const { every } = filled.changes.at(-1) as LiftChange & { readonly change: "filled" };
  const other = every === undefined ? one : changedRows(one, every);
  const room = rows - others;
  const pairs = Math.max(0, Math.floor(room / (one + other)));
  const times = 2 * pairs + (room - pairs * (one + other) >= one ? 1 : 0);
  if (times === 0) {
    throw new UnitsError(
      "bad-size",
      `the piece has ${many(rows, "row")} and the other blocks take ${others}; "${filled.block}" takes ${one} and has no room`,
      { ...facts, rows, others, one },
    );
  }
  const change: LiftChange =
    every === undefined ? { change: "repeated", times } : { change: "alternating", times, every };
  const repeated = (block: ChangedBlock) =>
    fills(block) ? { ...block, changes: [...block.changes.slice(0, -1), change] } : block;
  const whole: WovenBlock = {
    ...line,
    ...repeated(line),
    ...(line.beside === undefined ? {} : { beside: line.beside.map(repeated) }),
  };
  const over = room - lengthOf(whole, rowsOf);
  return { order: order.map((one, i) => (i === entry ? whole : one)), over };
}

function blocksOf(line: WovenBlock): readonly ChangedBlock[] {
  return [line, ...(line.beside ?? [])];
}

function fills({ changes }: ChangedBlock): boolean {
  return changes.at(-1)?.change === "filled";
}

function lengthOf(line: WovenBlock, rowsOf: (block: string) => number): number {
  return Math.max(...blocksOf(line).map((block) => lengthOfBlock(block, rowsOf)));
}

function lengthOfBlock({ block, changes }: ChangedBlock, rowsOf: (block: string) => number): number {
  return changes.reduce(changedRows, rowsOf(block));
}
