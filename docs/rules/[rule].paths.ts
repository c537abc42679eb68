import { rules } from "@drawcord/check";
import { rulePage } from "../support/rule-page.js";

/** A page a rule, from the rule's own data. */
export default {
  paths: () => rules.map((rule) => ({ params: { rule: rule.name }, content: rulePage(rule.name) })),
};
