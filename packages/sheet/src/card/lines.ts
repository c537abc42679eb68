import { type CardRow, cardKey } from "./rows.js";
import type { CardSection } from "./sections.js";

/** Times that stand side by side on a line of the card; more are on lines further on. */
const TIMES_A_LINE = 6;

/** A line of the card: rows that are woven alike, and the changes that lead to the first of them. */
interface CardLine {
  /** The rows in weaving order, a box each; none where a time is on another line. */
  readonly rows: readonly (number | undefined)[];
  readonly what: CardRow;
}

/** Lines under one heading. */
export interface CardGroup {
  readonly section: CardSection;
  /** First and last of the times that are woven here, from 1. */
  readonly from: number;
  readonly to: number;
  readonly lines: readonly CardLine[];
}

/** The lines of a card, heading by heading, in weaving order. */
export function cardGroups(rows: readonly CardRow[], sections: readonly CardSection[]): CardGroup[] {
  return sections.flatMap((section): CardGroup[] => {
    const { start, end, times } = section;
    if (times === 1) return [{ section, from: 1, to: 1, lines: merged(rows.slice(start, end)) }];
    const groups: CardGroup[] = [];
    for (let from = 0; from < times; from += TIMES_A_LINE) {
      const to = Math.min(times, from + TIMES_A_LINE);
      groups.push({ section, from: from + 1, to, lines: timesOf(rows, section, from, to) });
    }
    return groups;
  });
}

/** Rows that follow one another without a change of handles, as one line. */
function merged(rows: readonly CardRow[]): CardLine[] {
  const lines: { rows: number[]; what: CardRow }[] = [];
  for (const row of rows) {
    const last = lines.at(-1);
    const still = row.pulled.length + row.released.length === 0;
    if (last !== undefined && still && cardKey(last.what) === cardKey(row)) last.rows.push(row.row);
    else lines.push({ rows: [row.row], what: row });
  }
  return lines;
}

/** The rows of a section that is woven again and again; where the first time begins otherwise, it has a line of its own. */
function timesOf(
  rows: readonly CardRow[],
  { start, end }: CardSection,
  from: number,
  to: number,
): CardLine[] {
  const period = end - start;
  return Array.from({ length: period }, (_, i) => i).flatMap((i) => {
    const lines: { rows: (number | undefined)[]; what: CardRow }[] = [];
    for (let time = from; time < to; time++) {
      const row = rows[start + i + time * period]!;
      const last = lines.at(-1);
      if (last !== undefined && changes(last.what) === changes(row)) last.rows.push(row.row);
      else lines.push({ rows: [...new Array<undefined>(time - from), row.row], what: row });
    }
    return lines;
  });
}

function changes({ pulled, released }: CardRow): string {
  return `${pulled.join(" ")}|${released.join(" ")}`;
}
