import { type Picture, palette, round, type Shape } from "@drawcord/page";
import type { Stretch } from "../woven.js";
import { label } from "./label.js";

/** A window of a chart: units across, and places in its list of rows upwards. */
export interface ChartWindow {
  readonly units: Stretch;
  readonly rows: Stretch;
}

/** The map is no wider and no higher than this, in mm. */
const LARGEST = 60;

/** A map of the sheets that a chart is cut into: which lies where, and what each shares with its neighbours. */
export function keyMap(windows: readonly ChartWindow[], units: number, rows: number): Picture {
  const cell = Math.min(LARGEST / units, LARGEST / rows);
  const shapes = windows.flatMap(({ units: across, rows: along }, i): Shape[] => {
    const x = 1 + across.start * cell;
    const y = 1 + (rows - along.end) * cell;
    const width = (across.end - across.start) * cell;
    const height = (along.end - along.start) * cell;
    return [
      {
        kind: "rect",
        x: round(x),
        y: round(y),
        width: round(width),
        height: round(height),
        stroke: palette.muted,
        strokeWidth: 0.25,
      },
      label(round(x + width / 2), round(y + height / 2 + 1.2), `${i + 1}`, {
        anchor: "middle",
        size: 3.4,
        face: "sans-bold",
        fill: palette.ink,
      }),
    ];
  });
  return {
    id: "chart-map",
    caption:
      "How the sheets of the chart lie together: lay them triangle to triangle, neighbours share two squares",
    alt: `Map of the ${windows.length} sheets of the chart, sheet 1 at the bottom left.`,
    drawing: { width: Math.max(44, units * cell + 2), height: rows * cell + 2, shapes },
  };
}
