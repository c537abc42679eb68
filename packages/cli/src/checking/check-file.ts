import { applyTogether, type SearchBounds } from "@drawcord/causes";
import type { RuleName } from "@drawcord/check";
import { kindOf, recipeOfPiece, soundRecipe } from "@drawcord/files";
import type { BitGrid } from "@drawcord/grid";
import { checkRecipe } from "@drawcord/review";
import { type Change, expand } from "@drawcord/units";
import { CliError } from "../error.js";
import type { CheckedCloth } from "./cloth.js";
import type { KeptCheck } from "./kept.js";
import { asksAll } from "./selection.js";

/** Why a rule did not run that a recipe switches off. */
const SWITCHED_OFF = "it is switched off";

/** What to look for, and whether to propose mends. */
export interface CheckRequest {
  readonly rules: readonly RuleName[];
  readonly propose: boolean;
  /** For how many seconds causes are looked for, 0 for not at all; as long as it takes when not given. */
  readonly seconds?: number;
}

/**
 * Reads a recipe, a plain draft or a chart of interlacements, and checks it by the rules asked for.
 * @param progress told how far the search for causes, and for mends, has come
 * @throws {FileError} with its place, for what cannot be read
 * @throws {CliError} `no-rule` when none of them looks at it
 */
export async function checkFile(
  bytes: Uint8Array,
  file: string,
  asked: CheckRequest,
  progress?: SearchBounds["progress"],
): Promise<KeptCheck> {
  const { rules } = asked;
  const kept = isRecipe(bytes)
    ? await reviewRecipe(bytes, file, asked, progress)
    : (await import("./check-plain.js")).checkPlain(bytes, file, rules);
  const { ran, skipped } = kept.report.rules;
  if (ran.length > 0) return kept;
  const idle = skipped.filter(({ rule }) => rules.includes(rule));
  const off = idle.length > 0 && idle.every(({ reason }) => reason === SWITCHED_OFF);
  const why = off ? "every rule is switched off" : "none of the rules asked for has anything to look at";
  throw new CliError("no-rule", `${file}: ${why}, so nothing was checked`, { file });
}

async function reviewRecipe(
  bytes: Uint8Array,
  file: string,
  { propose, rules, seconds }: CheckRequest,
  progress: SearchBounds["progress"],
): Promise<KeptCheck> {
  const recipe = soundRecipe(bytes, file);
  if (recipe.formulas.length > 0) await (await import("./sound-formulas.js")).soundFormulas(recipe);
  // Of 0 seconds no cause is looked for, and mends take their time.
  const end = Date.now() + 1000 * (seconds || Number.POSITIVE_INFINITY);
  const search = () => ({ seconds: (end - Date.now()) / 1000, ...(progress && { progress }) });
  const looked = seconds !== 0 && asksAll(rules);
  const { causes, places, untried, ...report } = checkRecipe(recipe, {
    rules: rules,
    causes: looked,
    ...search(),
  });
  const kept = { title: recipe.title ?? null, report, places, causes, untried };
  if (!propose) return kept;
  const { proposals } = await import("../mending/proposals.js");
  // What is found in a cloth by some rules alone, or in several, or accepted in part, is not all that a mend goes by.
  const isAll = looked && recipe.pieces.length === 1 && causes.every(({ waived }) => waived === undefined);
  const mends = proposals(recipe, search(), isAll ? { report, causes } : {});
  return Date.now() > end ? { ...kept, mends, untried: [...untried, FURTHER_MENDS] } : { ...kept, mends };
}

/** What is not tried where the time is over before all mends are. */
const FURTHER_MENDS = "further mends: the time was over";

/** A checked file as the formats take it. */
export async function clothOf(
  { causes = [], mends, places, report, title, untried = [] }: KeptCheck,
  bytes: Uint8Array,
  file: string,
): Promise<CheckedCloth> {
  const drawdown = once(await drawing(bytes, file));
  const changed = (changes: readonly Change[], piece?: string) => {
    const recipe = soundRecipe(bytes, file);
    const { draft } = (piece !== undefined && recipeOfPiece(recipe, piece)) || recipe;
    return expand(applyTogether(draft, changes)).drawdown;
  };
  return {
    file,
    title: title ?? undefined,
    report,
    places,
    causes,
    untried,
    drawdown,
    changed,
    edits: await editing(bytes, file),
    ...(mends && { mends }),
  };
}

/** Works the cloth of a file out; heavier readers than that of recipes are loaded only when they are needed. */
async function drawing(bytes: Uint8Array, file: string): Promise<() => BitGrid> {
  if (isRecipe(bytes)) return () => expand(soundRecipe(bytes, file).draft).drawdown;
  const { drawdownIn, read } = await import("@drawcord/files");
  return () => drawdownIn(read(bytes, file));
}

/** Writes changes of a recipe's draft into its text; what does so is loaded only where there is a recipe. */
async function editing(bytes: Uint8Array, file: string): Promise<CheckedCloth["edits"]> {
  if (!isRecipe(bytes)) return () => [];
  const { editsOf } = await import("../mending/edits-of.js");
  return (changes, piece) => editsOf(soundRecipe(bytes, file), changes, piece);
}

function isRecipe(bytes: Uint8Array): boolean {
  return kindOf(bytes) === "recipe";
}

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
