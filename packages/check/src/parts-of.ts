import type { Finding } from "./finding.js";
import { rulesOfNumbers } from "./number-rules.js";
import type { RecipePart } from "./rules/parts.js";
import type { AnyRule } from "./rules/rule.js";
import { rules } from "./rules.js";

/**
 * The parts of a recipe that a finding may be about, the nearest first: where it can be mended.
 * @param finding a finding of any rule
 * @example partsOf(check({ ...draft, lifts: [[1], [3]] }).findings[0])[0] // { row: 2 }
 */
export function partsOf(finding: Finding): readonly RecipePart[] {
  const rule: AnyRule | undefined = [...rulesOfNumbers, ...rules].find(({ name }) => name === finding.rule);
  return rule?.parts(finding) ?? [];
}
