import { type Colour, FileError, readInkedPng, readPbm, readTextChart } from "@drawcord/files";
import { type BitGrid, rowCounts } from "@drawcord/grid";
import { CliError } from "../error.js";
import type { Input } from "../inputs.js";

/** How the ink of a PNG picture is told from its paper; text and PBM have no say in it. */
export interface ChartInk {
  readonly scale: number;
  readonly ink: string | undefined;
  readonly threshold: number | undefined;
}

/**
 * Reads a chart: PNG and PBM are known by how they begin, anything else is a text of `#` and `.`.
 * @throws {FileError} for what cannot be read; {CliError} `no-chart` when no square is drawn
 */
export async function readChart(source: Input, { scale, ink, threshold }: ChartInk): Promise<BitGrid> {
  const bytes = await source.read();
  const chart = isPng(bytes)
    ? readInkedPng(bytes, source.name, {
        scale,
        ...(ink !== undefined && { ink: ink as Colour }),
        ...(threshold !== undefined && { threshold }),
      })
    : isPbm(bytes)
      ? readPbm(bytes, source.name)
      : asText(bytes, source.name);
  if (rowCounts(chart).every((count) => count === 0)) {
    throw new CliError("no-chart", `${source.name}: the chart draws nothing; expected one square or more`, {
      file: source.name,
    });
  }
  return chart;
}

function asText(bytes: Uint8Array, file: string): BitGrid {
  try {
    return readTextChart(bytes, file);
  } catch (error) {
    if (!(error instanceof FileError) || error.code !== "not-text") throw error;
    const sentence = `${file}: this is no chart; a text of # and ., a PBM or a PNG picture was expected`;
    throw new CliError("no-chart", sentence, { file });
  }
}

function isPng(bytes: Uint8Array): boolean {
  return bytes[0] === 0x89 && bytes[1] === 0x50 && bytes[2] === 0x4e && bytes[3] === 0x47;
}

function isPbm(bytes: Uint8Array): boolean {
  return bytes[0] === 0x50 && (bytes[1] === 0x31 || bytes[1] === 0x34);
}
