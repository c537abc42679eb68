import { expect, it } from "vitest";
import { formulasPage, glossaryPage, rulesPage } from "./support/pages.js";

it("docs/formulas.md lists every formula as the code has it", async () => {
  await expect(formulasPage()).toMatchFileSnapshot("../docs/formulas.md");
});

it("docs/rules.md lists every rule as the checker has it", async () => {
  await expect(rulesPage()).toMatchFileSnapshot("../docs/rules.md");
});

it("docs/glossary.md explains every term as sheets do", async () => {
  await expect(glossaryPage()).toMatchFileSnapshot("../docs/glossary.md");
});
