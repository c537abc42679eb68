import { drawdownOf, type Reading } from "@drawcord/files";
import type { BitGrid } from "@drawcord/grid";
import { expand } from "@drawcord/units";

/** The cloth of whatever a file holds: a recipe or a draft worked out, and a chart as it is drawn. */
export function drawdownIn(reading: Reading): BitGrid {
  switch (reading.kind) {
    case "recipe":
      return expand(reading.recipe.draft).drawdown;
    case "draft":
      return drawdownOf(reading.draft);
    case "chart":
      return reading.chart;
  }
}

/** The title of what a file holds. */
export function titleIn(reading: Reading): string | undefined {
  return reading.kind === "recipe"
    ? reading.recipe.title
    : reading.kind === "draft"
      ? reading.draft.title
      : undefined;
}
