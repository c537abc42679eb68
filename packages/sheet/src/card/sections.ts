import type { PieceBlock } from "@drawcord/files";
import { type RowSection, sectionsOf } from "../sections.js";

/** Rows under one heading of the card. */
export interface CardSection extends RowSection {
  readonly name?: string;
}

/** A block that saves fewer rows than this is quicker woven row by row than looked up. */
const LEAST_SAVED = 10;

/**
 * The plan as a weaver follows it: block by block where the recipe has blocks, each with its times; else what repeats, as
 * often as it does. Rows stand once for all times only where they are woven alike each time.
 * @param keys one a row; rows with equal keys are woven alike
 */
export function cardSections(keys: readonly string[], blocks: readonly PieceBlock[] = []): CardSection[] {
  if (blocks.length === 0) return sectionsOf(keys);
  return blocks.flatMap(({ name, start, end, times }): CardSection[] => {
    const period = (end - start) / times;
    const saved = period * (times - 1) >= LEAST_SAVED && repeats(keys, start, end, period);
    if (saved) return [{ name, start, end: start + period, times }];
    return sectionsOf(keys.slice(start, end)).map((section) => ({
      ...section,
      name,
      start: section.start + start,
      end: section.end + start,
    }));
  });
}

function repeats(keys: readonly string[], start: number, end: number, period: number): boolean {
  for (let row = start + period; row < end; row++) if (keys[row] !== keys[row - period]) return false;
  return true;
}
