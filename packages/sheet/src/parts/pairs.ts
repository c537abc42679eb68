import type { Table, Text } from "@drawcord/page";

/** A table of what there is and how much of it. */
export function pairs(id: string, caption: string, rows: readonly (readonly [string, Text])[]): Table {
  return {
    kind: "table",
    id,
    caption,
    columns: [{ title: "What", kind: "head" }, { title: "How much" }],
    rows: rows.map(([what, value]) => [what, value]),
    narrow: true,
  };
}
