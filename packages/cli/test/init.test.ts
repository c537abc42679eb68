import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { soundRecipe, starterRecipe } from "@drawcord/files";
import { assert, property, string } from "fast-check";
import { describe, expect, it } from "vitest";
import { folder } from "../../../tests/support/folder.js";
import { recipeFileName } from "../src/file-name.js";
import { run } from "./run.js";

/** The schema in the package of the command. */
const shipped = new URL("../recipe.schema.json", import.meta.url).href;

describe("drawcord init", () => {
  it("leads editors to the schema of the command that is installed around the file, or else of the one that runs", async () => {
    const cwd = folder();
    const schemaOf = async (file: string) => {
      await run(["init", file], { cwd });
      const [, second] = readFileSync(join(cwd, file), "utf8").split("\n");
      return second!.replace("# yaml-language-server: $schema=", "");
    };
    expect(await schemaOf("a.yaml")).toBe(shipped);
    mkdirSync(join(cwd, "node_modules/drawcord"), { recursive: true });
    mkdirSync(join(cwd, "towels/summer"), { recursive: true });
    writeFileSync(join(cwd, "node_modules/drawcord/recipe.schema.json"), "{}");
    expect(await schemaOf("b.yaml")).toBe("node_modules/drawcord/recipe.schema.json");
    expect(await schemaOf("towels/summer/c.yaml")).toBe("../../node_modules/drawcord/recipe.schema.json");
  });

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
    expect(readFileSync(join(cwd, "towel.yaml"), "utf8")).toBe(starterRecipe("Fern towel", shipped));
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
    expect(readFileSync(join(cwd, "first.recipe.yaml"), "utf8")).toBe(starterRecipe(undefined, shipped));
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

describe("drawcord init --from", () => {
  const towel = new URL("../../../shared/drafts/towel.wif", import.meta.url).pathname;

  it("makes a recipe of a draft that weaves the same cloth", async () => {
    const cwd = folder();
    const made = await run(["init", "--from", towel], { cwd });
    expect(made).toMatchObject({ status: 0, stderr: "" });
    expect(made.stdout).toContain("lozenge-towel.recipe.yaml was written.");
    const ofDraft = await run(["expand", towel, "--format", "text"]);
    const ofRecipe = await run(["expand", "lozenge-towel.recipe.yaml", "--format", "text"], { cwd });
    expect(ofRecipe.stdout).toBe(ofDraft.stdout);
  });

  it("takes a title of its own, and a draft that is piped in", async () => {
    const wif = readFileSync(towel, "utf8");
    const { stdout } = await run(["init", "-", "--from", "-", "--title", "Guest towel"], { stdin: wif });
    expect(soundRecipe(stdout, "made").title).toBe("Guest towel");
  });

  it("is named after the draft's file where the draft has no title", async () => {
    const cwd = folder();
    writeFileSync(join(cwd, "my towel.wif"), readFileSync(towel, "utf8").replace("Title=", "Author="));
    await run(["init", "--from", "my towel.wif"], { cwd });
    const text = readFileSync(join(cwd, "my-towel.recipe.yaml"), "utf8");
    expect(soundRecipe(text, "made").title).toBeUndefined();
    expect(text).toContain("By Lozenge towel.");
  });

  it("says what of a draft is not used, and refuses what is no draft", async () => {
    const cwd = folder();
    const odd = `${readFileSync(towel, "utf8")}\n[PRIVATE ODD THINGS]\na=b\n`.replace(
      "[TEXT]",
      "PRIVATE ODD THINGS=true\n[TEXT]",
    );
    const told = await run(["init", "-", "--from", "-"], { stdin: odd });
    expect(told).toMatchObject({ status: 0, stderr: "standard input: not used: [PRIVATE ODD THINGS]\n" });
    const refused = await run(["init", "x.yaml", "--from", "-"], { cwd, stdin: starterRecipe() });
    expect(refused).toMatchObject({ status: 2, stdout: "" });
    expect(refused.stderr).toContain("standard input is no weaving draft; --from takes a WIF");
    expect(readdirSync(cwd)).toEqual([]);
  });
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
