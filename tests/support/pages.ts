import { type Example, examplePicture, rulePages, rules } from "@drawcord/check";
import { glossary } from "@drawcord/sheet";
import { type Formula, formulas } from "@drawcord/yarn";

const CREATED = (what: string, where: string): string =>
  `Written from ${what} in \`${where}\`; \`npx vitest run tests/docs.test.ts -u\` writes it anew.`;

/** The page of formulas: every one with its symbols, limits and source. */
export function formulasPage(): string {
  const parts = Object.entries<Formula>(formulas).map(([id, formula]) => {
    const { title, expression, symbols, result, source, validity } = formula;
    const rows = Object.entries(symbols).map(([symbol, { meaning, kind, bare, usual }]) => {
      const assumed = usual === undefined ? "" : `${usual.value} ${usual.unit} (${usual.assumed})`;
      return `| \`${symbol}\` | ${meaning} | ${bare ?? kind} | ${assumed} |`;
    });
    return [
      `## ${title}`,
      "",
      `\`${id}\``,
      "",
      "```text",
      `${result.symbol} = ${expression}`,
      "```",
      "",
      "| symbol | meaning | unit or kind | taken where nothing is given |",
      "| --- | --- | --- | --- |",
      ...rows,
      "",
      ...(validity === undefined ? [] : [`Holds: ${validity}`, ""]),
      `Source: ${source}`,
    ].join("\n");
  });
  return page(
    "Formulas",
    "Every formula that Drawcord works with. Quantities carry their units; a share stands for a fraction of 1.",
    CREATED("the registry", "packages/yarn/src/formulas"),
    parts,
  );
}

/** The page of terms: every one of the trade that sheets and messages use. */
export function glossaryPage(): string {
  const parts = glossary.map(({ forms = [], meaning, term }) => {
    const also = forms.length === 0 ? "" : ` Also: ${forms.join(", ")}.`;
    return `## ${term}\n\n${meaning}${also}`;
  });
  return page(
    "Glossary",
    "The terms of the trade that sheets and messages use, each in the words of this house.",
    CREATED("the terms", "packages/sheet/src/glossary/terms.ts"),
    parts,
  );
}

/** The page of rules: what each finding means, why it matters at the loom, how to mend it, and what it looks like. */
export function rulesPage(): string {
  const parts = rules.map(({ name, severity }) => {
    const { summary, meaning, reason, mend, limit, source, examples } = rulePages[name];
    return [
      `## ${name}`,
      `${severity}: ${summary}`,
      meaning,
      `**At the loom.** ${reason}`,
      `**To mend it.** ${mend}`,
      ...(limit !== undefined ? [`**Its limit.** ${limit}`] : []),
      `Source: ${source}`,
      ...examples.passes.map((example) => picture("Passes", example)),
      ...examples.fails.map((example) => picture("Fails", example)),
    ].join("\n\n");
  });
  return page(
    "Rules",
    "What the checker looks for. The first three are for plain shaft drafts alone. Every rule has pictures of cloth that passes and of cloth that fails: `#` is an end over the pick, the first pick is woven at the bottom; where only the plan matters, `#` is a drawn unit, under its shafts. A recipe gives a rule another level, or switches it off, with `limits: { levels: { thin-area: off } }`, and accepts a finding with `waive`, by the rule, the place and a reason.",
    CREATED("the rules", "packages/check/src/rules"),
    parts,
  );
}

function picture(verdict: string, example: Example): string {
  return `${verdict}: ${example.title}\n\n\`\`\`text\n${examplePicture(example)}\n\`\`\``;
}

function page(title: string, lead: string, created: string, parts: readonly string[]): string {
  return `${[`# ${title}`, lead, created, ...parts].join("\n\n")}\n`;
}
