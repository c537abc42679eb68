import { ownNumbers, type Revision } from "@drawcord/files";
import { type Plan, YarnError } from "@drawcord/yarn";
import { CliError } from "../error.js";
import { changed } from "../fit/changed.js";
import { differences, parseChange } from "../fit/what-if.js";
import { onlyRecipes } from "../only-recipes.js";
import { oneLine, toJson } from "../printable.js";
import { both, measure } from "./measures.js";

/**
 * The numbers of a plan that changes of its recipe make differ, side by side.
 * @throws {CliError} `not-a-recipe`, `bad-change`, `no-plan`
 */
export async function whatIf(
  bytes: Uint8Array,
  file: string,
  texts: readonly string[],
  format: "text" | "json",
): Promise<string> {
  onlyRecipes(bytes, file, "only a recipe can be planned with changes");
  const revisions = texts.map(parseChange);
  try {
    const [before, after] = await Promise.all([withOwn(bytes, file, []), withOwn(bytes, file, revisions)]);
    const found = differences(before, after);
    if (format === "json") {
      const changes = found.map(({ after, before, name, title }) => ({
        name,
        title,
        before: before === undefined ? null : measure(before),
        after: after === undefined ? null : measure(after),
      }));
      return `${toJson({ file, with: texts, changes }, 2)}\n`;
    }
    const rows = found.map(({ after, before, title }): [string, string, string] => [
      title,
      before === undefined ? "not known" : both(before),
      after === undefined ? "not known" : both(after),
    ]);
    const wide = [0, 1].map((i) => Math.max(0, ...rows.map((row) => row[i]!.length)));
    const lines = rows.map(
      ([title, before, after]) => `${title.padEnd(wide[0]!)}  ${before.padEnd(wide[1]!)}  ${after}\n`,
    );
    const head = `${oneLine(file)} with ${texts.map(oneLine).join(" and ")}\n\n`;
    return `${head}${lines.length === 0 ? "no number of the plan differs\n" : lines.join("")}`;
  } catch (failure) {
    if (!(failure instanceof YarnError)) throw failure;
    throw new CliError("no-plan", `${file}: ${failure.message}`, { file });
  }
}

/** The plan of a recipe with changes, the numbers of its own formulas with it. */
async function withOwn(bytes: Uint8Array, file: string, revisions: readonly Revision[]): Promise<Plan> {
  const { plan, recipe } = changed(bytes, file, revisions);
  return { ...plan, own: await ownNumbers(recipe) };
}
