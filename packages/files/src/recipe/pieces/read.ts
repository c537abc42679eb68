/** The pieces of a recipe: their lifts, wefts, lengths and limits over the one threading of the warp. */
import type { Limits } from "@drawcord/check";
import type { ShaftSet } from "@drawcord/ground";
import { checkDraft, exchangedLifts, parseShafts, type UnitDraft, type WovenBlock } from "@drawcord/units";
import { calculate, type Quantity, toMetric, YarnError } from "@drawcord/yarn";
import { at, items, numberAt, type Spot, textAt, wayTo, wrong } from "../../tree/spot.js";
import { readCounts } from "../counts.js";
import { readEach } from "../ground.js";
import { readBlocks, readLifts } from "../lifts.js";
import { readLimits } from "../limits.js";
import { notation, notationError, quantityAt } from "../notation.js";
import type { RecipeCloth, RecipePiece, RecipeProject } from "../types.js";
import type { Blocks } from "./put-together.js";
import { readWeftOrders, type WeftOrders, yarnsOfPicks } from "./wefts.js";

/** What all pieces share. */
export interface Warp extends Pick<UnitDraft, "ground" | "selvedge" | "threading" | "unitEnds"> {
  readonly patternShafts: number;
}

/** What of the rest of the recipe a piece is read with. */
export interface PieceContext {
  readonly warp: Warp;
  readonly cloth: RecipeCloth;
  readonly project: RecipeProject;
  readonly limits: Limits;
  /** The yarns that there are. */
  readonly yarns: readonly string[];
  /** The title of the recipe. */
  readonly title: string | undefined;
}

/**
 * The pieces, in weaving order: those of the section `pieces`, or the one of the section `lifts`.
 * @throws {FileError} as the sections' notations; `missing-key`, `bad-value`, `unknown-yarn`, `too-large`
 */
export function readPieces(top: Spot, context: PieceContext): readonly RecipePiece[] {
  const pieces = at(top, "pieces");
  const lifts = at(top, "lifts");
  const ofAll = readWeftOrders(at(top, "colours"), context.yarns);
  if (pieces === undefined) {
    checkPlan(lifts!);
    const { title, project } = context;
    const whole = { name: title ?? "", count: project.pieces ?? 1, path: [] };
    return [pieceOf(undefined, lifts!, undefined, whole, { ...context, ofAll, shared: noBlocks })];
  }
  const stray = lifts && (at(lifts, "rows") ?? at(lifts, "picture") ?? at(lifts, "order"));
  if (stray !== undefined) {
    const sentence = `${wayTo(stray.path)} stands beside "pieces"; what is woven stands in the pieces, and "lifts" holds what they share: blocks and picks`;
    throw wrong(stray, "bad-value", sentence);
  }
  const blocks = lifts && at(lifts, "blocks");
  const shared = blocks === undefined ? noBlocks : readBlocksOnce(blocks, context.yarns);
  const names = new Set<string>();
  return items(pieces).map((piece) => {
    const name = textAt(piece, "name")!;
    if (names.has(name)) {
      throw wrong(
        at(piece, "name")!,
        "bad-value",
        `a piece before this one is called "${name}" too; each needs its own name`,
      );
    }
    names.add(name);
    const whole = { name, count: numberAt(piece, "count") ?? 1, path: piece.path };
    return pieceOf(piece, at(piece, "lifts")!, lifts, whole, { ...context, ofAll, shared });
  });
}

/** Blocks with the yarns of their wefts. */
interface ReadBlocks {
  readonly rows: Blocks;
  readonly wefts: ReadonlyMap<string, WeftOrders>;
}

const noBlocks: ReadBlocks = { rows: new Map(), wefts: new Map() };

function readBlocksOnce(blocks: Spot, yarns: readonly string[]): ReadBlocks {
  const rows = readBlocks(blocks);
  const wefts = new Map<string, WeftOrders>();
  for (const name of rows.keys()) {
    const orders = readWeftOrders(at(blocks, name), yarns);
    if (orders.size > 0) wefts.set(name, orders);
  }
  return { rows, wefts };
}

/** Refuses lifts that hold blocks without an order, where no pieces put them together. */
function checkPlan(lifts: Spot): void {
  if (["rows", "picture", "order"].some((key) => at(lifts, key) !== undefined)) return;
  throw wrong(lifts, "missing-key", `${wayTo(lifts.path)} needs the key "rows" or "picture" or "order"`);
}

/** One piece; `section` is undefined for the recipe that is a single one. */
function pieceOf(
  section: Spot | undefined,
  lifts: Spot,
  sharedLifts: Spot | undefined,
  whole: Pick<RecipePiece, "name" | "count" | "path">,
  context: PieceContext & { readonly ofAll: WeftOrders; readonly shared: ReadBlocks },
): RecipePiece {
  const { cloth, ofAll, project, shared, warp, yarns } = context;
  const picksAt = at(lifts, "picks") ?? (sharedLifts && at(sharedLifts, "picks"));
  if (picksAt === undefined) {
    throw wrong(
      lifts,
      "missing-key",
      `${wayTo(lifts.path)} needs the key "picks", here or in the lifts that all pieces share`,
    );
  }
  const picksPerRow = readCounts(picksAt);
  const length = quantityAt(section, "length", "length", "length").length ?? project.length;
  const rows = rowsOf(length, picksPerRow, cloth, project);
  const read = readLifts(lifts, {
    patternShafts: warp.patternShafts,
    shared: shared.rows,
    ...(rows === undefined ? {} : { rows }),
  });
  const own = at(lifts, "blocks");
  const ofOwn = own === undefined ? noBlocks.wefts : readBlocksOnce(own, yarns).wefts;
  checkLength(picksAt, picksPerRow, read.lifts.length);
  const draft = draftOf(section, picksAt, { ...warp, picksPerRow, lifts: read.lifts });
  const limits = section && at(section, "limits");
  const orders = readWeftOrders(section, yarns);
  return {
    ...whole,
    draft,
    limits:
      limits === undefined ? context.limits : { ...context.limits, ...readLimits(limits, draft.ground) },
    wefts: yarnsOfPicks(draft, read.order, (block) => read.blocks.get(block)!.length, {
      ofBlocks: new Map([...shared.wefts, ...ofOwn]),
      ofPiece: [orders, ofAll],
    }),
    ...(length === undefined ? {} : { length }),
    ...(rows === undefined ? {} : { wantedRows: rows }),
    ...(read.order === undefined ? {} : { order: read.order, blocks: usedBlocks(read.order, read.blocks) }),
    over: read.over,
  };
}

/** The rows of the blocks that an order names. */
function usedBlocks(
  order: readonly WovenBlock[],
  blocks: Blocks,
): Readonly<Record<string, readonly ShaftSet[]>> {
  const names = new Set(order.flatMap((line) => [line, ...(line.beside ?? [])].map(({ block }) => block)));
  return Object.fromEntries([...names].map((name) => [name, blocks.get(name)!]));
}

/** The draft of a piece, with a treadling of its own and its figure counterchanged where it says so. */
function draftOf(
  section: Spot | undefined,
  picksAt: Spot,
  { patternShafts: _, ...plain }: Warp & Pick<UnitDraft, "lifts" | "picksPerRow">,
): UnitDraft {
  const ground = section && at(section, "ground");
  const exchanged = section && at(section, "counterchange");
  const draft: UnitDraft = {
    ...plain,
    ...(ground === undefined
      ? {}
      : { ground: { ...plain.ground, steps: readEach(items(at(ground, "steps")!), plain.ground.shafts) } }),
    ...(exchanged === undefined
      ? {}
      : { lifts: exchangedLifts(plain.lifts, notation(exchanged, parseShafts)) }),
  };
  try {
    checkDraft(draft);
  } catch (error) {
    throw notationError(picksAt, error, 0, "too-large") ?? error;
  }
  return draft;
}

function checkLength(of: Spot, counts: number | readonly number[], rows: number): void {
  if (typeof counts === "number" || counts.length === rows) return;
  throw wrong(of, "bad-value", `${wayTo(of.path)} gives ${counts.length} numbers; there are ${rows} rows`);
}

/** The whole rows nearest to a finished length, its hems with it; undefined where too little is known. */
function rowsOf(
  length: Quantity | undefined,
  picksPerRow: number | readonly number[],
  { picks, shrinkage }: RecipeCloth,
  { hems }: RecipeProject,
): number | undefined {
  if (length === undefined || picks === undefined || typeof picksPerRow !== "number") return undefined;
  try {
    const cloth = calculate("cloth-of-a-piece", { f: length, h: hems, s: shrinkage?.length });
    return Math.round(toMetric(calculate("picks-in-length", { P: picks, c: cloth })).value / picksPerRow);
  } catch (error) {
    // What the plan cannot work out it says itself.
    if (error instanceof YarnError) return undefined;
    throw error;
  }
}
