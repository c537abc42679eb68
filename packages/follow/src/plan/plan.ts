import { colourOf, parseColour } from "@drawcord/draw";
import { firstPickSide, needRecipe, type Recipe, type RecipePiece } from "@drawcord/files";
import { feetOf, type GroundStep } from "@drawcord/ground";
import { commonSize, type LoomNeeds, liftWork, loomNeeds } from "@drawcord/units";
import { toMetric } from "@drawcord/yarn";
import { FollowError } from "../error.js";
import { followBlocks } from "./blocks.js";
import { fingerprint } from "./fingerprint.js";
import type { FollowLift, FollowPiece, FollowPlan, FollowTreadle, FollowWeft } from "./types.js";

/** The ground weft, in picks whose step names none. */
const GROUND_WEFT = "weft";

/** More rows than this in all pieces together are more than a device holds in one page with ease. */
const MOST_ROWS = 100_000;

/** How a recipe is to be followed. */
export interface FollowOptions {
  /** What the weaver must know before she begins, as a sentence; default: nothing. */
  readonly caution?: string;
}

/**
 * What a page for the loom knows of a recipe.
 * @param recipe a recipe as `soundRecipe` gives it
 * @param options what is said before the first pick
 * @throws {FollowError} `too-long` past 100,000 rows in all pieces together
 * @throws {UnitsError} for a draft that cannot be worked out
 * @example followPlan(recipe).pieces[0].rows // [0, 1, 2]
 */
export function followPlan(recipe: Recipe, { caution }: FollowOptions = {}): FollowPlan {
  needRecipe(recipe);
  const { cloth, draft, loom, title = "A cloth without a name", yarns } = recipe;
  const sources = recipe.pieces;
  checkLength(recipe.file, sources);
  const needs = sources.map((source) => loomNeeds(source.draft));
  const treadles = treadlesOf(sources);
  const wefts = weftsOf(sources);
  const lingoGrams = loom.lingoWeight && toMetric(loom.lingoWeight).value;
  const pieces = sources.map((source) => pieceOf(source, title, treadles, wefts, lingoGrams));
  const { threading, ground } = draft;
  const { picks: pickSett } = cloth;
  const firstFrom = wefts.map((yarn) => firstPickSide(cloth, yarn, weftThrown(sources, yarn)));
  return {
    title,
    warp: fingerprint([
      title,
      threading,
      commonSize(draft.unitEnds) ?? draft.unitEnds,
      ground.threading,
      draft.selvedge,
    ]),
    cloth: fingerprint([threading, treadles, pieces, firstFrom]),
    handles: Math.max(0, ...needs.map(({ highestPatternShaft }) => highestPatternShaft)),
    singleUnit: needs.every(isSingleUnit),
    threading,
    treadles,
    hanging: hangingOf(pieces, treadles.length),
    wefts: wefts.map((name) => weftCalled(name, yarns)),
    firstFrom,
    ...(pickSett === undefined ? {} : { picksPerCm: toMetric(pickSett).value }),
    inches: /inch/.test(pickSett?.unit ?? ""),
    pieces,
    ...(caution === undefined ? {} : { caution }),
  };
}

function isSingleUnit({ singleUnitDraw }: LoomNeeds): boolean {
  return singleUnitDraw;
}

function checkLength(file: string, sources: readonly RecipePiece[]): void {
  const rows = sources.reduce((sum, { draft }) => sum + draft.lifts.length, 0);
  if (rows > MOST_ROWS) {
    throw new FollowError(
      "too-long",
      `${file}: the pieces have ${rows} rows; a page for the loom holds up to ${MOST_ROWS}`,
      { rows, most: MOST_ROWS },
    );
  }
}

/** Unlike steps of all treadlings in the order in which they first come: treadle 1 first. */
function treadlesOf(sources: readonly RecipePiece[]): readonly FollowTreadle[] {
  const told = new Map<string, FollowTreadle>();
  for (const { draft } of sources) {
    for (const step of draft.ground.steps) {
      if (step.raise.length + step.sink.length === 0 || told.has(nameOf(step))) continue;
      told.set(nameOf(step), { raise: step.raise, sink: step.sink });
    }
  }
  return [...told.values()];
}

function nameOf({ raise, sink }: Pick<GroundStep, "raise" | "sink">): string {
  return `${raise.join(" ")}/${sink.join(" ")}`;
}

function weftsOf(sources: readonly RecipePiece[]): readonly string[] {
  return [...new Set(sources.flatMap(({ wefts }) => wefts))];
}

/** The weft, by its name in the ground's steps, that a yarn is first thrown for. */
function weftThrown(sources: readonly RecipePiece[], yarn: string): string {
  for (const { draft, wefts } of sources) {
    const pick = wefts.indexOf(yarn);
    const { steps } = draft.ground;
    if (pick >= 0) return steps[pick % steps.length]?.weft ?? GROUND_WEFT;
  }
  return GROUND_WEFT;
}

function weftCalled(name: string, yarns: Recipe["yarns"]): FollowWeft {
  const written = yarns.find((yarn) => yarn.name === name)?.colour;
  const colour = written === undefined ? undefined : parseColour(written);
  const called = name === GROUND_WEFT ? "ground weft" : name;
  return {
    name: called,
    letter: called.slice(0, 1).toUpperCase(),
    ...(colour === undefined ? {} : { colour: colourOf(colour) }),
  };
}

function pieceOf(
  piece: RecipePiece,
  title: string,
  treadles: readonly FollowTreadle[],
  wefts: readonly string[],
  lingoGrams: number | undefined,
): FollowPiece {
  const { count, draft, name } = piece;
  const lifts: FollowLift[] = [];
  const told = new Map<string, number>();
  const work = liftWork(draft, lingoGrams === undefined ? {} : { lingoGrams });
  const rows = work.rows.map(({ drawn, units, grams }) => {
    const known = told.get(drawn.join(" "));
    if (known !== undefined) return known;
    told.set(drawn.join(" "), lifts.length);
    return lifts.push({ handles: drawn, units, ...(grams === undefined ? {} : { grams }) }) - 1;
  });
  const treadleNames = treadles.map(nameOf);
  return {
    name: name === title ? "" : name,
    count,
    lifts,
    rows,
    picks: work.rows.map(({ picks: [first, last] }) => last - first + 1),
    treadling: draft.ground.steps.map((step) => treadleNames.indexOf(nameOf(step)) + 1),
    thrown: piece.wefts.map((weft) => wefts.indexOf(weft)),
    blocks: followBlocks(piece),
  };
}

/** The treadles as they hang: shared between the feet where one treadling allows it, else in their order. */
function hangingOf(pieces: readonly FollowPiece[], treadles: number): readonly number[] {
  const feet = feetOf(pieces.flatMap(({ treadling }) => treadling));
  return feet.alternate ? feet.hanging : Array.from({ length: treadles }, (_, i) => i + 1);
}
