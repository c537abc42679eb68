import { changedRows } from "@drawcord/units";
import type { WovenOrder } from "../put-together.js";
import type { Span } from "../report.js";

/** The rows that each line of a weaving order comes to, from 1. */
export function spansOfLines({ order, blocks }: WovenOrder): readonly Span[] {
  let before = 0;
  return order.map((line): Span => {
    const parts = [line, ...(line.beside ?? [])];
    const rows = Math.max(
      ...parts.map(({ block, changes }) => changes.reduce(changedRows, blocks[block]?.length ?? 0)),
    );
    const first = before + 1;
    before += rows;
    return [first, before];
  });
}
