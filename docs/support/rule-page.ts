import { type Example, type RuleName, rulePages, rules } from "@drawcord/check";
import { fragmentOf } from "../bench/share.js";
import { exampleFindings } from "./example-cloth.js";
import { exampleDrawing } from "./example-drawing.js";
import { exampleText } from "./example-text.js";
import { capital, escaped } from "./text.js";

/** What stands before the level of a rule. */
const LEVELS = {
  error: "An error: it would spoil the cloth",
  warning: "A warning: it may spoil the cloth",
  note: "A note: worth knowing",
} as const;

/**
 * The page of a rule: what it finds and why it matters, how to mend it, its limit and its source, and each of its examples
 * drawn and ready to be opened on the bench.
 * @param name of the rule
 */
export function rulePage(name: RuleName): string {
  const { severity } = rules.find((rule) => rule.name === name)!;
  const { summary, meaning, reason, mend, limit, source, examples } = rulePages[name];
  return [
    `# ${name}`,
    `<p class="level ${severity}">${LEVELS[severity]}.</p>`,
    `**${capital(summary)}.** ${meaning}`,
    "## At the loom",
    reason,
    "## To mend it",
    mend,
    ...(limit === undefined ? [] : ["## Its limit", limit]),
    "## What it finds",
    ...examples.fails.map((one) => figure(name, "fails", one)),
    "## What it lets pass",
    ...examples.passes.map((one) => figure(name, "passes", one)),
    "## Source",
    capital(source),
  ].join("\n\n");
}

function figure(rule: string, verdict: "fails" | "passes", example: Example): string {
  const findings = exampleFindings(rule, example);
  const told = verdict === "fails" ? findings.map(({ message }) => `<li>${escaped(message)}</li>`) : [];
  return [
    `<figure class="example ${verdict}">`,
    exampleDrawing(example, findings),
    `<figcaption>${escaped(capital(example.title))}.`,
    ...(told.length === 0 ? [] : [`<ul>${told.join("")}</ul>`]),
    ` <a class="to-bench" href="../index.html${fragmentOf(exampleText(example))}">Open it on the bench</a>`,
    "</figcaption></figure>",
  ].join("");
}
