import type { Colour } from "@drawcord/draw";
import { FileError, kindOf, readInkedPng, readPbm, readTextChart } from "@drawcord/files";
import { type BitGrid, rowCounts } from "@drawcord/grid";
import { CliError } from "../error.js";
import type { InputFile } from "../inputs.js";

/** How the ink of a PNG picture is told from its paper; text and PBM do not ask for it. */
export interface ChartInk {
  readonly scale: number;
  readonly ink: string | undefined;
  readonly threshold: number | undefined;
}

/**
 * Reads a chart: PNG and PBM are known by how they begin, anything else is a text of `#` and `.`.
 * @throws {FileError} for what cannot be read; {CliError} `no-chart` when no square is drawn
 */
export async function readChart(source: InputFile, ink: ChartInk): Promise<BitGrid> {
  const chart = chartIn(await source.read(), source.name, ink);
  if (rowCounts(chart).every((count) => count === 0)) {
    throw new CliError("no-chart", `${source.name}: the chart draws nothing; expected one square or more`, {
      file: source.name,
    });
  }
  return chart;
}

function chartIn(bytes: Uint8Array, name: string, { scale, ink, threshold }: ChartInk): BitGrid {
  switch (kindOf(bytes)) {
    case "png":
      return readInkedPng(bytes, name, {
        scale,
        ...(ink !== undefined && { ink: ink as Colour }),
        ...(threshold !== undefined && { threshold }),
      });
    case "pbm":
      return readPbm(bytes, name);
    case "wif":
      throw noChart(name);
    default:
      return asText(bytes, name);
  }
}

function asText(bytes: Uint8Array, name: string): BitGrid {
  try {
    return readTextChart(bytes, name);
  } catch (error) {
    if (!(error instanceof FileError) || error.code !== "not-text") throw error;
    throw noChart(name);
  }
}

function noChart(file: string): CliError {
  const sentence = `${file}: this is no chart; a text of # and ., a PBM or a PNG picture was expected`;
  return new CliError("no-chart", sentence, { file });
}
