import { isMap, type Node } from "yaml";
import { FileError, type Problem } from "../error.js";
import { recipeShape } from "../generated/recipe-shape.js";
import { recipeVersion } from "../schema/version.js";
import { readText } from "../text.js";
import { attempt, inOrder, type Problems } from "../tree/problems.js";
import { checkShape } from "../tree/shape.js";
import {
  allItems,
  at,
  entries,
  isLeftOut,
  need,
  numberAt,
  root,
  type Spot,
  scalar,
  textAt,
  wrong,
} from "../tree/spot.js";
import { readTree, type Tree } from "../tree/tree.js";
import { readCloth } from "./cloth.js";
import { fittedCounts, isTroubled, readCounts } from "./counts.js";
import { readFormulas } from "./formulas.js";
import { readGround } from "./ground.js";
import { readLimits } from "./limits.js";
import { clothBySample, readMeasured } from "./measured.js";
import { patternFloat } from "./pattern-float.js";
import { type KnownWarp, readPieces } from "./pieces/read.js";
import { readYarnOrder } from "./pieces/yarn-order.js";
import { readLoom, readProject, readStated } from "./project.js";
import { highestShaft, readThreading } from "./threading.js";
import type { Recipe, RecipePiece } from "./types.js";
import { readLevels, readWaivers } from "./waive.js";
import { readYarns, weftsOf } from "./yarns.js";

/** What there is to be read in the text of a recipe, and all that is wrong with it. */
export interface RecipeReading {
  /**
   * The recipe, without what cannot be read; left out where there is no cloth to be made of the text: no ground, no units or
   * no lifts. With problems it is good for looking at, not for keeping.
   */
  readonly recipe?: Recipe;
  /** All that is wrong, in the order of the text; a text without a problem is a sound recipe. */
  readonly problems: readonly Problem[];
}

/**
 * Reads a recipe file: YAML 1.2, one document, by the published schema. Whatever is wrong is told, and the rest is read:
 * a section, a key or a waiver that cannot be read is left out; in the threading a word without meaning is a static unit,
 * in a row it draws nothing, so that all others keep their numbers. Where the YAML itself is at fault, the problems of the
 * section with the first such fault and of all after it wait until it is mended.
 * @param source the bytes of the file, or its text
 * @param file the name that problems bear
 * @example readRecipe(text.replace("threading: 1 2 }", "thredding: 1 2 }"), "least").problems[0].sentence // 'unknown key "thredding" in units; did you mean "threading"?'
 */
export function readRecipe(source: Uint8Array | string, file: string): RecipeReading {
  let problems: Problems | undefined;
  try {
    const tree = readTree(readText(source, file), file);
    problems = tree.problems;
    const faults = problems.found.length;
    const recipe = recipeIn(tree);
    const found = faults === 0 ? problems.found : withoutAfterEffects(tree, faults);
    return { ...(recipe === undefined ? {} : { recipe }), problems: inOrder(found) };
  } catch (error) {
    if (!(error instanceof FileError)) throw error;
    return { problems: inOrder([...(problems?.found ?? []), ...error.problems]) };
  }
}

/**
 * Reads a recipe that must be without a problem.
 * @param source the recipe, as text or as the bytes of its file
 * @param file the name that errors bear
 * @throws {FileError} that says the first problem and bears them all
 * @example soundRecipe(text, "runner.recipe.yaml").draft.threading // [[1], [2]]
 */
export function soundRecipe(source: Uint8Array | string, file: string): Recipe {
  const { problems, recipe } = readRecipe(source, file);
  const [first] = problems;
  if (first !== undefined) throw new FileError(first.code, first.sentence, file, first, problems);
  return recipe!;
}

/**
 * Where the first `faults` problems are of YAML itself, what else is told may be their doing: only what stands in sections
 * that end before them is sure.
 */
function withoutAfterEffects({ document, problems: { found } }: Tree, faults: number): readonly Problem[] {
  const ofYaml = found.slice(0, faults);
  const first = Math.min(...ofYaml.map(({ offset }) => offset));
  const keys = isMap<Node>(document.contents) ? document.contents.items.map(({ key }) => key) : [];
  const starts = keys.map(({ range }) => range?.[0] ?? 0).filter((start) => start <= first);
  const isSure = ({ offset, end }: Problem) => offset < end.offset && end.offset <= Math.max(0, ...starts);
  return [...ofYaml, ...found.slice(faults).filter(isSure)];
}

/** The recipe of a document; what is wrong with it is told. */
function recipeIn(tree: Tree): Recipe | undefined {
  const top = root(tree);
  checkVersion(top);
  checkShape(top, recipeShape);

  const title = textAt(top, "title");
  const warp = readWarp(top);
  const limitsSection = at(top, "limits");
  const named = at(top, "yarns");
  const known = warp.ground && knownYarns(warp.ground, named);
  const cloth = readCloth(at(top, "cloth"), known);
  const project = readProject(at(top, "project"));
  const measured = readMeasured(at(top, "measured"));
  const limits = readLimits(limitsSection, warp.ground, known);
  const pieces = readPieces(top, {
    warp,
    cloth: clothBySample(cloth, measured),
    project,
    limits,
    yarns: known,
    title,
  });
  const weave = textAt(at(top, "ground"), "weave");
  const staticShaft = numberAt(at(top, "units"), "static");
  const notes = textAt(top, "notes");
  const colours = at(top, "colours");
  const ofWarp = colours && at(colours, "warp");
  const ends = (ofWarp && attempt(tree.problems, () => readYarnOrder(ofWarp, known))) ?? ["warp"];
  // Where what names the yarns cannot be read, a yarn may be of use though nothing seems to name it.
  const isKnown = ["ground", "lifts", "pieces", "colours"].every((key) => {
    const section = at(top, key);
    return section === undefined || !isTroubled(section);
  });
  const used = isKnown && pieces.length > 0 ? new Set([...ends, ...pieces.flatMap(namesOfWefts)]) : undefined;
  const rest = {
    file: tree.file,
    text: tree.text,
    version: recipeVersion,
    ...(title === undefined ? {} : { title }),
    pieces,
    ...(weave === undefined ? {} : { weave }),
    ...(staticShaft === undefined ? {} : { staticShaft }),
    warp: ends,
    yarns: readYarns(named, used),
    cloth,
    project,
    measured,
    loom: readLoom(at(top, "loom")),
    limits,
    levels: readLevels(limitsSection),
    waive: readWaivers(at(top, "waive")),
    stated: readStated(at(top, "stated")),
    formulas: readFormulas(at(top, "formulas")),
    ...(notes === undefined ? {} : { notes }),
  } as const;
  const unread = [...tree.problems.left.values()];
  return pieces[0] === undefined ? undefined : { ...rest, unread, draft: pieces[0].draft };
}

/** A newer version is answered as such, before its unknown keys are. */
function checkVersion(top: Spot): void {
  const version = at(top, "recipe");
  const found = version === undefined ? undefined : scalar(version);
  if (version === undefined || typeof found !== "number" || !(found > recipeVersion)) return;
  const sentence = `the recipe is in version ${found} of the format; this Drawcord reads version ${recipeVersion}, so a newer one is needed`;
  throw wrong(version, "newer-version", sentence);
}

/** The yarns that an order may name: those of the section `yarns`, and those that need not stand there. */
function knownYarns(ground: RecipePiece["draft"]["ground"], named: Spot | undefined): readonly string[] {
  const own = named === undefined ? [] : entries(named).map(([name]) => name);
  return [...new Set(["warp", "weft", ...weftsOf(ground), ...own])];
}

/** The names of the wefts of a piece: its yarns, and what its steps call them. */
function namesOfWefts({ draft, wefts }: RecipePiece): readonly string[] {
  return [...new Set([...wefts, ...weftsOf(draft.ground)])];
}

/** What belongs to the warp, as far as it can be read: the units, their threading, the ground and the selvedges. */
function readWarp(top: Spot): KnownWarp {
  const { problems } = top.tree;
  const units = at(top, "units");
  const ends = attempt(problems, () => readCounts(need(units, "ends")));
  const threading = attempt(problems, () =>
    readThreading(need(units, "threading"), numberAt(units, "static")),
  );
  const picks = attempt(problems, () => readCounts(need(liftsWithPicks(top), "picks")));
  const edged = attempt(problems, () =>
    readGround(at(top, "ground"), {
      unitEnds: ends,
      picksPerRow: picks ?? 1,
      longestFloat: patternFloat(top),
    }),
  );
  const unitEnds =
    ends === undefined || threading === undefined || units === undefined
      ? undefined
      : fittedCounts(need(units, "ends"), ends, threading.length, "units", need(units, "threading"));
  return {
    ...edged,
    ...(unitEnds === undefined ? {} : { unitEnds }),
    ...(threading === undefined ? {} : { threading }),
    patternShafts: highestShaft(threading ?? []),
  };
}

/** The section of lifts whose picks a named weave is fitted to: that of all pieces, or of the first. */
function liftsWithPicks(top: Spot): Spot | undefined {
  const lifts = at(top, "lifts");
  if (lifts !== undefined && at(lifts, "picks") !== undefined) return lifts;
  const pieces = at(top, "pieces");
  const first = pieces && allItems(pieces)[0];
  return first === undefined || isLeftOut(first) ? lifts : at(first, "lifts");
}
