import { many } from "@drawcord/base";
import { type Recipe, type RecipePiece, type Revision, valueIn } from "@drawcord/files";
import { bodyLines, draftSize } from "@drawcord/units";
import { convert, picksOfPiece, plan, printQuantity, type Quantity, quantity } from "@drawcord/yarn";
import { CliError } from "../error.js";
import { changed, ifReadable } from "./changed.js";
import type { Fit } from "./fit.js";
import { projectOfPiece } from "./piece.js";

/** A line of a weaving order as it is written, and its number of repeats. */
interface Line {
  readonly text: string;
  readonly times: number;
  /** Whether it fills the piece to its length. */
  readonly fills: boolean;
}

/** So many repeats more or fewer are tried of a block that must come out even beside another. */
const MOST_UNEVEN = 8;

const TIMES = /\*\s*(\d+|fill\b)/;

/**
 * The repeats of a block that bring a piece nearest to a finished length, below and above. A block that fills its piece goes
 * on filling it, and the length alone is changed, to what whole repeats make.
 * @throws {CliError} `no-fit` where the lifts are not put together of blocks, or no length can be worked out
 */
export function fitLength(
  source: Uint8Array,
  recipe: Recipe,
  piece: RecipePiece,
  wanted: Quantity,
): readonly Fit[] {
  const { file } = recipe;
  const refuse = (why: string): CliError => new CliError("no-fit", `${file}: ${why}`, { file });
  const lines = linesOf(source, file, piece);
  if (lines === undefined) {
    throw refuse(
      `its lifts are rows and not blocks, and only the repeats of blocks can be fitted${rowsFor(recipe, piece, wanted)}`,
    );
  }
  const own = piece.path.length > 0 ? [...piece.path, "length"] : ["project", "length"];
  // Without a length the rows alone make the cloth.
  const lengthOf = (value: Quantity): Revision[] =>
    piece.length === undefined ? [] : [{ path: own, value: printQuantity(value) }];
  const filling = lines.some(({ fills }) => fills);
  const body = bodyLines(piece.order!);
  const fits = lines.flatMap((line, i): Fit[] => {
    const { fills, text, times } = line;
    if (filling ? !fills : !body.includes(i)) return [];
    /** The piece with the line woven so many times, and the length that its rows make. */
    const trial = (some: number): Pick<Fit, "comes" | "revisions"> | undefined =>
      ifReadable(() => {
        const order: Revision = { path: [...piece.path, "lifts", "order", i], value: repeated(text, some) };
        const { length: _, ...woven } = projectOfPiece(changed(source, file, [order]).recipe, piece);
        const made = plan(woven).finishedLength;
        if (made === undefined) return undefined;
        const comes = inUnit(made, wanted);
        return { comes, revisions: fills ? lengthOf(comes) : [order, ...lengthOf(comes)] };
      });
    // Beside another block only some numbers of repeats may come out even.
    const around = text.includes(" with ") ? MOST_UNEVEN : 1;
    const one = trial(times);
    const more = upTo(around).find((some) => trial(times + some) !== undefined);
    if (one === undefined || more === undefined) return [];
    const step = (trial(times + more)!.comes.value - one.comes.value) / more;
    if (step <= 0) return [];
    const nearest = Math.max(0, times + Math.floor((wanted.value - one.comes.value) / step + 1e-6));
    return upTo(2 * around).flatMap((one): Fit[] => {
      const some = nearest - around + one;
      const found = some < 1 ? undefined : trial(some);
      if (found === undefined) return [];
      const what = fills
        ? `a length of ${printQuantity(found.comes)}, which ${many(some, "repeat")} of the block fill in line ${i + 1} of the order`
        : some === times
          ? "the order as it is"
          : `${repeated(text, some)} in place of ${text}, line ${i + 1} of the order`;
      return [{ what, change: Math.abs(some - times), ...found }];
    });
  });
  if (fits.length === 0) throw refuse("no length can be worked out; it needs the picks of the cloth");
  return fits;
}

/** The lines of a piece's order; undefined where its lifts are rows. */
function linesOf(source: Uint8Array, file: string, { order, path }: RecipePiece): Line[] | undefined {
  return order?.map((line, i) => {
    const text = String(valueIn(source, file, [...path, "lifts", "order", i]));
    const [, number] = TIMES.exec(text) ?? [];
    if (number !== "fill") return { text, times: Number(number ?? 1), fills: false };
    const times = [line, ...(line.beside ?? [])].flatMap(({ changes }) =>
      changes.flatMap((change) => ("times" in change ? [change.times] : [])),
    );
    return { text, times: times.at(-1) ?? 1, fills: true };
  });
}

/** A line of the order with another number of repeats, which stands where it stood, or after the name of the block. */
function repeated(text: string, times: number): string {
  if (TIMES.test(text))
    return text.replace(times === 1 ? /\s*\*\s*(?:\d+|fill\b)/ : TIMES, times === 1 ? "" : `*${times}`);
  return times === 1 ? text : text.replace(/^\S+/, (block) => `${block}*${times}`);
}

/** 1 to `most`. */
function upTo(most: number): number[] {
  return Array.from({ length: most }, (_, i) => i + 1);
}

/** The rows that a length takes and those that there are, to end a sentence; nothing where they cannot be worked out. */
function rowsFor(recipe: Recipe, piece: RecipePiece, length: Quantity): string {
  const { picks, rows } = draftSize(piece.draft);
  const { hems, pickSett, shrinkage } = projectOfPiece(recipe, piece);
  if (pickSett === undefined) return "";
  const takes = ifReadable(() =>
    picksOfPiece({ length, picks: pickSett, hems, shrinkage: shrinkage?.length }),
  );
  return takes === undefined
    ? ""
    : `; ${printQuantity(length)} take ${many(Math.round((takes.value * rows) / picks), "row")}, and there are ${rows}`;
}

/** In the unit that was asked for, to a tenth of a millimetre. */
function inUnit(value: Quantity, { unit }: Quantity): Quantity {
  const found = convert(value, unit).value;
  const decimals =
    convert(quantity(1, unit), "mm").value >= 1000 ? 4 : unit === "mm" ? 1 : unit === "cm" ? 2 : 3;
  return quantity(Number(found.toFixed(decimals)), unit);
}
