import { drawPixels } from "@drawcord/draw";
import { coloursIn, coloursOfRecipe, drawdownIn, type Reading, type Recipe, titleIn } from "@drawcord/files";
import { type BitGrid, complement, mirror } from "@drawcord/grid";
import { expand } from "@drawcord/units";
import { toMetric } from "@drawcord/yarn";
import type { ClothPicture, Drawn, Harness } from "./messages.js";
import { pieceOf } from "./reading.js";

/** A cloth as it is shown, and what further questions are answered from. */
export interface Drawing {
  readonly drawn: Drawn;
  readonly drawdown: BitGrid;
}

/**
 * Draws what was read: the first thing that the page shows.
 * @param reading of the text on the bench
 * @param piece which piece of a recipe with several is shown, from 0
 * @throws {UnitsError} for a cloth that cannot be worked out
 */
export async function draw(reading: Reading, piece: number): Promise<Drawing> {
  const drawdown = drawdownOf(reading, piece);
  const cloth = await pictureOf(reading, drawdown, piece);
  const recipe = reading.kind === "recipe" ? reading.recipe : undefined;
  return {
    drawdown,
    drawn: {
      kind: reading.kind,
      title: titleIn(reading) ?? "",
      pieces: recipe === undefined ? [] : recipe.pieces.map(({ name }) => name),
      cloth,
      ...(recipe !== undefined && { harness: harnessOf(recipe, piece) }),
    },
  };
}

function drawdownOf(reading: Reading, piece: number): BitGrid {
  if (reading.kind !== "recipe") return drawdownIn(reading);
  return expand(pieceOf(reading.recipe, piece).draft).drawdown;
}

async function pictureOf(reading: Reading, drawdown: BitGrid, piece: number): Promise<ClothPicture> {
  const given = reading.kind === "recipe" ? coloursOfPiece(reading.recipe, piece) : coloursIn(reading);
  const { warp = ["#2c3a57"], weft = ["#efe6d2"] } = given;
  const { rows: picks, columns: ends } = drawdown;
  const each = (count: number, order: readonly `#${string}`[]) =>
    Array.from({ length: count }, (_, i) => order[i % order.length]!);
  const turned = { warp: each(ends, warp).toReversed(), weft: each(picks, weft) };
  const [face, back] = await Promise.all([
    bitmapOf(drawdown, { warp, weft }),
    bitmapOf(complement(mirror(drawdown)), turned),
  ]);
  return { ends, picks, face, back, pitch: pitchOf(reading) };
}

function coloursOfPiece(recipe: Recipe, piece: number) {
  return coloursOfRecipe({ ...recipe, pieces: [pieceOf(recipe, piece)] });
}

function bitmapOf(grid: BitGrid, colours: Parameters<typeof drawPixels>[1]): Promise<ImageBitmap> {
  const { data, width } = drawPixels(grid, colours);
  return createImageBitmap(new ImageData(data, width));
}

/** Threads are as wide as their setts say, in millimetres; where these are not known, as wide as high. */
export function pitchOf(reading: Reading): readonly [number, number] {
  if (reading.kind !== "recipe") return [1, 1];
  const { picks, sett } = reading.recipe.cloth;
  if (sett === undefined || picks === undefined) return [1, 1];
  return [10 / toMetric(sett).value, 10 / toMetric(picks).value];
}

/** What can be pressed and pulled for a piece, from 0. */
export function harnessOf(recipe: Recipe, piece: number): Harness {
  const { ground, lifts, threading } = pieceOf(recipe, piece).draft;
  return {
    steps: ground.steps.map(({ raise, sink }) => ({ raise, sink })),
    handles: Math.max(0, ...threading.flat(), ...lifts.flat()),
  };
}
