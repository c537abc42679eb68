import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { soundRecipe, starterRecipe } from "@drawcord/files";
import { assert, property, string } from "fast-check";
import { describe, expect, it } from "vitest";
import { folder } from "../../../tests/support/folder.js";
import { recipeFileName } from "../src/file-name.js";
import { run } from "./run.js";

describe("drawcord init", () => {
  it("writes a commented recipe that checks clean", async () => {
    const cwd = folder();
    const { status, stdout } = await run(["init"], { cwd });
    expect(status).toBe(0);
    expect(stdout).toMatch(/^first\.recipe\.yaml was written\.\n/);
    const text = readFileSync(join(cwd, "first.recipe.yaml"), "utf8");
    expect(text.match(/^# /gm)!.length).toBeGreaterThan(4);
    const checked = await run(["check", "first.recipe.yaml", "--fail-on", "note"], { cwd });
    expect(checked).toMatchObject({ status: 0, stderr: "" });
  });

  it("takes a name, or makes one from the title", async () => {
    const cwd = folder();
    await run(["init", "towel.yaml", "--title", "Fern towel"], { cwd });
    await run(["init", "--title", "Fern towel"], { cwd });
    expect(readdirSync(cwd).sort()).toEqual(["fern-towel.recipe.yaml", "towel.yaml"]);
    expect(readFileSync(join(cwd, "towel.yaml"), "utf8")).toBe(starterRecipe("Fern towel"));
  });

  it("prints it for -", async () => {
    const cwd = folder();
    expect(await run(["init", "-"], { cwd })).toEqual({ status: 0, stdout: starterRecipe(), stderr: "" });
    expect(readdirSync(cwd)).toEqual([]);
  });

  it("leaves a file that is there alone unless --force is given", async () => {
    const cwd = folder();
    writeFileSync(join(cwd, "first.recipe.yaml"), "mine");
    const refused = await run(["init"], { cwd });
    expect(refused).toMatchObject({ status: 2, stdout: "" });
    expect(refused.stderr).toContain("--force replaces it; nothing was written");
    expect(readFileSync(join(cwd, "first.recipe.yaml"), "utf8")).toBe("mine");
    expect((await run(["init", "--force"], { cwd })).status).toBe(0);
    expect(readFileSync(join(cwd, "first.recipe.yaml"), "utf8")).toBe(starterRecipe());
  });

  it.each(["\u001b[31mred\u001b[0m", "\u009b2J", "a: b # c", "'", "__proto__", "two\nlines", "null", "1e3"])(
    "the title %j comes back as it was given, or is refused, and never reaches the terminal raw",
    async (title) => {
      const cwd = folder();
      const { status, stdout, stderr } = await run(["init", "x.yaml", "--title", title], { cwd });
      const controls = /(?!\n)\p{Cc}/u;
      expect(stdout + stderr).not.toMatch(controls);
      if (status === 2) {
        expect(readdirSync(cwd)).toEqual([]);
        return;
      }
      expect(soundRecipe(readFileSync(join(cwd, "x.yaml")), "x.yaml").title).toBe(title);
      const report = await run(["check", "x.yaml"], { cwd });
      expect(report.status).toBe(0);
      expect(report.stdout).not.toMatch(controls);
    },
  );
});

describe("the name of a recipe's file", () => {
  it.each([
    ["Moth & lantern", "moth-lantern.recipe.yaml"],
    ["../../etc/passwd", "etc-passwd.recipe.yaml"],
    ["C:\\looms\\one", "c-looms-one.recipe.yaml"],
    ["Løvfald, blå", "løvfald-blå.recipe.yaml"],
    ["...", "recipe.recipe.yaml"],
    ["NUL", "recipe-nul.recipe.yaml"],
    ["\u001b[2J\u0000", "2j.recipe.yaml"],
  ])("%j gives %s", (title, name) => {
    expect(recipeFileName(title)).toBe(name);
  });

  it("is a plain short name in this folder, whatever the title", () =>
    assert(
      property(string({ unit: "binary", maxLength: 300 }), (title) => {
        const name = recipeFileName(title);
        expect(name).toMatch(/^[\p{L}\p{M}\p{N}-]+\.recipe\.yaml$/u);
        expect(Buffer.byteLength(name)).toBeLessThan(255);
      }),
    ));
});
