import type { UnitDraft } from "@drawcord/units";
import { parseThreading } from "@drawcord/units";
import { recipeSchema, recipeVersion } from "../schema/recipe.js";
import { readText } from "../text.js";
import { checkShape } from "../tree/shape.js";
import { at, numberAt, placeAt, root, type Spot, scalar, textAt, wayTo, wrong } from "../tree/spot.js";
import { readTree } from "../tree/tree.js";
import { readCloth } from "./cloth.js";
import { readCounts, sumOf } from "./counts.js";
import { readGround, readSelvedge } from "./ground.js";
import { readLifts } from "./lifts.js";
import { readLevels, readLimits, readWaivers } from "./limits.js";
import { notation } from "./notation.js";
import { readLoom, readProject, readStated } from "./project.js";
import type { Recipe } from "./types.js";
import { readYarns } from "./yarns.js";

/** The largest cloth a recipe may come to. */
const mostInterlacements = 2 ** 31;

/**
 * Reads a recipe file: YAML 1.2, one document, by the published schema.
 * @param source the bytes of the file, or its text
 * @param file the name that errors bear
 * @throws {FileError} with file, line and column, for everything that keeps the recipe from being read
 * @example readRecipe(text, "runner.recipe.yaml").draft.threading.length // 12
 */
export function readRecipe(source: Uint8Array | string, file: string): Recipe {
  const tree = readTree(readText(source, file), file);
  const top = root(tree);
  checkVersion(top);
  checkShape(top, recipeSchema);

  const draft = readDraft(top);
  const limits = at(top, "limits");
  const title = textAt(top, "title");
  const weave = textAt(at(top, "ground"), "weave");
  const staticShaft = numberAt(at(top, "units"), "static");
  const notes = textAt(top, "notes");
  return {
    file,
    version: recipeVersion,
    ...(title === undefined ? {} : { title }),
    draft,
    ...(weave === undefined ? {} : { weave }),
    ...(staticShaft === undefined ? {} : { staticShaft }),
    yarns: readYarns(at(top, "yarns"), draft.ground),
    cloth: readCloth(at(top, "cloth")),
    project: readProject(at(top, "project")),
    loom: readLoom(at(top, "loom")),
    limits: readLimits(limits, draft.ground),
    levels: readLevels(limits),
    waive: readWaivers(at(top, "waive")),
    stated: readStated(at(top, "stated")),
    ...(notes === undefined ? {} : { notes }),
    place: (path) => placeAt(tree, path),
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
  const ground = at(top, "ground")!;
  const units = at(top, "units")!;
  const lifts = at(top, "lifts")!;
  const unitEnds = readCounts(at(units, "ends")!);
  const picksPerRow = readCounts(at(lifts, "picks")!);
  const staticShaft = numberAt(units, "static");
  const threading = notation(at(units, "threading")!, (text) =>
    parseThreading(text, staticShaft === undefined ? {} : { staticShaft }),
  );
  const rows = readLifts(lifts);
  checkLength(at(units, "ends")!, unitEnds, threading.length, "units");
  checkLength(at(lifts, "picks")!, picksPerRow, rows.length, "rows");

  const plan = readGround(ground, { unitEnds, picksPerRow });
  const selvedge = readSelvedge(ground, plan.shafts);
  const outside = (selvedge?.left?.length ?? 0) + (selvedge?.right?.length ?? 0);
  const ends = sumOf(unitEnds, threading.length) + outside;
  const picks = sumOf(picksPerRow, rows.length);
  if (ends * picks > mostInterlacements) {
    const sentence = `${ends} ends by ${picks} picks are ${ends * picks} interlacements; up to ${mostInterlacements} are worked out`;
    throw wrong(at(lifts, "picks")!, "too-large", sentence);
  }
  const draft = { ground: plan, unitEnds, threading, lifts: rows, picksPerRow };
  return selvedge === undefined ? draft : { ...draft, selvedge };
}

function checkLength(of: Spot, counts: number | readonly number[], wanted: number, things: string): void {
  if (typeof counts === "number" || counts.length === wanted) return;
  const sentence = `${wayTo(of.path)} gives ${counts.length} numbers; there are ${wanted} ${things}`;
  throw wrong(of, "bad-value", sentence);
}
