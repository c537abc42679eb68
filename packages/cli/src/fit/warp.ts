import { many } from "@drawcord/base";
import type { Recipe, Revision } from "@drawcord/files";
import { convert, type Plan, plan, printQuantity, type Quantity, quantity } from "@drawcord/yarn";
import { CliError } from "../error.js";
import { changed } from "./changed.js";
import type { Fit } from "./fit.js";

/** A recipe with a number of pieces, and the warp that they take. */
function withPieces(source: Uint8Array, { file }: Recipe, count: number): Plan {
  const { warpLength: _, ...project } = changed(source, file, [
    { path: ["project", "pieces"], value: count },
  ]).project;
  return plan(project);
}

function single(recipe: Recipe): void {
  if (recipe.pieces.every(({ path }) => path.length === 0)) return;
  throw new CliError("no-fit", `${recipe.file}: it names its pieces; change their counts`, {
    file: recipe.file,
  });
}

function noLength({ file }: Recipe): CliError {
  return new CliError(
    "no-fit",
    `${file}: no length can be worked out; it needs the length of a piece, or the picks of the cloth`,
    { file },
  );
}

/**
 * The pieces that a warp gives, and the warp that one more takes.
 * @throws {CliError} `no-fit` where no length can be worked out or the recipe names its pieces
 */
export function fitWarp(source: Uint8Array, recipe: Recipe, wound: Quantity): Fit[] {
  single(recipe);
  const { pieces: _, ...project } = changed(source, recipe.file, []).project;
  const { pieces, warpOfPiece } = plan({ ...project, warpLength: wound });
  if (warpOfPiece === undefined) throw noLength(recipe);
  return [pieces.value, pieces.value + 1].flatMap((count): Fit[] => {
    if (count < 1) return [];
    const takes = convert(withPieces(source, recipe, count).warpLength!, wound.unit);
    const fits = count <= pieces.value;
    const left = quantity(wound.value - takes.value, wound.unit);
    const revisions: Revision[] = [
      { path: ["project", "pieces"], value: count },
      { path: ["project", "warp"], value: printQuantity(fits ? wound : upTo(takes)) },
    ];
    const what = fits
      ? `${many(count, "piece")}, ${printQuantity(left, { decimals: 3 })} left`
      : `${many(count, "piece")} take a warp of ${printQuantity(upTo(takes))}`;
    return [{ what, comes: fits ? wound : takes, change: 0, revisions }];
  });
}

/**
 * The warp that a number of pieces takes.
 * @throws {CliError} `no-fit` where no length can be worked out or the recipe names its pieces
 */
export function fitPieces(source: Uint8Array, recipe: Recipe, count: number): Fit {
  single(recipe);
  const { warpLength } = withPieces(source, recipe, count);
  if (warpLength === undefined) throw noLength(recipe);
  const wound = recipe.project.warp;
  const unit = wound?.unit ?? "m";
  const takes = upTo(convert(warpLength, unit));
  const short = wound !== undefined && convert(wound, unit).value < takes.value;
  return {
    what: `a warp of ${printQuantity(takes)}${wound === undefined || short ? "" : `, and there are ${printQuantity(wound)}`}`,
    comes: quantity(count, "pieces"),
    change: 0,
    revisions: [
      { path: ["project", "pieces"], value: count },
      ...(short ? [{ path: ["project", "warp"], value: printQuantity(takes) }] : []),
    ],
  };
}

/** Rounded up to the millimetre or so, so that it is enough. */
function upTo({ unit, value }: Quantity): Quantity {
  return quantity(Math.ceil(value * 1000 - 1e-6) / 1000, unit);
}
