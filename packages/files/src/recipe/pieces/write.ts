/** The pieces and the colours of a recipe as they are written. */
import { printLifts, printShafts, type UnitDraft } from "@drawcord/units";
import { printQuantity } from "@drawcord/yarn";
import type { RecipePiece } from "../types.js";
import { printYarnOrder } from "./yarn-order.js";

/** How a writer of recipes writes numbers and limits. */
export interface PieceWords {
  readonly counts: (numbers: number | readonly number[]) => unknown;
  readonly limits: (limits: RecipePiece["limits"]) => unknown;
}

/** Whether what is woven stands in a section `pieces`. */
export function standsInPieces(pieces: readonly RecipePiece[]): boolean {
  return pieces.some(({ path }) => path.length > 0);
}

/** The section `pieces`: every piece with its lifts as rows. */
export function piecesText(pieces: readonly RecipePiece[], { counts, limits }: PieceWords): unknown {
  return pieces.map((piece) => ({
    name: piece.name,
    count: piece.count,
    length: piece.length && printQuantity(piece.length),
    ...weftsText(piece),
    ground: {
      steps: piece.draft.ground.steps.map(({ raise, sink, weft }) => ({
        raise: printShafts(raise),
        sink: printShafts(sink),
        weft,
      })),
    },
    lifts: { picks: counts(piece.draft.picksPerRow), rows: printLifts(piece.draft.lifts) },
    limits: limits(piece.limits),
  }));
}

/** The keys `weft` and `wefts` of a piece: the yarns of the picks of each weft, where they are not of its name. */
export function weftsText({ draft, wefts }: Pick<RecipePiece, "wefts"> & { readonly draft: UnitDraft }): {
  readonly weft?: string;
  readonly wefts?: Readonly<Record<string, string>>;
} {
  const { steps } = draft.ground;
  const orders = new Map<string, string[]>();
  const picks = wefts.length * steps.length;
  for (let pick = 0; pick < (wefts.length % steps.length === 0 ? wefts.length : picks); pick++) {
    const weft = steps[pick % steps.length]!.weft ?? "weft";
    const order = orders.get(weft) ?? [];
    orders.set(weft, order);
    order.push(wefts[pick % wefts.length]!);
  }
  const told = [...orders].flatMap(([weft, order]) =>
    order.every((yarn) => yarn === weft) ? [] : [[weft, printYarnOrder(order)] as const],
  );
  const weft = told.find(([name]) => name === "weft")?.[1];
  const others = told.filter(([name]) => name !== "weft");
  return {
    ...(weft === undefined ? {} : { weft }),
    ...(others.length === 0 ? {} : { wefts: Object.fromEntries(others) }),
  };
}
