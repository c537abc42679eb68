/** The pieces of a recipe: their lifts, wefts, lengths and limits over the one threading of the warp. */
import type { Limits } from "@drawcord/check";
import type { Ground, ShaftSet } from "@drawcord/ground";
import {
  blocksNamed,
  checkDraft,
  exchangedLifts,
  parseShafts,
  type SizedDraft,
  type WovenBlock,
} from "@drawcord/units";
import { picksOfPiece, type Quantity, YarnError } from "@drawcord/yarn";
import { attempt, tell, Unread } from "../../tree/problems.js";
import {
  allItems,
  at,
  entries,
  isWhole,
  items,
  need,
  numberAt,
  type Spot,
  textAt,
  wayTo,
  wrong,
} from "../../tree/spot.js";
import { fittedCounts, readCounts } from "../counts.js";
import { readEach } from "../ground.js";
import { readBlocks, readLifts } from "../lifts.js";
import { readLimits } from "../limits.js";
import { notation, notationError, quantityAt } from "../notation.js";
import type { RecipeCloth, RecipePiece, RecipeProject } from "../types.js";
import type { Blocks } from "./put-together.js";
import { readWeftOrders, type WeftOrders, yarnsOfPicks } from "./wefts.js";
import type { KnownYarns } from "./yarn-order.js";

/** What all pieces share, as far as it can be read. */
export interface KnownWarp
  extends Partial<Pick<SizedDraft, "ground" | "selvedge" | "threading" | "unitEnds">>,
    WarpShafts {}

interface WarpShafts {
  /** How many pattern shafts the units hang on. */
  readonly patternShafts: number;
}

/** What of the rest of the recipe a piece is read with. */
export interface PieceContext {
  readonly warp: KnownWarp;
  readonly cloth: RecipeCloth;
  readonly project: RecipeProject;
  readonly limits: Limits;
  readonly yarns: KnownYarns;
  /** The title of the recipe. */
  readonly title: string | undefined;
}

/**
 * The pieces, in weaving order: those of the section `pieces`, or the one of the section `lifts`; one that cannot be read is
 * left out. What is wrong is told (as the sections' notations, `missing-key`, `bad-value`, `unknown-yarn`).
 * @throws {FileError} `too-large`
 */
export function readPieces(top: Spot, context: PieceContext): readonly RecipePiece[] {
  const { problems } = top.tree;
  const pieces = at(top, "pieces");
  const lifts = at(top, "lifts");
  const ofAll = readWeftOrders(at(top, "colours"), context.yarns);
  if (pieces === undefined) {
    const { title, project } = context;
    const whole = { name: title ?? "", count: project.pieces ?? 1, path: [] };
    const only = attempt(problems, () => {
      const plan = need(top, "lifts");
      checkPlan(plan);
      return pieceOf(undefined, plan, undefined, whole, { ...context, ofAll, shared: noBlocks });
    });
    return only === undefined ? [] : [only];
  }
  const stray = lifts && (at(lifts, "rows") ?? at(lifts, "picture") ?? at(lifts, "order"));
  if (stray !== undefined) {
    const sentence = `${wayTo(stray.path)} stands beside "pieces"; what is woven stands in the pieces, and "lifts" holds what they share: blocks and picks`;
    tell(problems, wrong(stray, "bad-value", sentence));
  }
  const blocks = lifts && at(lifts, "blocks");
  const shared =
    (blocks &&
      attempt(problems, () => ({ rows: readBlocks(blocks), wefts: weftsOf(blocks, context.yarns) }))) ??
    noBlocks;
  const names = new Set<string>();
  return items(pieces).flatMap((piece) => {
    const name = textAt(piece, "name") ?? "";
    if (names.has(name)) {
      const sentence = `a piece before this one is called "${name}" too; each needs its own name`;
      tell(problems, wrong(at(piece, "name") ?? piece, "bad-value", sentence));
    }
    names.add(name);
    const whole = { name, count: numberAt(piece, "count") ?? 1, path: piece.path };
    const read = attempt(problems, () =>
      pieceOf(piece, need(piece, "lifts"), lifts, whole, { ...context, ofAll, shared }),
    );
    return read === undefined ? [] : [read];
  });
}

/** Blocks with the yarns of their wefts. */
interface ReadBlocks {
  readonly rows: Blocks;
  readonly wefts: ReadonlyMap<string, WeftOrders>;
}

const noBlocks: ReadBlocks = { rows: new Map(), wefts: new Map() };

/** The yarns of the wefts of blocks that have their own. */
function weftsOf(blocks: Spot, yarns: KnownYarns): ReadonlyMap<string, WeftOrders> {
  const wefts = entries(blocks).map(([name, block]) => [name, readWeftOrders(block, yarns)] as const);
  return new Map(wefts.filter(([, orders]) => orders.size > 0));
}

/** Refuses lifts that hold blocks without an order, where no pieces put them together. */
function checkPlan(lifts: Spot): void {
  const keys = ["rows", "picture", "order"];
  if (keys.some((key) => at(lifts, key) !== undefined)) return;
  if (!isWhole(lifts, keys)) throw new Unread();
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
  const picksAt = at(lifts, "picks") ?? (sharedLifts && at(sharedLifts, "picks"));
  const picks = attempt(problems, () => readCounts(picksAt ?? missingPicks(lifts)));
  const length = quantityAt(section, "length", "length", "length").length ?? project.length;
  const rows = picks && rowsOf(length, picks, cloth, project);
  const read = readLifts(lifts, {
    patternShafts: warp.patternShafts,
    shared: shared.rows,
    ...(rows === undefined ? {} : { rows }),
  });
  const own = at(lifts, "blocks");
  const ofOwn = own === undefined ? noBlocks.wefts : weftsOf(own, yarns);
  const limits = section && at(section, "limits");
  const ground = groundOf(section, warp.ground);
  const ownLimits = limits && readLimits(limits, ground, yarns);
  const orders = readWeftOrders(section, yarns);
  if (picks === undefined || picksAt === undefined) throw new Unread();
  const picksPerRow = fittedCounts(picksAt, picks, read.lifts.length, "rows", lifts);
  const draft = draftOf(section, picksAt, {
    ...warp,
    ...(ground === undefined ? {} : { ground }),
    picksPerRow,
    lifts: read.lifts,
  });
  return {
    ...whole,
    draft,
    limits: { ...context.limits, ...ownLimits },
    ...yarnsOfPicks(draft, read.order, (block) => read.blocks.get(block)!.length, {
      ofBlocks: new Map([...shared.wefts, ...ofOwn]),
      ofPiece: [orders, ofAll],
    }),
    ...(length === undefined ? {} : { length }),
    ...(rows === undefined ? {} : { wantedRows: rows }),
    ...(read.order === undefined ? {} : { order: read.order, blocks: usedBlocks(read.order, read.blocks) }),
    over: read.over,
  };
}

/** Where the picks are not told; nothing is said of picks that cannot be read, for that is told already. */
function missingPicks(lifts: Spot): never {
  if (!isWhole(lifts, ["picks"])) throw new Unread();
  throw wrong(
    lifts,
    "missing-key",
    `${wayTo(lifts.path)} needs the key "picks", here or in the lifts that all pieces share`,
  );
}

/** The ground of a piece, with a treadling of its own where it has one. */
function groundOf(section: Spot | undefined, ground: Ground | undefined): Ground | undefined {
  const own = section && at(section, "ground");
  if (own === undefined || ground === undefined) return ground;
  return { ...ground, steps: readEach(allItems(need(own, "steps")), ground.shafts) };
}

/** The rows of the blocks that an order names. */
function usedBlocks(
  order: readonly WovenBlock[],
  blocks: Blocks,
): Readonly<Record<string, readonly ShaftSet[]>> {
  const names = new Set(order.flatMap(blocksNamed));
  return Object.fromEntries([...names].map((name) => [name, blocks.get(name)!]));
}

/** The draft of a piece, its figure counterchanged where it says so. */
function draftOf(
  section: Spot | undefined,
  picksAt: Spot,
  {
    patternShafts: _,
    ground,
    threading,
    unitEnds,
    ...plain
  }: KnownWarp & Pick<SizedDraft, "lifts" | "picksPerRow">,
): SizedDraft {
  const exchanged = section && at(section, "counterchange");
  const shafts =
    exchanged && attempt(exchanged.tree.problems, () => notation(exchanged, (text) => parseShafts(text)));
  if (!(ground && threading && unitEnds)) throw new Unread();
  const lifts = shafts === undefined ? plain.lifts : exchangedLifts(plain.lifts, shafts);
  const draft: SizedDraft = { ...plain, ground, threading, unitEnds, lifts };
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
    const woven = picksOfPiece({ length, picks, hems, shrinkage: shrinkage?.length });
    return Math.round(woven.value / picksPerRow);
  } catch (error) {
    // What the plan cannot work out it says itself.
    if (error instanceof YarnError) return undefined;
    throw error;
  }
}
