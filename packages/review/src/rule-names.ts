import { nearest } from "@drawcord/base";
import { type CheckOptions, type RuleName, rules } from "@drawcord/check";
import { FileError, type Path, placesOf, type Recipe } from "@drawcord/files";

/**
 * The levels and the waivers of a recipe, once its rules are known to be rules.
 * @throws {FileError} `unknown-key` or `bad-value` at the name that is none
 */
export function namedRules(recipe: Recipe): Required<Pick<CheckOptions, "levels" | "waive">> {
  const levels = Object.entries(recipe.levels).map(([name, level]) => {
    if (isRule(name)) return [name, level] as const;
    throw refusal(
      recipe,
      "unknown-key",
      ["limits", "levels", name],
      `unknown key "${name}" in limits.levels`,
      name,
    );
  });
  const waive = recipe.waive.map(({ rule, ...waiver }, i) => {
    if (isRule(rule)) return { rule, ...waiver };
    const said = `waive, item ${i + 1}.rule is ${rule}`;
    throw refusal(recipe, "bad-value", ["waive", i, "rule"], said, rule);
  });
  return { levels: Object.fromEntries(levels), waive };
}

/** Whether there is a rule of this name. */
function isRule(name: string): name is RuleName {
  return rules.some((rule) => rule.name === name);
}

function refusal(
  recipe: Recipe,
  code: "unknown-key" | "bad-value",
  path: Path,
  said: string,
  name: string,
): FileError {
  const names = rules.map((rule) => rule.name);
  const near = nearest(name, names);
  const hint = near === undefined ? `; expected one of ${names.join(", ")}` : `; did you mean "${near}"?`;
  return new FileError(code, `${said}${hint}`, recipe.file, placesOf(recipe).at(path)!);
}
