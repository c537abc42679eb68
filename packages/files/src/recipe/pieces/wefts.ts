/** The yarns of the picks: by piece, by block, and by an order over the picks. */
import type { UnitDraft, WovenBlock } from "@drawcord/units";
import { wovenRows } from "@drawcord/units";
import { attempt } from "../../tree/problems.js";
import { at, entries, type Spot } from "../../tree/spot.js";
import { type KnownYarns, readYarnOrder } from "./yarn-order.js";

/** Yarns in their order over the picks of each weft, by the weft's name in the ground's steps; `weft` is the ground weft. */
export type WeftOrders = ReadonlyMap<string, readonly string[]>;

/**
 * The keys `weft` and `wefts` of a piece, a block or the section `colours`. An order that cannot be read is told and left
 * out.
 * @param known the yarns that there are
 */
export function readWeftOrders(section: Spot | undefined, known: KnownYarns): WeftOrders {
  const weft = section && at(section, "weft");
  const others = section && at(section, "wefts");
  const named = [
    ...(weft === undefined ? [] : [["weft", weft] as const]),
    ...(others === undefined ? [] : entries(others)),
  ];
  return new Map(
    named.flatMap(([name, of]) => {
      const order = attempt(of.tree.problems, () => readYarnOrder(of, known));
      return order === undefined ? [] : [[name, order] as const];
    }),
  );
}

/** What decides the yarn of a pick, the nearest first. */
export interface WeftChoice {
  /** By the name of a block, for the picks of its rows; the order begins with each line of the weaving order. */
  readonly ofBlocks: ReadonlyMap<string, WeftOrders>;
  /** Of the piece, then of the recipe; these orders begin with the piece. */
  readonly ofPiece: readonly WeftOrders[];
}

/**
 * The yarn of each pick by its name, pick 1 first; it repeats over the picks. Where nothing is said of a weft, its yarn has
 * the weft's own name.
 */
export function yarnsOfPicks(
  { ground, lifts, picksPerRow }: UnitDraft,
  order: readonly WovenBlock[] | undefined,
  rowsOf: (block: string) => number,
  { ofBlocks, ofPiece }: WeftChoice,
): readonly string[] {
  const own = ground.steps.map(({ weft = "weft" }) => weft);
  const orders = [...ofBlocks.values(), ...ofPiece];
  if (orders.every(({ size }) => size === 0)) return own;
  const rows = order === undefined ? undefined : wovenRows(order, rowsOf);
  const yarns: string[] = [];
  const thrown = new Map<string, number>();
  let thrownInLine = new Map<string, number>();
  let line = -1;
  for (let row = 0; row < lifts.length; row++) {
    const woven = rows?.[row];
    if (woven !== undefined && woven.entry !== line) {
      line = woven.entry;
      thrownInLine = new Map();
    }
    const blockOrders = woven?.blocks.flatMap(({ block }) => ofBlocks.get(block) ?? []) ?? [];
    const picks = typeof picksPerRow === "number" ? picksPerRow : picksPerRow[row]!;
    for (let i = 0; i < picks; i++) {
      const weft = own[yarns.length % own.length]!;
      const inPiece = thrown.get(weft) ?? 0;
      const inLine = thrownInLine.get(weft) ?? 0;
      thrown.set(weft, inPiece + 1);
      thrownInLine.set(weft, inLine + 1);
      const ofBlock = blockOrders.map((one) => one.get(weft)).find((one) => one !== undefined);
      const ofAll = ofPiece.map((one) => one.get(weft)).find((one) => one !== undefined);
      yarns.push(ofBlock?.[inLine % ofBlock.length] ?? ofAll?.[inPiece % ofAll.length] ?? weft);
    }
  }
  return yarns;
}
