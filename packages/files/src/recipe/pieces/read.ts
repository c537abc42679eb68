/** The pieces of a recipe: their lifts, wefts, lengths and limits over the one threading of the warp. */
import type { Limits } from "@drawcord/check";
import type { ShaftSet } from "@drawcord/ground";
import { checkDraft, exchangedLifts, parseShafts, type UnitDraft, type WovenBlock } from "@drawcord/units";
import { calculate, type Quantity, toMetric, YarnError } from "@drawcord/yarn";
import { attempt, tell, Unread } from "../../tree/problems.js";
import {
  allEntries,
  allItems,
  at,
  isLeftOut,
  items,
  need,
  numberAt,
  type Spot,
  textAt,
  wayTo,
  wrong,
} from "../../tree/spot.js";
import { readCounts } from "../counts.js";
import { fitted, isTroubled } from "../fitted.js";
import { readEach } from "../ground.js";
import { readBlocks, readLifts } from "../lifts.js";
import { readLimits } from "../limits.js";
import { notation, notationError, quantityAt } from "../notation.js";
import type { RecipeCloth, RecipePiece, RecipeProject } from "../types.js";
import type { Blocks } from "./put-together.js";
import { readWeftOrders, type WeftOrders, yarnsOfPicks } from "./wefts.js";

/** What all pieces share, without what cannot be read. */
export interface Warp extends Partial<Pick<UnitDraft, "ground" | "selvedge" | "threading" | "unitEnds">> {
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
 * The pieces, in weaving order: those of the section `pieces`, or the one of the section `lifts`. What cannot be read is
 * told, and a piece without lifts or on a warp that is not known is left out.
 * @throws {FileError} `too-large`
 */
export function readPieces(top: Spot, context: PieceContext): readonly RecipePiece[] {
  const pieces = at(top, "pieces");
  const lifts = at(top, "lifts");
  const ofAll = readWeftOrders(at(top, "colours"), context.yarns);
  const { problems } = top.tree;
  const read = (make: () => RecipePiece): readonly RecipePiece[] => {
    const piece = attempt(problems, make);
    return piece === undefined ? [] : [piece];
  };
  if (pieces === undefined) {
    const { title, project } = context;
    const whole = { name: title ?? "", count: project.pieces ?? 1, path: [] };
    return read(() =>
      pieceOf(undefined, planned(top), undefined, whole, { ...context, ofAll, shared: noBlocks }),
    );
  }
  const stray = lifts && (at(lifts, "rows") ?? at(lifts, "picture") ?? at(lifts, "order"));
  if (stray !== undefined) {
    const sentence = `${wayTo(stray.path)} stands beside "pieces"; what is woven stands in the pieces, and "lifts" holds what they share: blocks and picks`;
    tell(problems, wrong(stray, "bad-value", sentence));
  }
  const blocks = lifts && at(lifts, "blocks");
  const shared = blocks === undefined ? noBlocks : readBlocksOnce(blocks, context.yarns);
  const names = new Set<string>();
  return items(pieces).flatMap((piece) => {
    const name = textAt(piece, "name") ?? "";
    if (name !== "" && names.has(name)) {
      const sentence = `a piece before this one is called "${name}" too; each needs its own name`;
      tell(problems, wrong(need(piece, "name"), "bad-value", sentence));
    }
    names.add(name);
    const whole = { name, count: numberAt(piece, "count") ?? 1, path: piece.path };
    return read(() => pieceOf(piece, need(piece, "lifts"), lifts, whole, { ...context, ofAll, shared }));
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
  return { rows, wefts: weftsOfBlocks(blocks, yarns) };
}

/** The yarns of the wefts of each block that names any. */
function weftsOfBlocks(blocks: Spot, yarns: readonly string[]): ReadonlyMap<string, WeftOrders> {
  const wefts = new Map<string, WeftOrders>();
  for (const [name, block] of allEntries(blocks)) {
    const orders = isLeftOut(block) ? undefined : readWeftOrders(block, yarns);
    if (orders !== undefined && orders.size > 0) wefts.set(name, orders);
  }
  return wefts;
}

/**
 * The lifts of a recipe that is a single piece.
 * @throws {FileError} `missing-key` where they hold blocks without an order, and no pieces put them together
 */
function planned(top: Spot): Spot {
  const lifts = need(top, "lifts");
  if (["rows", "picture", "order"].some((key) => at(lifts, key) !== undefined)) return lifts;
  if (isTroubled(lifts)) throw new Unread();
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
  const { problems } = lifts.tree;
  const picksIn = [lifts, sharedLifts].find((of) => of !== undefined && at(of, "picks") !== undefined);
  if (picksIn === undefined && !isTroubled(lifts)) {
    const sentence = `${wayTo(lifts.path)} needs the key "picks", here or in the lifts that all pieces share`;
    tell(problems, wrong(lifts, "missing-key", sentence));
  }
  const picks = picksIn && attempt(problems, () => readCounts(need(picksIn, "picks")));
  const length = quantityAt(section, "length", "length", "length").length ?? project.length;
  const rows = picks === undefined ? undefined : rowsOf(length, picks, cloth, project);
  const read = readLifts(lifts, {
    patternShafts: warp.patternShafts,
    shared: shared.rows,
    ...(rows === undefined ? {} : { rows }),
  });
  const own = at(lifts, "blocks");
  const ofOwn = own === undefined ? noBlocks.wefts : weftsOfBlocks(own, yarns);
  const orders = readWeftOrders(section, yarns);
  if (picksIn === undefined || picks === undefined) throw new Unread();
  const picksPerRow = fitted(picksIn, "picks", picks, read.lifts.length, "rows");
  const draft = draftOf(section, need(picksIn, "picks"), { ...warp, picksPerRow, lifts: read.lifts });
  const limits = section && at(section, "limits");
  return {
    ...whole,
    draft,
    limits:
      limits === undefined ? context.limits : { ...context.limits, ...readLimits(limits, draft.ground) },
    wefts: yarnsOfPicks(draft, read.order, (block) => read.blocks.get(block)?.length ?? 0, {
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
  return Object.fromEntries(
    [...names].flatMap((name) => {
      const rows = blocks.get(name);
      return rows === undefined ? [] : [[name, rows]];
    }),
  );
}

/** The draft of a piece, with a treadling of its own and its figure counterchanged where it says so. */
function draftOf(
  section: Spot | undefined,
  picksAt: Spot,
  {
    ground: shared,
    lifts,
    picksPerRow,
    selvedge,
    threading,
    unitEnds,
  }: Warp & Pick<UnitDraft, "lifts" | "picksPerRow">,
): UnitDraft {
  if (!(shared && threading && unitEnds)) throw new Unread();
  const plain = { ground: shared, unitEnds, threading, lifts, picksPerRow, ...(selvedge && { selvedge }) };
  const ground = section && at(section, "ground");
  const exchanged = section && at(section, "counterchange");
  const draft: UnitDraft = {
    ...plain,
    ...(ground === undefined
      ? {}
      : {
          ground: { ...plain.ground, steps: readEach(allItems(need(ground, "steps")), plain.ground.shafts) },
        }),
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
