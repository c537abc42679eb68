import { mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { formatRecipe, soundRecipe } from "@drawcord/files";
import { expand } from "@drawcord/units";
import { beforeEach, describe, expect, it } from "vitest";
import { folder } from "../../../tests/support/folder.js";
import { run } from "./run.js";

const untidy = `lifts: {picks: 4,   rows: ["1", '2', 3, 2, 1]} # five rows
recipe:   1
title: "Small diamond"
ground: { weave: broken twill }
units: { threading: X 1-3   2-1 X, ends: 4 }
`;
const tidy = formatRecipe(untidy, "untidy");

let cwd = "";
const text = (name: string) => readFileSync(join(cwd, name), "utf8");
beforeEach(() => {
  cwd = folder();
  writeFileSync(join(cwd, "untidy.yaml"), untidy);
  writeFileSync(join(cwd, "tidy.yaml"), tidy);
  writeFileSync(join(cwd, "bad.yaml"), "recipe: [1");
});

describe("drawcord format", () => {
  it("lays a recipe out anew in place, and its cloth and comments stay", async () => {
    expect(await run(["format", "untidy.yaml"], { cwd })).toEqual({
      status: 0,
      stdout: "untidy.yaml was laid out anew\n",
      stderr: "",
    });
    expect(text("untidy.yaml")).toBe(tidy);
    expect(tidy).not.toBe(untidy);
    expect(tidy).toContain("# five rows");
    const drawdown = (recipe: string) => expand(soundRecipe(recipe, "r").draft).drawdown;
    expect(drawdown(tidy).equals(drawdown(untidy))).toBe(true);
  });

  it("does not touch a recipe that is laid out so already", async () => {
    const before = statSync(join(cwd, "tidy.yaml"));
    expect(await run(["format", "tidy.yaml"], { cwd })).toEqual({ status: 0, stdout: "", stderr: "" });
    const { ino, mtimeMs } = statSync(join(cwd, "tidy.yaml"));
    expect({ ino, mtimeMs }).toEqual({ ino: before.ino, mtimeMs: before.mtimeMs });
  });

  it("--check writes nothing and ends with 1 when a recipe would change", async () => {
    expect(await run(["format", "tidy.yaml", "--check"], { cwd })).toEqual({
      status: 0,
      stdout: "",
      stderr: "",
    });
    const changed = await run(["format", "untidy.yaml", "tidy.yaml", "--check"], { cwd });
    expect(changed).toEqual({
      status: 1,
      stdout: "untidy.yaml: not laid out as drawcord format does\n",
      stderr: "",
    });
    expect(text("untidy.yaml")).toBe(untidy);
  });

  it("writes another file with -o, and replaces one only with --force", async () => {
    expect((await run(["format", "untidy.yaml", "-o", "new.yaml"], { cwd })).status).toBe(0);
    expect([text("new.yaml"), text("untidy.yaml")]).toEqual([tidy, untidy]);
    const refused = await run(["format", "untidy.yaml", "-o", "bad.yaml"], { cwd });
    expect(refused).toMatchObject({ status: 2, stdout: "" });
    expect(text("bad.yaml")).toBe("recipe: [1");
    expect((await run(["format", "untidy.yaml", "-o", "bad.yaml", "--force"], { cwd })).status).toBe(0);
    expect(text("bad.yaml")).toBe(tidy);
  });

  it("prints what was piped in", async () => {
    const piped = await run(["format", "-"], { cwd, stdin: untidy });
    expect(piped).toEqual({ status: 0, stdout: tidy, stderr: "" });
  });

  it("does the rest of a folder when one of it cannot be read, and names that one", async () => {
    mkdirSync(join(cwd, "drafts"));
    for (const name of ["a", "b", "c"]) writeFileSync(join(cwd, `drafts/${name}.recipe.yaml`), untidy);
    writeFileSync(join(cwd, "drafts/b.recipe.yaml"), "recipe: [1");
    const { status, stderr, stdout } = await run(["format", "drafts"], { cwd });
    expect(status).toBe(2);
    expect(stdout).toBe("drafts/a.recipe.yaml was laid out anew\ndrafts/c.recipe.yaml was laid out anew\n");
    expect(stderr).toMatch(/^drafts\/b\.recipe\.yaml:1:11: [^\n]*\n$/);
    expect(text("drafts/b.recipe.yaml")).toBe("recipe: [1");
    expect(text("drafts/c.recipe.yaml")).toBe(tidy);
    expect(readdirSync(join(cwd, "drafts"))).toHaveLength(3);
  });

  it.each([
    [["a.yaml", "b.yaml", "-o", "c.yaml"], "drawcord format: -o takes one recipe, and 2 were named\n"],
    [
      ["a.yaml", "--check", "-o", "c.yaml"],
      "drawcord format: --check writes nothing, so it does not go with -o\n",
    ],
  ])("%j cannot be meant", async (argv, stderr) => {
    expect(await run(["format", ...argv], { cwd })).toEqual({ status: 2, stdout: "", stderr });
  });

  it.each([
    ["a draft", "[WIF]\nVersion=1.1\n", "x: this is a draft; only recipes are laid out\n"],
    ["a chart", "#.\n.#\n", "x: this is a chart; only recipes are laid out\n"],
  ])("%s is left alone", async (_, content, stderr) => {
    writeFileSync(join(cwd, "x"), content);
    expect(await run(["format", "x"], { cwd })).toEqual({ status: 2, stdout: "", stderr });
    expect(text("x")).toBe(content);
  });
});
