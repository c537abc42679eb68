import { type Example, examplePicture, rulePages, rules } from "@drawcord/check";
import { defineCommand } from "../command.js";
import { didYouMean } from "../did-you-mean.js";
import { CliError } from "../error.js";
import { type Paint, paintFor } from "../paint.js";
import { table, wrapText } from "../text.js";

type Rule = (typeof rules)[number];

export const command = defineCommand({
  operands: "[RULE]",
  help: "Lists the rules that a cloth is checked by. With the name of a rule: what a finding of it means, why it matters at the loom, how to mend it, where the rule comes from, and cloths that pass and fail.",
  examples: [
    ["drawcord rules", "lists every rule"],
    ["drawcord rules open-cut", "explains one"],
  ],
  options: {},
  async run({ operands: [name] }, io) {
    const paint = paintFor(io);
    if (name === undefined) {
      const rows = rules.map(
        (rule) => [rule.name, `${rule.severity}: ${rulePages[rule.name].summary}`] as const,
      );
      await io.stdout.write(`${table(rows, io.width)}\n`);
      return 0;
    }
    const rule = rules.find((candidate) => candidate.name === name);
    if (rule === undefined) {
      const known = rules.map((candidate) => candidate.name);
      const hint = didYouMean(name, known) || `; there are ${known.join(", ")}`;
      throw new CliError("unknown-rule", `no rule is called "${name}"${hint}`, { rule: name });
    }
    await io.stdout.write(page(rule, io.width, paint));
    return 0;
  },
});

function page({ name, severity }: Rule, width: number, paint: Paint): string {
  const rule = rulePages[name];
  const parts = [
    `${paint.strong(name)}  ${severity}: ${rule.summary}`,
    part("What it means", rule.meaning, width, paint),
    part("Why it matters", rule.reason, width, paint),
    part("How to mend it", rule.mend, width, paint),
    ...(rule.limit !== undefined ? [part("Its limit", rule.limit, width, paint)] : []),
    part("Source", rule.source, width, paint),
    ...rule.examples.passes.map((example) => drawing("Passes", example, paint)),
    ...rule.examples.fails.map((example) => drawing("Fails", example, paint)),
  ];
  return `${parts.join("\n\n")}\n`;
}

function part(heading: string, text: string, width: number, paint: Paint): string {
  const lines = wrapText(text, Math.min(width, 80) - 2);
  return [paint.strong(heading), ...lines.map((line) => `  ${line}`)].join("\n");
}

/** The last pick, or row, on top. */
function drawing(heading: string, example: Example, paint: Paint): string {
  const drawn = examplePicture(example);
  return [`${paint.strong(heading)}: ${example.title}`, ...drawn.split("\n").map((line) => `  ${line}`)].join(
    "\n",
  );
}
