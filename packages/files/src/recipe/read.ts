import { checkDraft, parseThreading, type UnitDraft, type UnitShafts } from "@drawcord/units";
import { recipeSchema, recipeVersion } from "../schema/recipe.js";
import { readText } from "../text.js";
import { checkShape } from "../tree/shape.js";
import { at, numberAt, placeAt, root, type Spot, scalar, textAt, wayTo, wrong } from "../tree/spot.js";
import { readTree } from "../tree/tree.js";
import { readCloth } from "./cloth.js";
import { readCounts } from "./counts.js";
import { readGround } from "./ground.js";
import { readLifts } from "./lifts.js";
import { readLimits } from "./limits.js";
import { notation, notationError } from "./notation.js";
import { rowPlaces, unitPlaces } from "./part-places.js";
import { readLoom, readProject, readStated } from "./project.js";
import type { Recipe } from "./types.js";
import { readLevels, readWaivers } from "./waive.js";
import { readYarns } from "./yarns.js";

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

  const draft = readDraft(top);
  const limitsSection = at(top, "limits");
  const limits = readLimits(limitsSection, draft.ground);
  const project = readProject(at(top, "project"));
  const title = textAt(top, "title");
  const weave = textAt(at(top, "ground"), "weave");
  const staticShaft = numberAt(at(top, "units"), "static");
  const notes = textAt(top, "notes");
  return {
    file,
    version: recipeVersion,
    ...(title === undefined ? {} : { title }),
    pieces: [{ name: title ?? "", count: project.pieces ?? 1, draft, limits }],
    draft,
    ...(weave === undefined ? {} : { weave }),
    ...(staticShaft === undefined ? {} : { staticShaft }),
    yarns: readYarns(at(top, "yarns"), draft.ground),
    cloth: readCloth(at(top, "cloth")),
    project,
    loom: readLoom(at(top, "loom")),
    limits,
    levels: readLevels(limitsSection),
    waive: readWaivers(at(top, "waive")),
    stated: readStated(at(top, "stated")),
    ...(notes === undefined ? {} : { notes }),
    place: (path) => placeAt(tree, path),
    rowPlaces: () => rowPlaces(at(top, "lifts")!, highestShaft(draft.threading)),
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

function readDraft(top: Spot): UnitDraft {
  const section = at(top, "ground")!;
  const units = at(top, "units")!;
  const plan = at(top, "lifts")!;
  const ends = at(units, "ends")!;
  const picks = at(plan, "picks")!;
  const unitEnds = readCounts(ends);
  const picksPerRow = readCounts(picks);
  const staticShaft = numberAt(units, "static");
  const threading = notation(at(units, "threading")!, (text) =>
    parseThreading(text, staticShaft === undefined ? {} : { staticShaft }),
  );
  const lifts = readLifts(plan, highestShaft(threading));
  checkLength(ends, unitEnds, threading.length, "units");
  checkLength(picks, picksPerRow, lifts.length, "rows");

  const draft: UnitDraft = {
    ...readGround(section, { unitEnds, picksPerRow }),
    unitEnds,
    threading,
    lifts,
    picksPerRow,
  };
  try {
    checkDraft(draft);
  } catch (error) {
    throw notationError(picks, error, 0, "too-large");
  }
  return draft;
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
