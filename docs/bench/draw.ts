import { drawPixels } from "@drawcord/draw";
import { coloursOfRecipe, type Reading, type Recipe } from "@drawcord/files";
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
  const recipe = reading.kind === "recipe" ? reading.recipe : undefined;
  const { colours, drawdown, title } =
    recipe === undefined
      ? (await import("./reading-others.js")).drawnOf(reading)
      : {
          drawdown: expand(pieceOf(recipe, piece).draft).drawdown,
          colours: coloursOfPiece(recipe, piece),
          title: recipe.title ?? "",
        };
  return {
    drawdown,
    drawn: {
      kind: reading.kind,
      title,
      pieces: recipe === undefined ? [] : recipe.pieces.map(({ name }) => name),
      cloth: await pictureOf(drawdown, colours, pitchOf(reading)),
      ...(recipe !== undefined && { harness: harnessOf(recipe, piece) }),
    },
  };
}

async function pictureOf(
  drawdown: BitGrid,
  { warp = ["#2c3a57"], weft = ["#efe6d2"] }: ReturnType<typeof coloursOfRecipe>,
  pitch: ClothPicture["pitch"],
): Promise<ClothPicture> {
  const { rows: picks, columns: ends } = drawdown;
  const each = (count: number, order: readonly `#${string}`[]) =>
    Array.from({ length: count }, (_, i) => order[i % order.length]!);
  const turned = { warp: each(ends, warp).toReversed(), weft: each(picks, weft) };
  const [face, back] = await Promise.all([
    bitmapOf(drawdown, { warp, weft }),
    bitmapOf(complement(mirror(drawdown)), turned),
  ]);
  return { ends, picks, face, back, pitch };
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
