/** The yarns of the picks: by piece, by block, and by an order over the picks. */
import type { YarnOrder } from "@drawcord/check";
import { type SizedDraft, type WovenBlock, wovenRows } from "@drawcord/units";
import { attempt } from "../../tree/problems.js";
import { at, entries, type Path, type Spot } from "../../tree/spot.js";
import { type KnownYarns, readYarnOrder } from "./yarn-order.js";

/** Yarns in their order over picks, and where that is written. */
interface WrittenOrder {
  readonly yarns: readonly string[];
  readonly path: Path;
}

/** The orders over the picks of each weft, by the weft's name in the ground's steps; `weft` is the ground weft. */
export type WeftOrders = ReadonlyMap<string, WrittenOrder>;

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
      const yarns = attempt(of.tree.problems, () => readYarnOrder(of, known));
      return yarns === undefined ? [] : [[name, { yarns, path: of.path }] as const];
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

/** The yarns of the picks, and the orders that they follow. */
export interface ThrownYarns {
  /** The yarn of each pick by its name, pick 1 first; it repeats over the picks. */
  readonly wefts: readonly string[];
  /** Each order with the picks that it lies over, from where it begins. */
  readonly yarnOrders: readonly YarnOrder[];
}

/** The yarn of each pick. Where nothing is said of a weft, its yarn has the weft's own name. */
export function yarnsOfPicks(
  { ground, lifts, picksPerRow }: SizedDraft,
  order: readonly WovenBlock[] | undefined,
  rowsOf: (block: string) => number,
  { ofBlocks, ofPiece }: WeftChoice,
): ThrownYarns {
  const own = ground.steps.map(({ weft = "weft" }) => weft);
  const orders = [...ofBlocks.values(), ...ofPiece];
  if (orders.every(({ size }) => size === 0)) return { wefts: own, yarnOrders: [] };
  const rows = order === undefined ? undefined : wovenRows(order, rowsOf);
  const yarns: string[] = [];
  const thrown = new Map<string, number>();
  let thrownInLine = new Map<string, number>();
  let line = -1;
  const stretches: Stretch[] = [];
  const ofWhole = new Map<WrittenOrder, Stretch>();
  let ofLine = new Map<WrittenOrder, Stretch>();
  const follows = (order: WrittenOrder, before: number, block?: string) => {
    const known = block === undefined ? ofWhole : ofLine;
    const stretch = known.get(order) ?? { order, threads: 0, block };
    if (stretch.threads === 0) {
      known.set(order, stretch);
      stretches.push(stretch);
    }
    stretch.threads = before + 1;
    return order.yarns[before % order.yarns.length]!;
  };
  for (let row = 0; row < lifts.length; row++) {
    const woven = rows?.[row];
    if (woven !== undefined && woven.entry !== line) {
      line = woven.entry;
      thrownInLine = new Map();
      ofLine = new Map();
    }
    const blockOrders =
      woven?.blocks.flatMap(({ block }) => {
        const orders = ofBlocks.get(block);
        return orders === undefined ? [] : [{ block, orders }];
      }) ?? [];
    const picks = picksPerRow[row]!;
    for (let i = 0; i < picks; i++) {
      const weft = own[yarns.length % own.length]!;
      const inPiece = thrown.get(weft) ?? 0;
      const inLine = thrownInLine.get(weft) ?? 0;
      thrown.set(weft, inPiece + 1);
      thrownInLine.set(weft, inLine + 1);
      const ofBlock = blockOrders.find(({ orders: one }) => one.has(weft));
      const ofAll = ofPiece.find((one) => one.has(weft));
      yarns.push(
        ofBlock !== undefined
          ? follows(ofBlock.orders.get(weft)!, inLine, ofBlock.block)
          : ofAll !== undefined
            ? follows(ofAll.get(weft)!, inPiece)
            : weft,
      );
    }
  }
  return { wefts: yarns, yarnOrders: alike(stretches) };
}

/** An order, and the picks that it lies over from where it begins. */
interface Stretch {
  readonly order: WrittenOrder;
  readonly block: string | undefined;
  threads: number;
}

/** Orders over as many picks each once, however many lines of the weaving order follow them. */
function alike(stretches: readonly Stretch[]): readonly YarnOrder[] {
  const known = new Map(stretches.map((one) => [JSON.stringify([one.order.path, one.threads]), one]));
  return [...known.values()].map(({ block, order, threads }) => ({
    system: "weft",
    ...order,
    threads,
    ...(block !== undefined && { block }),
  }));
}
