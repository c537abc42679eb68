import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { rules } from "@drawcord/check";
import { describe, expect, it } from "vitest";
import { errorCodes } from "../docs/support/error-codes.js";
import { run } from "../packages/cli/test/run.js";
import { root } from "./support/packages.js";

const { homepage } = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as { homepage: string };
const faulty = join(root, "shared/recipes/faulty-runner.recipe.yaml");

/** The addresses of the project's site that a text has. */
function linksIn(text: string): readonly string[] {
  const links = text.match(new RegExp(`${homepage.replaceAll(".", "\\.")}[\\w/.#-]*`, "g")) ?? [];
  return [...new Set(links)];
}

/** Whether the site has a page, and of the page of codes the anchor too. */
function isThere(link: string): boolean {
  const [page = "", anchor = ""] = link.slice(homepage.length + 1).split("#");
  if (page === "") return true;
  const [, rule] = /^rules\/(.+)\.html$/.exec(page) ?? [];
  if (rule !== undefined) return rules.some(({ name }) => name === rule);
  if (page === "codes.html") return errorCodes(root).some(({ code }) => code === anchor);
  return existsSync(join(root, "docs", page.replace(/\.html$/, ".md")));
}

describe.each(["json", "sarif", "github", "markdown"])("a report as %s", (format) => {
  it("leads from rules and causes to pages that the site has", async () => {
    const causes = await run(["check", faulty, "--format", format, "--seconds", "1"]);
    const symptoms = await run(["check", faulty, "--format", format, "--rule", "open-cut"]);
    const links = linksIn(causes.stdout + symptoms.stdout);
    expect(links.filter((link) => !isThere(link))).toEqual([]);
    expect(links).toContain(`${homepage}/guide/report.html`);
    expect(links).toContain(`${homepage}/rules/open-cut.html`);
  });
});

it.each(["sarif", "github", "markdown"])(
  "%s leads from a file that cannot be used to what its code means",
  async (format) => {
    const { stdout } = await run(["check", "-", "--format", format], { stdin: "recipe: 1\ngrund: 3\n" });
    const links = linksIn(stdout).filter((link) => link.includes("#"));
    expect(links).toContain(`${homepage}/codes.html#unknown-key`);
    expect(links.filter((link) => !isThere(link))).toEqual([]);
  },
);
