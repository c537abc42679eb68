import { rules } from "@drawcord/check";
import { draftRules } from "@drawcord/files";
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

/** The page of rules: what each finding means, why it matters at the loom, and how to mend it. */
export function rulesPage(): string {
  const parts = [...rules, ...draftRules].map(({ name, severity, summary, meaning, reason, mend, source }) =>
    [
      `## ${name}`,
      "",
      `${severity}: ${summary}`,
      "",
      meaning,
      "",
      `**At the loom.** ${reason}`,
      "",
      `**To mend it.** ${mend}`,
      "",
      `Source: ${source}`,
    ].join("\n"),
  );
  return page(
    "Rules",
    "What the checker looks for. A plain shaft draft has rules of its own at the end.",
    CREATED("the rules", "packages/check/src/rules"),
    parts,
  );
}

function page(title: string, lead: string, created: string, parts: readonly string[]): string {
  return `${[`# ${title}`, lead, created, ...parts].join("\n\n")}\n`;
}
