import { BETWEEN_PICTURES } from "./room.js";

/** Room between pictures that stand one above the other, in mm. */
export const BETWEEN_STACKED = 5;

/** What takes this much room, in mm. */
interface Sized {
  readonly width: number;
  readonly height: number;
}

/** Pictures one above the other. */
export interface Pile<Item extends Sized> extends Sized {
  readonly items: readonly Item[];
}

/**
 * Pictures in rows of piles, in order: side by side as far as they fit, low ones piled up beside a tall one.
 * @param room that a row may take, in mm
 */
export function pilesOf<Item extends Sized>(items: readonly Item[], room: number): Pile<Item>[][] {
  const rows: Pile<Item>[][] = [];
  for (const item of items) {
    const { width, height } = item;
    const row = rows.at(-1) ?? [];
    const last = row.at(-1);
    const used = row.reduce((sum, pile) => sum + pile.width + BETWEEN_PICTURES, 0);
    const tallest = Math.max(0, ...row.map((pile) => pile.height));
    const piled = last === undefined ? height : last.height + BETWEEN_STACKED + height;
    if (last !== undefined && width <= last.width + 1e-6 && piled <= tallest + 1e-6) {
      row[row.length - 1] = { ...last, height: piled, items: [...last.items, item] };
    } else {
      const pile = { width, height, items: [item] };
      if (row.length > 0 && used + width <= room + 1e-6) row.push(pile);
      else rows.push([pile]);
    }
  }
  return rows;
}
