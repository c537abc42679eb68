import { listed, step } from "@drawcord/base";
import { needRecipe, type Recipe, recipeOfPiece } from "@drawcord/files";
import type { Block } from "@drawcord/page";
import { draftSize, type UnitDraft } from "@drawcord/units";
import { SheetError } from "./error.js";
import { type PartName, partNames, type Sheet, type SheetPart, shortParts } from "./part-names.js";
import { cautionsPart } from "./parts/cautions.js";
import { chartPart } from "./parts/chart.js";
import { clothPart } from "./parts/cloth.js";
import { type Context, contextOf, type SheetOptions, warpOf } from "./parts/context.js";
import { cornerPart } from "./parts/corner.js";
import { findingsPart } from "./parts/findings.js";
import { glossaryPart } from "./parts/glossary.js";
import { groundPart } from "./parts/ground.js";
import { liftsPart } from "./parts/lifts.js";
import { spacedCount } from "./parts/number.js";
import { projectPart } from "./parts/project.js";
import { sectionsPart } from "./parts/sections.js";
import { pickUpPart, sticksPart } from "./parts/sticks.js";
import { threadingPart } from "./parts/threading.js";
import { warpingPart } from "./parts/warping.js";
import { workingPart } from "./parts/working.js";
import { type Woven, weave } from "./woven.js";

/** More rows or units than this fill more paper than a weaver can turn over. */
const MOST_ROWS = 20_000;
const MOST_UNITS = 10_000;

/** A piece longer than this many times its width, or wider, leaves nothing to see at the scale of a page. */
const MOST_SLENDER = 200;

/**
 * The sheet of a recipe as data, all of it that a weaver needs or the parts asked for; every format is a rendering of it.
 * @param recipe a recipe as `soundRecipe` gives it
 * @param options which parts, in which units, read which way, and what the drawdown shows
 * @throws {StoppedError} `stopped` when the signal says so
 * @throws {SheetError} `too-long` for a piece that no paper holds
 * @throws {DrawError} `bad-colour` for a colour that cannot be read
 * @throws {UnitsError} for a draft that cannot be worked out
 * @throws {YarnError} for a project whose numbers cannot be
 * @example makeSheet(recipe).parts[0].name // "cloth"
 */
export function makeSheet(recipe: Recipe, options: SheetOptions = {}): Sheet {
  needRecipe(recipe);
  const { parts = shortParts } = options;
  for (const { draft } of recipe.pieces) checkSize(draft);
  const asked = partNames.filter((name) => parts.includes(name));
  // To check the recipe, and to weave its pieces, is the first step.
  step(options, 0, asked.length + 1);
  const ofWarp = warpOf(recipe, options);
  const contexts = piecesOf(recipe).map(({ piece, woven }) => contextOf(piece, woven, ofWarp, options));
  return {
    title: recipe.title ?? "A cloth without a name",
    subtitle: subtitleOf(recipe, contexts),
    parts: asked
      .map((name, i) => {
        step(options, i + 1, asked.length + 1);
        return partOf(name, contexts);
      })
      .filter(({ blocks }) => blocks.length > 0),
  };
}

/** Each piece as a recipe of its own, over the treadles and the wefts that all of them have. */
function piecesOf(recipe: Recipe): { readonly piece: Recipe; readonly woven: Woven }[] {
  const steps = recipe.pieces.flatMap(({ draft }) => draft.ground.steps);
  const woven: { piece: Recipe; woven: Woven }[] = [];
  for (const one of recipe.pieces) {
    const piece = recipe.pieces.length === 1 ? recipe : recipeOfPiece(recipe, one.name)!;
    const wefts = woven.at(-1)?.woven.wefts ?? [];
    const weftOfPick = (pick: number) => one.wefts[pick % one.wefts.length]!;
    woven.push({ piece, woven: weave(one.draft, { steps, wefts, weftOfPick }) });
  }
  return woven;
}

function subtitleOf({ pieces }: Recipe, contexts: readonly Context[]): string {
  const [{ woven }] = contexts as [Context];
  const warp = [spacedCount(woven.ends, "end"), spacedCount(woven.unitSpans.length, "unit")];
  if (pieces.length > 1) {
    const named = pieces.map(({ name, count }) => (count === 1 ? name : `${name} ${timesWords(count)}`));
    return [...warp, `woven one after another: ${listed(named)}`].join(", ");
  }
  return [
    spacedCount(woven.ends, "end"),
    spacedCount(woven.picks, "pick"),
    spacedCount(woven.unitSpans.length, "unit"),
    spacedCount(woven.rowSpans.length, "row"),
  ].join(", ");
}

function timesWords(count: number): string {
  return ["once", "twice"][count - 1] ?? `${count} times`;
}

/** Parts that are of a piece; the others are of the warp. */
const ofPieces: readonly PartName[] = ["cloth", "chart", "lifts", "corner", "sections", "sticks", "pick-up"];

/** A part of the sheet; one that is of a piece has all pieces one after another, each under its name. */
function partOf(name: PartName, contexts: readonly Context[]): SheetPart {
  const [first] = contexts as [Context];
  if (contexts.length === 1 || !ofPieces.includes(name)) return builders[name](first, contexts);
  const { title, blocks: opening } = builders[name](first, contexts);
  // What stops the weaver stands before the first piece, not in it.
  const warned = name === "cloth" ? opening.findIndex((block) => !isCaution(block)) : 0;
  const blocks = contexts.flatMap((context, i): Block[] => {
    const [piece] = context.recipe.pieces;
    const heading: Block = {
      kind: "paragraph",
      tone: "heading",
      text: `Piece ${i + 1}, ${piece!.name}: woven ${timesWords(piece!.count)}`,
    };
    const told = builders[name](context, contexts).blocks.slice(warned);
    // What a picture needs to be read is told once.
    const own = i === 0 || name === "lifts" ? told : told.filter(({ kind }) => kind !== "paragraph");
    return [heading, ...own.map((block) => ofPiece(block, i + 1, piece!.name))];
  });
  return { name, title, blocks: [...opening.slice(0, warned), ...blocks] };
}

function isCaution(block: Block): boolean {
  return block.kind === "paragraph" && block.tone === "caution";
}

/** A block whose names and captions are unlike those of the same block of another piece. */
function ofPiece(block: Block, number: number, name: string): Block {
  if (block.kind === "table") {
    return { ...block, id: `${block.id}-piece-${number}`, caption: `${name}: ${block.caption}` };
  }
  if (block.kind !== "pictures") return block;
  return {
    ...block,
    pictures: block.pictures.map((picture) => ({
      ...picture,
      id: `${picture.id}-piece-${number}`,
      caption: `${name}: ${picture.caption}`,
    })),
  };
}

/** A part of a piece, or of the warp with all pieces at hand. */
type Builder = (context: Context, all: readonly Context[]) => SheetPart;

const builders: Readonly<Record<PartName, Builder>> = {
  cloth: clothPart,
  project: projectPart,
  warping: warpingPart,
  threading: threadingPart,
  ground: groundPart,
  chart: chartPart,
  lifts: liftsPart,
  cautions: cautionsPart,
  corner: cornerPart,
  sections: sectionsPart,
  sticks: sticksPart,
  "pick-up": pickUpPart,
  working: workingPart,
  findings: findingsPart,
  glossary: (_, all) => glossaryPart(shortParts.map((name) => partOf(name, all))),
};

/** Before the cloth is worked out, so that a slip of a thousand is told and not drawn. */
function checkSize(draft: UnitDraft): void {
  const rows = draft.lifts.length;
  const units = draft.threading.length;
  if (rows > MOST_ROWS || units > MOST_UNITS) {
    throw new SheetError(
      "too-long",
      `the cloth has ${rows} rows and ${units} units; a sheet holds up to ${MOST_ROWS} rows and ${MOST_UNITS} units`,
      { rows, units, mostRows: MOST_ROWS, mostUnits: MOST_UNITS },
    );
  }
  const { ends, picks } = draftSize(draft);
  const slender = Math.max(ends / picks, picks / ends);
  if (slender > MOST_SLENDER) {
    throw new SheetError(
      "too-long",
      `a piece of ${ends} ends and ${picks} picks is ${Math.floor(slender)} times as long one way as the other and fits no paper; a sheet shows up to ${MOST_SLENDER} times`,
      { ends, picks, most: MOST_SLENDER },
    );
  }
}
