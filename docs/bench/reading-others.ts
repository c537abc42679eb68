import {
  coloursIn,
  drawdownIn,
  FileError,
  kindOf,
  type Reading,
  readTextChart,
  readWif,
  titleIn,
} from "@drawcord/files";
import type { BenchReading } from "./reading.js";

/**
 * Reads a draft or a chart.
 * @param text of a draft (WIF) or a chart
 */
export function readOther(text: string): BenchReading {
  if (kindOf(new TextEncoder().encode(text)) === "wif") {
    const { draft, ignored, problems } = readWif(text, "draft.wif");
    return { kind: "draft", problems, ...(draft && { reading: { kind: "draft", draft, ignored } as const }) };
  }
  try {
    return {
      kind: "chart",
      problems: [],
      reading: { kind: "chart", chart: readTextChart(text, "chart.txt") },
    };
  } catch (error) {
    if (error instanceof FileError) return { kind: "chart", problems: error.problems };
    throw error;
  }
}

/** What is drawn of a draft or a chart. */
export function drawnOf(reading: Reading) {
  return { drawdown: drawdownIn(reading), colours: coloursIn(reading), title: titleIn(reading) ?? "" };
}
