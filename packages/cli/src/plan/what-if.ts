import { ownNumbers } from "@drawcord/files";
import { numberRules } from "@drawcord/review";
import { type Plan, YarnError } from "@drawcord/yarn";
import { CliError } from "../error.js";
import { type Changed, changed } from "../fit/changed.js";
import { newFindings } from "../fit/passes.js";
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
    const [was, is] = [changed(bytes, file, []), changed(bytes, file, revisions)];
    const found = differences(await withOwn(was), await withOwn(is));
    const goesBy = is.plan.goesBy;
    const finds = newFindings(was.recipe, is.recipe, numberRules);
    if (format === "json") {
      const changes = found.map(({ after, before, name, title }) => ({
        name,
        title,
        before: before === undefined ? null : measure(before),
        after: after === undefined ? null : measure(after),
      }));
      return `${toJson({ file, with: texts, changes, goesBy, finds }, 2)}\n`;
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
    // A number that another one rules moves nothing, and the weaver should know why.
    const rules = goesBy.length === 0 ? "" : `\n${goesBy.map((clause) => `${clause}\n`).join("")}`;
    const then = finds.length === 0 ? "" : `\n${finds.map((message) => `but then ${message}\n`).join("")}`;
    return `${head}${lines.length === 0 ? "no number of the plan differs\n" : lines.join("")}${rules}${then}`;
  } catch (failure) {
    if (!(failure instanceof YarnError)) throw failure;
    throw new CliError("no-plan", `${file}: ${failure.message}`, { file });
  }
}

/** The plan of a recipe with the numbers of its own formulas. */
async function withOwn({ plan, recipe }: Changed): Promise<Plan> {
  return { ...plan, own: await ownNumbers(recipe) };
}
