import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { run } from "./run.js";

const root = join(import.meta.dirname, "../../..");
const cwd = mkdtempSync(join(tmpdir(), "drawcord-follow-"));
afterAll(() => rmSync(cwd, { recursive: true }));

const follow = (...argv: string[]) => run(["follow", ...argv], { cwd });
const runner = join(root, "shared/recipes/runner.recipe.yaml");

describe("drawcord follow", () => {
  it("writes one page, and not over another unless told", async () => {
    expect(await follow(runner, "-o", "loom.html")).toEqual({
      status: 0,
      stdout: "loom.html was written\n",
      stderr: "",
    });
    expect(readFileSync(join(cwd, "loom.html"), "utf8")).toContain(
      "<title>Moth and lantern runner: at the loom</title>",
    );
    expect((await follow(runner, "-o", "loom.html")).stderr).toContain(
      "there is a file of this name already",
    );
    expect((await follow(runner, "-o", "loom.html", "--force")).status).toBe(0);
  });

  it("says on the page when the recipe has errors", async () => {
    await follow(join(root, "shared/recipes/faulty-runner.recipe.yaml"), "-o", "faulty.html");
    expect(readFileSync(join(cwd, "faulty.html"), "utf8")).toMatch(/"caution":"The checker finds \d+ errors/);
    expect(readFileSync(join(cwd, "loom.html"), "utf8")).not.toContain('"caution":');
  });

  it.each([
    [[runner], "name the file to write, as in -o runner-loom.html"],
    [[runner, "-o", "loom.pdf"], "loom.pdf: a page for the loom is written as .html"],
    [
      [join(root, "shared/drafts/towel.wif"), "-o", "t.html"],
      "this is a draft; only recipes have lifts to follow",
    ],
  ])("%s is told in a sentence", async (argv, sentence) => {
    const { status, stderr } = await follow(...argv);
    expect(stderr).toContain(sentence);
    expect(status).toBe(2);
    expect(existsSync(join(cwd, "t.html"))).toBe(false);
  });
});
