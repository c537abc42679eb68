import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { run } from "./run.js";

const root = join(import.meta.dirname, "../../..");
const cwd = mkdtempSync(join(tmpdir(), "drawcord-lesson-"));
afterAll(() => rmSync(cwd, { recursive: true }));

const runner = join(root, "shared/recipes/runner.recipe.yaml");

describe("drawcord exercise", () => {
  it("writes a sheet a student, the key and the worked answers, the same for the same seed", async () => {
    const set = (name: string, seed: string) =>
      run(["exercise", runner, "-o", name, "--level", "2", "--count", "3", "--seed", seed, "--apart"], {
        cwd,
      });
    expect((await set("class.html", "7")).stdout).toBe(
      ["class-1.html", "class-2.html", "class-3.html", "class-key.html", "class-worked.html"]
        .map((name) => `${name} was written\n`)
        .join(""),
    );
    await set("again.html", "7");
    await set("other.html", "8");
    const sheet = (name: string) => readFileSync(join(cwd, name), "utf8");
    expect(sheet("again-2.html")).toBe(sheet("class-2.html"));
    expect(sheet("again-key.html")).toBe(sheet("class-key.html"));
    expect(sheet("other-2.html")).not.toBe(sheet("class-2.html"));
    expect(sheet("class-1.html")).not.toBe(sheet("class-2.html"));
  });

  it("sets the tasks that are named, and writes nothing when one is unknown", async () => {
    const before = readdirSync(cwd).length;
    const { status, stderr } = await run(["exercise", runner, "-o", "x.html", "--task", "song"], { cwd });
    expect(status).toBe(2);
    expect(stderr).toContain(
      "--task takes one of numbers, sett, plan, drawdown, back, thread, float, cut, slack, slip, ground",
    );
    expect(readdirSync(cwd).length).toBe(before);
    await run(["exercise", runner, "-o", "slips.md", "--task", "slip", "--task", "slip"], { cwd });
    expect(readFileSync(join(cwd, "slips.md"), "utf8").match(/Spot the slip/g)?.length).toBe(2);
  });

  it("binds a class with its key and the worked answers into one file", async () => {
    const bind = (name: string) =>
      run(["exercise", runner, "-o", name, "--level", "2", "--count", "3"], { cwd });
    expect((await bind("bound.html")).stdout).toBe("bound.html was written\n");
    const html = readFileSync(join(cwd, "bound.html"), "utf8");
    expect(html.match(/<h1 /g)?.length).toBe(5);
    expect(html).toContain("sheet 3 of 3");
    const { status, stderr } = await bind("bound.svg");
    expect(status).toBe(2);
    expect(stderr).toContain("a class in one file is written as .html, .pdf or .md");
  });
});

describe("slides", () => {
  it.each([
    ["exercise", ["--level", "2"]],
    ["why", ["--end", "41", "--pick", "77"]],
    ["sheet", ["--part", "lifts"]],
  ])("of %s are one page, and nothing but a page", async (command, more) => {
    const name = `${command}-slides.html`;
    const { stdout } = await run([command, runner, "-o", name, "--slides", ...more], { cwd });
    expect(stdout).toBe(`${name} was written\n`);
    expect(readFileSync(join(cwd, name), "utf8").match(/class="slide"/g)!.length).toBeGreaterThan(4);
    const { status, stderr } = await run([command, runner, "-o", "x.pdf", "--slides", ...more], { cwd });
    expect([status, stderr.trim()]).toEqual([2, "x.pdf cannot hold slides; they are written as .html"]);
  });
});

describe("drawcord paper", () => {
  it.each(["units", "wraps", "ticks", "label"])("prints %s", async (kind) => {
    const name = `${kind}.html`;
    const { status, stdout } = await run(["paper", runner, "-o", name, "--kind", kind], { cwd });
    expect([status, stdout]).toEqual([0, `${name} was written\n`]);
    expect(readFileSync(join(cwd, name), "utf8")).toContain("<!doctype html>");
  });

  it("names the yarns that there are", async () => {
    const { status, stderr } = await run(
      ["paper", runner, "-o", "y.html", "--kind", "wraps", "--yarn", "silk"],
      { cwd },
    );
    expect(status).toBe(2);
    expect(stderr).toContain('there is no yarn "silk"; the recipe has warp, weft');
  });
});

describe("drawcord practice", () => {
  it("writes one page, with tasks and their answers where they are asked for", async () => {
    expect((await run(["practice", runner, "-o", "loom.html"], { cwd })).stdout).toBe(
      "loom.html was written\n",
    );
    const page = (name: string) => readFileSync(join(cwd, name), "utf8");
    expect(page("loom.html")).toContain('"judged":[]');
    await run(["practice", runner, "-o", "tasks.html", "--task", "cut", "--check"], { cwd });
    expect(page("tasks.html")).toContain("Find the open cut");
    expect(page("tasks.html")).toContain('"counts"');
    const { status, stderr } = await run(["practice", runner, "-o", "loom.pdf"], { cwd });
    expect(status).toBe(2);
    expect(stderr).toContain("name the page to write, as in -o practice.html");
  });
});

describe("drawcord why", () => {
  it("says how a crossing comes about, as words, data and a page", async () => {
    const crossing = ["why", runner, "--end", "41", "--pick", "77"];
    expect((await run(crossing)).stdout).toContain("So end 41 lies over pick 77");
    const { stdout } = await run([...crossing, "--format", "json"]);
    expect(JSON.parse(stdout)).toMatchObject({ end: 41, pick: 77, raised: true, row: 20 });
    await run([...crossing, "-o", "why.html"], { cwd });
    expect(readFileSync(join(cwd, "why.html"), "utf8")).toContain("How this square comes about");
  });

  it("asks the piece that is named", async () => {
    const seasons = join(root, "shared/recipes/seasons.recipe.yaml");
    const ask = async (...more: string[]) => {
      const { stdout } = await run([
        "why",
        seasons,
        "--end",
        "60",
        "--pick",
        "300",
        "--format",
        "json",
        ...more,
      ]);
      return JSON.parse(stdout) as { draws: readonly number[] };
    };
    expect(await ask()).toEqual(await ask("--piece", "tulips"));
    expect(await ask("--piece", "stars")).not.toEqual(await ask("--piece", "tulips"));
  });

  it("names the crossing that it needs, and the ends that there are", async () => {
    const missing = await run(["why", runner, "--end", "41"]);
    expect(missing.stderr).toContain("drawcord why: name the crossing, as in --end 41 --pick 77");
    const outside = await run(["why", runner, "--end", "400", "--pick", "1"]);
    expect(outside).toMatchObject({ status: 2, stdout: "" });
    expect(outside.stderr).toContain("end 400 is asked for; the cloth has ends 1 to 324");
  });
});
