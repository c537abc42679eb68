import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { SHORT_LIFT_CAUTION, WARP_CAUTION, WEIGHT_CAUTION } from "@drawcord/units";
import { describe, expect, it } from "vitest";
import { folder } from "../../../tests/support/folder.js";
import { run } from "./run.js";

const runner = readFileSync(new URL("../../../shared/recipes/runner.recipe.yaml", import.meta.url), "utf8");
const cwd = folder();

/** The runner, 75 units of which are drawn at once, with lingos of another weight. */
function recipeWith(lingo: string): string {
  const name = `lingos of ${lingo}.recipe.yaml`;
  writeFileSync(join(cwd, name), runner.replace("lingo-weight: 25 g", `lingo-weight: ${lingo}`));
  return name;
}

/** Everything that is printed of a recipe with a weight in it, each in one line. */
async function pages(name: string): Promise<Record<string, string>> {
  const page = async (...argv: string[]) => {
    const { stderr, stdout } = await run(argv, { cwd });
    expect(stderr).toBe("");
    return stdout.replace(/\s+/g, " ");
  };
  const sheet = async (part: string) => {
    const output = `${name} ${part}.html`;
    await run(["sheet", name, "-o", output, "--part", part], { cwd });
    return readFileSync(join(cwd, output), "utf8")
      .replace(/<[^>]+>/g, " ")
      .replace(/\s+/g, " ");
  };
  return {
    lifts: await page("lifts", name),
    "lifts, csv": await page("lifts", name, "--format", "csv"),
    "lifts, json": await page("lifts", name, "--format", "json"),
    plan: await page("plan", name),
    "sheet, lifts": await sheet("lifts"),
    "sheet, ground": await sheet("ground"),
  };
}

describe("a page with a weight on it", () => {
  it("carries the usual caution, however light the lift, and says who has the last word", async () => {
    for (const [page, text] of Object.entries(await pages(recipeWith("8 g")))) {
      expect(text, page).toContain(WEIGHT_CAUTION);
    }
    expect(WEIGHT_CAUTION).toMatch(
      /drops its lingos.*Repeated pulling.*hands and feet from beneath.*let no drawn handle slip.*maker of your loom.*Local rules.*qualified person.*overhead fixings.*teaching room/,
    );
  });

  it("has it in short where only one row is asked for", async () => {
    const { stdout } = await run(["lifts", recipeWith("25 g"), "--at", "row 7"], { cwd });
    expect(stdout.replace(/\s+/g, " ")).toContain(SHORT_LIFT_CAUTION);
  });

  it.each([
    ["90 g", /6\.8 kg of lingos is heavy: pull a few handles at a time/, /too much to draw/],
    [
      "470 g",
      /35\.3 kg of lingos is too much to draw as it stands: ask the maker of the loom first/,
      /is heavy/,
    ],
  ])("says of lingos of %s what such a lift asks", async (lingo, said, unsaid) => {
    for (const [page, text] of Object.entries(await pages(recipeWith(lingo)))) {
      expect(text, page).toMatch(said);
      if (!page.startsWith("lifts, csv")) expect(text, page).not.toMatch(unsaid);
    }
  });
});

describe("a page about winding, stretching and cutting off a warp", () => {
  it.each([
    ["a recipe", recipeWith("25 g")],
    ["a plain draft", fileURLToPath(new URL("../../../shared/drafts/towel.wif", import.meta.url))],
  ])("says of %s to mind the tension, and washing to mind heat, dye and dust", async (_, file) => {
    await run(["sheet", file, "-o", "warp.html", "--part", "warping", "--part", "cautions", "--force"], {
      cwd,
    });
    const text = readFileSync(join(cwd, "warp.html"), "utf8");
    expect(text).toContain(WARP_CAUTION);
    expect(text).toMatch(/let the tension off, and then cut it off/);
    expect(text).toMatch(/hot water.*dust.*dye.*makers of yarn and dye/);
  });
});
