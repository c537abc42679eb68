import { expect, it } from "vitest";
import { formulasPage, rulesPage } from "./support/pages.js";

it("docs/formulas.md lists every formula as the code has it", async () => {
  await expect(formulasPage()).toMatchFileSnapshot("../docs/formulas.md");
});

it("docs/rules.md lists every rule as the checker has it", async () => {
  await expect(rulesPage()).toMatchFileSnapshot("../docs/rules.md");
});
