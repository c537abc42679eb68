import type { Recipe, Revision } from "@drawcord/files";
import { printWovenBlock } from "@drawcord/units";
import { convert, type Project, plan, printQuantity, type Quantity, quantity } from "@drawcord/yarn";
import { CliError } from "../error.js";
import { changed } from "./changed.js";
import type { Fit } from "./fit.js";

/** The finished length that the rows of the lift plan make. */
function lengthOfRows({ length: _, ...project }: Project): Quantity | undefined {
  return plan(project).finishedLength;
}

/** A line of the order with another number of repeats; undefined where it has none to change. */
function repeated(line: string, times: number): string | undefined {
  const found = /^(.*?) ?\*(?:\d+|fill)(.*)$/.exec(line) ?? /^(\S+)()$/.exec(line);
  return found === null || line.includes(" with ")
    ? undefined
    : `${found[1]}${times === 1 ? "" : `*${times}`}${found[2] ?? ""}`;
}

function timesOf(line: string): number {
  return Number(/\*(\d+)/.exec(line)?.[1] ?? 1);
}

/**
 * The repeats of a block that bring a piece nearest to a finished length, below and above.
 * @throws {CliError} `no-fit` where the lifts are not put together of blocks, or no length can be worked out
 */
export function fitLength(source: Uint8Array, recipe: Recipe, wanted: Quantity): Fit[] {
  const { file } = recipe;
  const refuse = (why: string): CliError => new CliError("no-fit", `${file}: ${why}`, { file });
  if (recipe.pieces.length > 1)
    throw refuse("of several pieces each has its own length; write it with the piece");
  const [piece] = recipe.pieces as [Recipe["pieces"][0]];
  if (piece.order === undefined)
    throw refuse("its lifts are rows and not blocks; only the repeats of blocks can be fitted");
  // As people write it: moth*3.
  const lines = piece.order.map((line) => printWovenBlock(line).replace(/^(\S+) \*/, "$1*"));
  const lifts = [...piece.path, "lifts"];
  // Without a length the rows alone make the cloth.
  const lengthPath = piece.path.length > 0 ? [...piece.path, "length"] : ["project", "length"];
  // What is repeated already is repeated more or less often; a hem or border that comes once stays one.
  const anyRepeated = lines.some((line) => timesOf(line) > 1);
  const fits = lines.flatMap((line, i): Fit[] => {
    const now = timesOf(line);
    if (anyRepeated && now === 1) return [];
    const trial = (
      times: number,
    ): { readonly revisions: Revision[]; readonly length: Quantity } | undefined => {
      const text = repeated(line, times);
      if (text === undefined || times < 1) return undefined;
      const order: Revision = { path: [...lifts, "order", i], value: text };
      const comes = lengthOfRows(changed(source, file, [order]).project);
      if (comes === undefined) return undefined;
      const length = inUnit(comes, wanted);
      return { revisions: [order, { path: lengthPath, value: printQuantity(length) }], length };
    };
    const [one, two] = [trial(now), trial(now + 1)];
    if (one === undefined || two === undefined) return [];
    const step = two.length.value - one.length.value;
    if (step <= 0) return [];
    const nearest = now + Math.floor((wanted.value - one.length.value) / step + 1e-6);
    return [nearest, nearest + 1].flatMap((times) => {
      const found = trial(times);
      if (found === undefined) return [];
      return [
        {
          what: `${repeated(line, times)} in place of ${line}, line ${i + 1} of the order`,
          comes: found.length,
          change: Math.abs(times - now),
          revisions: found.revisions,
        },
      ];
    });
  });
  if (fits.length === 0) throw refuse("no length can be worked out; it needs the picks of the cloth");
  return fits;
}

/** In the unit that was asked for, to a tenth of a millimetre. */
function inUnit(value: Quantity, { unit }: Quantity): Quantity {
  const found = convert(value, unit).value;
  const decimals =
    convert(quantity(1, unit), "mm").value >= 1000 ? 4 : unit === "mm" ? 1 : unit === "cm" ? 2 : 3;
  return quantity(Number(found.toFixed(decimals)), unit);
}
