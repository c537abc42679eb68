import type { WovenBlock } from "./woven-block.js";

/**
 * The lines of a weaving order by whose repeats a piece is made longer or shorter: blocks that are repeated and stand in one
 * place alone. A border that comes once, or a hem at both ends, stays as it is where there is such a block; where there is
 * none, what is repeated at all, or stands alone, is the body.
 * @param order what is woven, first to last
 * @returns positions in the order, from 0; none of an order in which every block comes in several places, once in each
 * @example bodyLines(["hem*2", "moth*4", "hem*2"].map(parseWovenBlock)) // [1]
 */
export function bodyLines(order: readonly WovenBlock[]): readonly number[] {
  const isAlone = (line: number) => order.filter(({ block }) => block === order[line]!.block).length === 1;
  const isRepeated = (line: number) =>
    [order[line]!, ...(order[line]!.beside ?? [])].some(({ changes }) =>
      changes.some((change) => "times" in change && change.times > 1),
    );
  const lines = order.map((_, line) => line);
  const found = [(line: number) => isAlone(line) && isRepeated(line), isRepeated, isAlone].map((may) =>
    lines.filter(may),
  );
  return found.find(({ length }) => length > 0) ?? [];
}
