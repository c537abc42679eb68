import { nearest } from "@drawcord/base";
import { type CheckOptions, type RuleName, rules, type Waiver } from "@drawcord/check";
import { FileError, type Problem, placesOf, type Recipe } from "@drawcord/files";

/**
 * The levels and the waivers of a recipe, once its rules are known to be rules.
 * @throws {FileError} `unknown-key` or `bad-value` at the first name that is none, with all of them as its problems
 */
export function namedRules(recipe: Recipe): Required<Pick<CheckOptions, "levels" | "waive">> {
  const problems = ruleProblems(recipe);
  const [first] = problems;
  if (first !== undefined) throw new FileError(first.code, first.sentence, recipe.file, first, problems);
  const { [SLIP]: _, ...levels } = recipe.levels;
  return { levels, waive: recipe.waive.filter((waiver): waiver is Waiver => isRule(waiver.rule)) };
}

/** The name by which the levels and the waivers of a recipe speak of slips of the plan: causes that no finding tells of. */
export const SLIP = "slip";

/** All names that levels and waivers may speak of. */
export const levelNames: readonly string[] = [...rules.map(({ name }) => name), SLIP];

/**
 * The names in the levels and the waivers of a recipe that are no rule's, each as a problem at its place. The reader of
 * recipes does not know the rules, so an editor asks this besides.
 * @param recipe a recipe that was read
 * @returns none when all are rules
 * @example ruleProblems(recipe) // []
 */
export function ruleProblems(recipe: Recipe): readonly Problem[] {
  const unknown = [
    ...Object.keys(recipe.levels).map((name) => ({
      name,
      path: ["limits", "levels", name],
      code: "unknown-key" as const,
      said: `unknown key "${name}" in limits.levels`,
    })),
    ...recipe.waive.map(({ rule }, i) => ({
      name: rule,
      path: ["waive", i, "rule"],
      code: "bad-value" as const,
      said: `waive, item ${i + 1}.rule is ${rule}`,
    })),
  ].filter(({ name }) => !levelNames.includes(name));
  if (unknown.length === 0) return [];
  const places = placesOf(recipe);
  return unknown.map(({ code, name, path, said }) => {
    const place = (code === "unknown-key" ? places.key(path) : places.at(path)) ?? places.at([])!;
    return { ...place, code, sentence: `${said}${hint(name)}` };
  });
}

/** Whether there is a rule of this name. */
function isRule(name: string): name is RuleName {
  return rules.some((rule) => rule.name === name);
}

function hint(name: string): string {
  const near = nearest(name, levelNames);
  return near === undefined ? `; expected one of ${levelNames.join(", ")}` : `; did you mean "${near}"?`;
}
