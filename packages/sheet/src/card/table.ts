import type { Table } from "@drawcord/page";

/**
 * How every lift card looks: it grows upwards as the cloth does, and its numbers are ticked.
 * @param what a number of it is
 */
export function cardTable(
  what: string,
): Pick<Table, "kind" | "id" | "caption" | "narrow" | "large" | "rising" | "band"> {
  return {
    kind: "table",
    id: "lift-card",
    caption: `The lift card, read upwards: each number is a ${what} with its box to tick.`,
    narrow: true,
    large: true,
    rising: true,
    band: 5,
  };
}
