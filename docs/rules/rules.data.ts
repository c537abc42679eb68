import { rulePages, rules } from "@drawcord/check";

/** A line a rule, for the list of them. */
export interface RuleLine {
  readonly name: string;
  readonly severity: string;
  readonly summary: string;
}

declare const data: readonly RuleLine[];

export { data };

/** Read when the site is built, so that no page of it carries the rules. */
export default {
  load: (): readonly RuleLine[] =>
    rules.map(({ name, severity }) => ({ name, severity, summary: rulePages[name].summary })),
};
