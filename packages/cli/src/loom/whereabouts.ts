/** Where a weaver is on the warp: what a row, a pick or a length is, with the rows before and after it. */
import { many } from "@drawcord/base";
import { projectOf, type Recipe, type RecipePiece } from "@drawcord/files";
import { handleChanges, printShafts, SHORT_LIFT_CAUTION, type WovenRow, wovenRows } from "@drawcord/units";
import { calculate, parseQuantity, plan, type Quantity, toMetric } from "@drawcord/yarn";
import { CliError } from "../error.js";
import { wrapText } from "../text.js";

/** What is asked about: a row or a pick of a piece, from 1, or how far the cloth of a piece has come. */
export type AskedPlace =
  | { readonly by: "row"; readonly number: number }
  | { readonly by: "pick"; readonly number: number }
  | { readonly by: "length"; readonly length: Quantity };

/**
 * Reads a place such as `row 143`, `pick 577` or `31 cm`.
 * @throws {CliError} `bad-number`
 */
export function parsePlace(text: string): AskedPlace {
  const counted = /^\s*(row|pick)\s+(\d{1,9})\s*$/.exec(text);
  if (counted !== null && Number(counted[2]) > 0) {
    const number = Number(counted[2]);
    return counted[1] === "row" ? { by: "row", number } : { by: "pick", number };
  }
  try {
    return { by: "length", length: parseQuantity(text, { kind: ["length"] }) };
  } catch {
    const sentence = `drawcord lifts: --at takes a row, a pick or a length, such as "row 143", "pick 577" or "31 cm", not "${text}"`;
    throw new CliError("bad-number", sentence, { option: "at", value: text });
  }
}

/** Whether a word goes on with a place that a word before it begins: `row` and `143`, `31` and `cm`. */
export function joinsPlace(value: string, next: string): boolean {
  return /^(row|pick)$/.test(value) ? /^\d+$/.test(next) : /^[\d./]+$/.test(value) && /^[a-z"]+$/.test(next);
}

/** One row of a piece, told to the weaver; everything counts from 1. */
interface RowTold {
  readonly row: number;
  readonly picks: readonly [first: number, last: number];
  /** The block with its repeat and its row, and those beside it. */
  readonly blocks: readonly { readonly block: string; readonly repeat: number; readonly row?: number }[];
  readonly drawn: readonly number[];
  readonly pulled: readonly number[];
  readonly released: readonly number[];
}

/** Where the weaver is. */
export interface Whereabouts {
  readonly piece: string;
  /** Which of its design, from 1, of how many. */
  readonly nth: number;
  readonly count: number;
  readonly rows: number;
  readonly pick: number;
  /** The treadle of the pick, in the order of the ground's steps, and what it moves. */
  readonly treadle: number;
  readonly raise: readonly number[];
  readonly sink: readonly number[];
  readonly weft: string;
  readonly here: RowTold;
  readonly before?: RowTold;
  readonly after?: RowTold;
  /** Pieces that are done before this one. */
  readonly piecesDone: number;
  readonly pieces: number;
  /** Warp used up to the pick, where the setts are known: of the pieces before, and of this one so far, without gaps and fringes of its own. */
  readonly warpUsed?: Quantity;
}

/**
 * Where a row, a pick or a length of a piece is.
 * @param recipe the whole recipe
 * @param piece the piece that is on the loom
 * @param nth how many of its design are done before it
 * @throws {CliError} `outside` for a place that the piece has not, `no-length` for a length where the picks a centimetre are
 * not known
 */
export function whereabouts(recipe: Recipe, piece: RecipePiece, asked: AskedPlace, nth: number): Whereabouts {
  const { draft, wefts } = piece;
  const firstPicks = firstPicksOf(draft.picksPerRow);
  const picks = firstPicks.at(-1)!;
  const pick = pickOf(asked, recipe, firstPicks);
  if (pick < 0 || pick >= picks) {
    const sentence = `${recipe.file}: ${nameOf(piece)} has ${many(draft.lifts.length, "row")} and ${many(picks, "pick")}; ${saidOf(asked)} is not among them`;
    throw new CliError("outside", sentence, { file: recipe.file });
  }
  const row = firstPicks.findLastIndex((first) => first <= pick);
  const woven = piece.order && wovenRows(piece.order, (block) => piece.blocks?.[block]?.length ?? 1);
  const told = (at: number) => rowTold(piece, woven, firstPicks, at);
  const { steps } = draft.ground;
  const step = pick % steps.length;
  const { raise, sink } = steps[step]!;
  const place = recipe.pieces.indexOf(piece);
  const piecesDone = recipe.pieces.slice(0, place).reduce((sum, { count }) => sum + count, nth);
  const warpUsed = warpUsedOf(recipe, place, nth, pick + 1);
  return {
    piece: nameOf(piece),
    nth: nth + 1,
    count: piece.count,
    rows: draft.lifts.length,
    pick: pick + 1,
    treadle: step + 1,
    raise,
    sink,
    weft: wefts[pick % wefts.length]!,
    here: told(row),
    ...(row > 0 && { before: told(row - 1) }),
    ...(row + 1 < draft.lifts.length && { after: told(row + 1) }),
    piecesDone,
    pieces: recipe.pieces.reduce((sum, { count }) => sum + count, 0),
    ...(warpUsed !== undefined && { warpUsed }),
  };
}

function nameOf({ name }: RecipePiece): string {
  return name === "" ? "the piece" : name;
}

export function saidOf(asked: AskedPlace): string {
  return asked.by === "length" ? `${asked.length.value} ${asked.length.unit}` : `${asked.by} ${asked.number}`;
}

/** The first pick of each row, from 0, and after the last row the number of picks. */
function firstPicksOf(picksPerRow: readonly number[]): readonly number[] {
  const first = [0];
  for (const [row, picks] of picksPerRow.entries()) first.push(first[row]! + picks);
  return first;
}

/** The pick asked about, from 0; -1 or past the last where there is none. */
function pickOf(asked: AskedPlace, recipe: Recipe, firstPicks: readonly number[]): number {
  if (asked.by === "pick") return asked.number - 1;
  if (asked.by === "row") return firstPicks[asked.number - 1] ?? -1;
  return picksInLength(recipe, asked.length) - 1;
}

/**
 * How many picks are woven when the cloth has come so far; at least one.
 * @throws {CliError} `no-length` where the picks a centimetre are not known
 */
export function picksInLength({ cloth, file }: Recipe, length: Quantity): number {
  if (cloth.picks === undefined) {
    throw new CliError("no-length", `${file}: where a length lies is not known without cloth.picks`, {
      file,
    });
  }
  return Math.max(1, Math.ceil(toMetric(calculate("picks-in-length", { P: cloth.picks, c: length })).value));
}

function rowTold(
  { draft }: RecipePiece,
  woven: readonly WovenRow[] | undefined,
  firstPicks: readonly number[],
  row: number,
): RowTold {
  const drawn = draft.lifts[row]!;
  const blocks = woven?.[row]?.blocks ?? [];
  return {
    row: row + 1,
    picks: [firstPicks[row]! + 1, firstPicks[row + 1]!],
    blocks: blocks.map(({ again, block, row: own }) => ({
      block,
      repeat: again + 1,
      ...(own !== undefined && { row: own + 1 }),
    })),
    drawn,
    ...handleChanges(draft.lifts[row - 1] ?? [], drawn),
  };
}

/** The warp that the pieces before take, gaps with them, and so many picks of the one on the loom. */
function warpUsedOf(recipe: Recipe, place: number, nth: number, picks: number): Quantity | undefined {
  const { cloth, project } = recipe;
  if (cloth.picks === undefined) return undefined;
  const done = recipe.pieces
    .slice(0, place + 1)
    .map((piece, i) => (i < place ? piece : { ...piece, count: nth }));
  const lengths = done.map((piece) => {
    if (piece.count === 0) return 0;
    const { warpOfPiece } = plan(projectOf({ ...recipe, pieces: [piece], draft: piece.draft }));
    return warpOfPiece === undefined ? undefined : piece.count * toMetric(warpOfPiece).value;
  });
  if (lengths.some((length) => length === undefined)) return undefined;
  const before = done.reduce((sum, { count }) => sum + count, 0);
  const gaps = project.gaps === undefined ? 0 : before * toMetric(project.gaps).value;
  const here = calculate("warp-of-a-piece", {
    c: calculate("length-of-picks", { p: { value: picks, unit: "picks", kind: "number" }, P: cloth.picks }),
    k: cloth.takeUp,
    r: undefined,
  });
  const total = lengths.reduce<number>((sum, length) => sum + length!, gaps) + toMetric(here).value;
  // A tenth of a millimetre is more than a warp on the loom is measured by.
  return { value: Number(total.toFixed(1)), unit: toMetric(here).unit, kind: "length" };
}

/**
 * Where the weaver is, for her to read.
 * @param drawnBy what units are drawn by: a cord each, or handles
 */
export function* whereaboutsText(
  at: Whereabouts,
  write: (length: Quantity) => string,
  drawnBy: "cords" | "handles",
): Iterable<string> {
  const { here, before, after } = at;
  const which = at.count === 1 ? "" : `, ${at.nth} of ${at.count}`;
  yield `${at.piece}${which}: row ${here.row} of ${at.rows}, pick ${at.pick}\n`;
  if (here.blocks.length > 0) yield `block     ${here.blocks.map(blockSaid).join(", with ")}\n`;
  yield `treadle   ${at.treadle}: ${[moved("raise", at.raise), moved("sink", at.sink)].filter(Boolean).join(", ") || "no shaft moves"}\n`;
  yield `weft      ${at.weft}\n`;
  yield `${drawnBy.padEnd(10)}${shaftsSaid(here.drawn)}; ${changesSaid(here)}\n`;
  if (before !== undefined)
    yield `before    row ${before.row}: ${shaftsSaid(before.drawn)}${blockAside(before)}\n`;
  if (after !== undefined)
    yield `after     row ${after.row}: ${shaftsSaid(after.drawn)}; ${changesSaid(after)}${blockAside(after)}\n`;
  const used = at.warpUsed === undefined ? "" : `; ${write(at.warpUsed)} of warp used`;
  yield `done      ${at.piecesDone} of ${many(at.pieces, "piece")} before this one${used}\n`;
  yield `\n${wrapText(SHORT_LIFT_CAUTION, 80).join("\n")}\n`;
}

function moved(how: string, shafts: readonly number[]): string {
  return shafts.length === 0 ? "" : `${how} ${printShafts(shafts)}`;
}

/** A row of a block as it is said: `moth, repeat 2, row 7`. */
function blockSaid({ block, repeat, row }: RowTold["blocks"][number]): string {
  return row === undefined ? `${block}, its frame` : `${block}, repeat ${repeat}, row ${row}`;
}

function blockAside({ blocks: [first] }: RowTold): string {
  return first === undefined ? "" : ` (${blockSaid(first)})`;
}

function shaftsSaid(shafts: readonly number[]): string {
  return shafts.length === 0 ? "none" : printShafts(shafts);
}

function changesSaid({ pulled, released }: RowTold): string {
  const changes = [
    ...(pulled.length === 0 ? [] : [`draw ${printShafts(pulled)}`]),
    ...(released.length === 0 ? [] : [`let go ${printShafts(released)}`]),
  ];
  return changes.join(", ") || "as before";
}
