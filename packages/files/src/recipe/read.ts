import { parseThreading, type UnitShafts } from "@drawcord/units";
import { recipeSchema, recipeVersion } from "../schema/recipe.js";
import { readText } from "../text.js";
import { checkShape } from "../tree/shape.js";
import {
  at,
  entries,
  items,
  numberAt,
  placeAt,
  root,
  type Spot,
  scalar,
  textAt,
  wayTo,
  wrong,
} from "../tree/spot.js";
import { readTree } from "../tree/tree.js";
import { readCloth } from "./cloth.js";
import { readCounts } from "./counts.js";
import { readGround } from "./ground.js";
import { readLimits } from "./limits.js";
import { notation } from "./notation.js";
import { rowPlaces, unitPlaces } from "./part-places.js";
import { readPieces, type Warp } from "./pieces/read.js";
import { readYarnOrder } from "./pieces/yarn-order.js";
import { readLoom, readProject, readStated } from "./project.js";
import type { Recipe, RecipePiece } from "./types.js";
import { readLevels, readWaivers } from "./waive.js";
import { readYarns, weftsOf } from "./yarns.js";

/**
 * Reads a recipe file: YAML 1.2, one document, by the published schema.
 * @param source the bytes of the file, or its text
 * @param file the name that errors bear
 * @throws {FileError} with file, line and column, for everything that keeps the recipe from being read
 * @example readRecipe(text, "runner.recipe.yaml").draft.threading // [[1], [2]]
 */
export function readRecipe(source: Uint8Array | string, file: string): Recipe {
  const tree = readTree(readText(source, file), file);
  const top = root(tree);
  checkVersion(top);
  checkShape(top, recipeSchema);

  const title = textAt(top, "title");
  const warp = readWarp(top);
  const limitsSection = at(top, "limits");
  const cloth = readCloth(at(top, "cloth"));
  const project = readProject(at(top, "project"));
  const named = at(top, "yarns");
  const yarnNames = [
    ...new Set([
      "warp",
      "weft",
      ...weftsOf(warp.ground),
      ...(named ? entries(named) : []).map(([name]) => name),
    ]),
  ];
  const limits = readLimits(limitsSection, warp.ground);
  const pieces = readPieces(top, { warp, cloth, project, limits, yarns: yarnNames, title });
  const { draft } = pieces[0]!;
  const weave = textAt(at(top, "ground"), "weave");
  const staticShaft = numberAt(at(top, "units"), "static");
  const notes = textAt(top, "notes");
  const colours = at(top, "colours");
  const ofWarp = colours && at(colours, "warp");
  const ends = ofWarp === undefined ? ["warp"] : readYarnOrder(ofWarp, yarnNames);
  return {
    file,
    version: recipeVersion,
    ...(title === undefined ? {} : { title }),
    pieces,
    draft,
    ...(weave === undefined ? {} : { weave }),
    ...(staticShaft === undefined ? {} : { staticShaft }),
    warp: ends,
    yarns: readYarns(named, new Set([...ends, ...pieces.flatMap(namesOfWefts)])),
    cloth,
    project,
    loom: readLoom(at(top, "loom")),
    limits,
    levels: readLevels(limitsSection),
    waive: readWaivers(at(top, "waive")),
    stated: readStated(at(top, "stated")),
    ...(notes === undefined ? {} : { notes }),
    place: (path) => placeAt(tree, path),
    rowPlaces: (piece = 0) => rowPlaces(liftsOf(top, piece), at(top, "lifts"), pieces[piece]!),
    unitPlaces: () => unitPlaces(at(at(top, "units")!, "threading")!),
  };
}

/** A newer version is answered as such, before its unknown keys are. */
function checkVersion(top: Spot): void {
  const version = at(top, "recipe");
  const found = version === undefined ? undefined : scalar(version);
  if (version === undefined || typeof found !== "number" || !(found > recipeVersion)) return;
  const sentence = `the recipe is in version ${found} of the format; this Drawcord reads version ${recipeVersion}, so a newer one is needed`;
  throw wrong(version, "newer-version", sentence);
}

/** The section of the lifts of a piece, by its place among the pieces. */
function liftsOf(top: Spot, piece: number): Spot {
  const pieces = at(top, "pieces");
  return pieces === undefined ? at(top, "lifts")! : at(items(pieces)[piece]!, "lifts")!;
}

/** The names of the wefts of a piece: its yarns, and what its steps call them. */
function namesOfWefts({ draft, wefts }: RecipePiece): readonly string[] {
  return [...new Set([...wefts, ...weftsOf(draft.ground)])];
}

/** What belongs to the warp: the units, their threading, the ground and the selvedges. */
function readWarp(top: Spot): Warp {
  const units = at(top, "units")!;
  const ends = at(units, "ends")!;
  const unitEnds = readCounts(ends);
  const lifts = at(top, "lifts");
  const picks = (lifts && at(lifts, "picks")) ?? at(liftsOf(top, 0), "picks");
  const staticShaft = numberAt(units, "static");
  const threading = notation(at(units, "threading")!, (text) =>
    parseThreading(text, staticShaft === undefined ? {} : { staticShaft }),
  );
  checkLength(ends, unitEnds, threading.length, "units");
  const fit = { unitEnds, picksPerRow: picks === undefined ? 1 : readCounts(picks) };
  return {
    ...readGround(at(top, "ground")!, fit),
    unitEnds,
    threading,
    patternShafts: highestShaft(threading),
  };
}

export function highestShaft(threading: readonly UnitShafts[]): number {
  return threading.reduce((most, unit) => Math.max(most, unit.at(-1) ?? 0), 0);
}

function checkLength(of: Spot, counts: number | readonly number[], wanted: number, things: string): void {
  if (typeof counts === "number" || counts.length === wanted) return;
  throw wrong(
    of,
    "bad-value",
    `${wayTo(of.path)} gives ${counts.length} numbers; there are ${wanted} ${things}`,
  );
}
