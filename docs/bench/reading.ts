import { DrawcordError } from "@drawcord/base";
import { FileError, kindOf, type Problem, type Reading, type Recipe, readRecipe } from "@drawcord/files";

/** The name by which the bench reads its recipe. */
const NAME = "cloth.recipe.yaml";

/** What was read of the bench's text, as far as it can be read, and what is wrong with it. */
export interface BenchReading {
  readonly reading?: Reading;
  readonly problems: readonly Pick<Problem, "code" | "end" | "offset" | "sentence">[];
  /** What it is, though it cannot be read. */
  readonly kind: Reading["kind"];
}

/**
 * Reads whatever stands on the bench: a recipe as far as it can be read, a draft or a chart whole or not at all.
 * @param text of a recipe, a draft (WIF) or a chart
 */
export async function readBench(text: string): Promise<BenchReading> {
  if (kindOf(new TextEncoder().encode(text)) !== "recipe") {
    // Most that is written here is a recipe: what reads the rest is fetched when it comes.
    return (await import("./reading-others.js")).readOther(text);
  }
  const { problems, recipe } = readRecipe(text, NAME);
  return { kind: "recipe", problems, ...(recipe && { reading: { kind: "recipe", recipe } as const }) };
}

/**
 * A recipe of which every piece but one is left out.
 * @param recipe as it was read
 * @param piece its number, from 0; past the last it is the first
 */
export function pieceOf(recipe: Recipe, piece: number) {
  return recipe.pieces[piece] ?? recipe.pieces[0]!;
}

/**
 * What to say of something that went wrong; anything that is no message of the packages is passed on.
 * @param error what was thrown
 */
export function sentenceOf(error: unknown): string {
  if (error instanceof FileError) return `line ${error.place.line}: ${error.sentence}`;
  if (error instanceof DrawcordError) return error.message;
  throw error;
}
