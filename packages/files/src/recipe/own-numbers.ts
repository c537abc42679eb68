import { listed, nearest } from "@drawcord/base";
import {
  kinds,
  type OwnNumber,
  parseFormula,
  plan,
  planNumbers,
  type Quantity,
  workOutOwn,
  YarnError,
} from "@drawcord/yarn";
import { FileError, type Problem } from "../error.js";
import { top } from "../place.js";
import { printable } from "../printable.js";
import { projectOf } from "../project.js";
import { type Path, spotAt, wayTo, wrong } from "../tree/spot.js";
import { readTree } from "../tree/tree.js";
import { notationError } from "./notation.js";
import type { Recipe } from "./types.js";

/** So many numbers of a plan are named where none is meant. */
const MOST_LISTED = 12;

/**
 * The numbers that the formulas of a recipe give, in their order, worked out with the numbers of its plan. Only where there
 * is a formula mathjs is loaded, and of it only the parser: an expression is arithmetic, whatever it holds.
 * @param recipe a recipe as it was read
 * @returns for the `own` of a plan, so that they are printed and explained as its other numbers are
 * @throws {FileError} `bad-notation` at the place of the first formula that cannot be read or worked out, with all of them
 * as its problems
 * @throws {YarnError} as `plan`
 * @example await ownNumbers(soundRecipe(text, "least")) // []
 */
export async function ownNumbers(recipe: Recipe): Promise<readonly OwnNumber[]> {
  if (recipe.formulas.length === 0) return [];
  const known = new Map<string, Quantity>();
  for (const { name, value } of planNumbers(plan(projectOf(recipe)))) {
    if (!known.has(name)) known.set(name, value);
  }
  const numbers: OwnNumber[] = [];
  const problems: Problem[] = [];
  for (const [i, { title }] of recipe.formulas.entries()) {
    const path = ["formulas", i];
    try {
      const value = await worked(recipe, path, known);
      known.set(title, value);
      numbers.push({ name: title, title, value });
    } catch (failure) {
      if (!(failure instanceof FileError || failure instanceof YarnError)) throw failure;
      const placed = failure instanceof YarnError ? refused(recipe, [...path, "formula"], failure) : failure;
      problems.push(...placed.problems);
    }
  }
  const [first] = problems;
  if (first !== undefined) throw new FileError(first.code, first.sentence, recipe.file, first, problems);
  return numbers;
}

/** The number that a formula gives; a symbol that stands for a number that there is not is told at its place. */
async function worked(
  recipe: Recipe,
  path: Path,
  known: ReadonlyMap<string, Quantity>,
): Promise<OwnNumber["value"]> {
  const { formula: expression, symbols, ...rest } = recipe.formulas[Number(path[1])]!;
  const values = Object.entries(symbols).map(([name, { plan: of = "", value = known.get(of) }]) => {
    if (value !== undefined) return [name, value] as const;
    const names = [...known.keys()];
    const meant = nearest(of, names);
    const hint =
      meant === undefined ? `it has ${listed(names.slice(0, MOST_LISTED))}` : `did you mean "${meant}"?`;
    throw refused(recipe, [...path, "symbols", name, "plan"], `the plan has no number "${of}"; ${hint}`);
  });
  const specs = values.map(([name, value]) => {
    const { in: bare, meaning } = symbols[name]!;
    return [name, { meaning, unit: bare ?? kinds[value.kind].metric, bare: bare !== undefined }] as const;
  });
  const read = await parseFormula({ ...rest, expression, symbols: Object.fromEntries(specs) });
  return workOutOwn(read, Object.fromEntries(values));
}

/** What is wrong with a formula, at its place in the text; at the top where there is no text. */
function refused({ file, text }: Recipe, way: Path, why: string | YarnError): FileError {
  const spot = text === "" ? undefined : spotAt(readTree(text, file), way);
  const placed = typeof why === "string" || spot === undefined ? undefined : notationError(spot, why);
  if (placed !== undefined) return placed;
  const sentence = `${wayTo(way)}: ${printable(typeof why === "string" ? why : why.message, 300)}`;
  return spot === undefined
    ? new FileError("bad-notation", sentence, file, top)
    : wrong(spot, "bad-notation", sentence);
}
