import { many } from "@drawcord/base";
import type { Recipe, RecipePiece, Revision } from "@drawcord/files";
import { convert, plan, printQuantity, type Quantity, quantity, toMetric } from "@drawcord/yarn";
import { CliError } from "../error.js";
import { oneLine } from "../printable.js";
import { changed } from "./changed.js";
import type { Fit } from "./fit.js";
import { countPath } from "./piece.js";

/**
 * The warp that so many of a piece take, with whatever else is woven on it.
 * @throws {CliError} `no-fit` where no length can be worked out
 */
function warpFor(source: Uint8Array, { file }: Recipe, piece: RecipePiece, count: number): Quantity {
  const { warpLength: _, ...project } = changed(source, file, [
    { path: countPath(piece), value: count },
  ]).project;
  const { warpLength } = plan(project);
  if (warpLength !== undefined) return warpLength;
  throw new CliError(
    "no-fit",
    `${file}: no length can be worked out; it needs the length of a piece, or the picks of the cloth`,
    { file },
  );
}

/**
 * The pieces that a warp gives, and the warp that one more takes. Of several on a warp the others stay as many as they are.
 * @throws {CliError} `no-fit` where no length can be worked out
 */
export function fitWarp(
  source: Uint8Array,
  recipe: Recipe,
  piece: RecipePiece,
  wound: Quantity,
): readonly Fit[] {
  const warpOf = (count: number) => toMetric(warpFor(source, recipe, piece, count)).value;
  const [one, two] = [warpOf(1), warpOf(2)];
  const most = 1 + Math.floor((toMetric(wound).value - one) / (two - one) + 1e-9);
  const pieces = Math.max(0, most);
  return [pieces, pieces + 1].flatMap((count): Fit[] => {
    if (count < 1) return [];
    const takes = upTo(convert(warpFor(source, recipe, piece, count), wound.unit));
    const fits = count <= pieces;
    const left = quantity(Math.max(0, wound.value - takes.value), wound.unit);
    const revisions: Revision[] = [
      { path: countPath(piece), value: count },
      { path: ["project", "warp"], value: printQuantity(fits ? wound : takes) },
    ];
    const what = fits
      ? `${piecesOf(piece, count)}, ${printQuantity(left, { decimals: 3 })} left`
      : `${piecesOf(piece, count)} take a warp of ${printQuantity(takes)}`;
    return [{ what, comes: fits ? wound : takes, change: 0, revisions }];
  });
}

/**
 * The warp that a number of pieces takes.
 * @throws {CliError} `no-fit` where no length can be worked out
 */
export function fitPieces(source: Uint8Array, recipe: Recipe, piece: RecipePiece, count: number): Fit {
  const wound = recipe.project.warp;
  const takes = upTo(convert(warpFor(source, recipe, piece, count), wound?.unit ?? "m"));
  const short = wound !== undefined && wound.value < takes.value;
  return {
    what: `a warp of ${printQuantity(takes)}${wound === undefined || short ? "" : `, and there are ${printQuantity(wound)}`}`,
    comes: quantity(count, "pieces"),
    change: 0,
    revisions: [
      { path: countPath(piece), value: count },
      ...(short ? [{ path: ["project", "warp"], value: printQuantity(takes) }] : []),
    ],
  };
}

/** So many pieces, by their name where they have one among others. */
function piecesOf({ name, path }: RecipePiece, count: number): string {
  return `${many(count, "piece")}${path.length > 0 ? ` of ${oneLine(name)}` : ""}`;
}

/** Rounded up to the millimetre or so, so that it is enough. */
function upTo({ unit, value }: Quantity): Quantity {
  return quantity(Math.ceil(value * 1000 - 1e-6) / 1000, unit);
}
