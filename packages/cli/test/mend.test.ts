import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { run } from "./run.js";

/** A point threading with one unit astray, a mirrored lift plan, and a ground begun a pick late. */
const faulty = `# A sampler for the small loom.
recipe: 1
ground:
  shafts: 4
  threading: 1 2 3 4
  steps: # begun late
    - { raise: 2, sink: 3 }
    - { raise: 3, sink: 2 }
    - { raise: 4, sink: 1 }
    - { raise: 1, sink: 4 }
units:
  ends: 4
  threading: 1-5 4 2 2 1 # a point
lifts:
  picks: 4
  rows:
    - 5
    - 4 5   # wider
    - 3-5
    - 2-4
    - 1-3
    - 2-4
    - 3-5
    - 4
    - 5
`;

let cwd = "";
beforeEach(() => {
  cwd = mkdtempSync(join(tmpdir(), "drawcord-mend-"));
  writeFileSync(join(cwd, "sampler.recipe.yaml"), faulty);
});
afterEach(() => rmSync(cwd, { recursive: true }));

const read = (name: string) => readFileSync(join(cwd, name), "utf8");

describe("drawcord check --mend", () => {
  it("writes the mended recipe, its comments kept, and says what it changed", async () => {
    const argv = ["check", "sampler.recipe.yaml", "--mend", "mended.recipe.yaml", "--format", "json"];
    const { status, stderr } = await run(argv, { cwd });
    expect(status).toBe(0);
    expect(stderr.trimEnd().split("\n")).toEqual([
      "sampler.recipe.yaml: threading-slip mended: hang unit 7 on shaft 3 (2 squares turned)",
      expect.stringMatching(
        /^sampler\.recipe\.yaml: lift-slip mended: draw just shafts? .* in row [28] \(\d+ squares? turned\)$/,
      ),
      "sampler.recipe.yaml: open-cut mended: begin the ground's treadling 1 step later",
      "mended.recipe.yaml: the mended recipe",
    ]);
    const mended = read("mended.recipe.yaml");
    for (const comment of ["# A sampler for the small loom.", "# begun late", "# a point", "# wider"]) {
      expect(mended).toContain(comment);
    }
    const again = await run(["check", "mended.recipe.yaml"], { cwd });
    expect(again.stdout).toMatch(/\n0 findings/);
    expect(read("sampler.recipe.yaml")).toBe(faulty);
  });

  it("replaces a file only when it is told to", async () => {
    writeFileSync(join(cwd, "mended.recipe.yaml"), "mine");
    const argv = ["check", "sampler.recipe.yaml", "--mend", "mended.recipe.yaml", "--quiet"];
    const { status, stderr } = await run(argv, { cwd });
    expect(status).toBe(2);
    expect(stderr).toBe(
      "mended.recipe.yaml: there is a file of this name already; --force replaces it; nothing was written\n",
    );
    expect(read("mended.recipe.yaml")).toBe("mine");
    await run([...argv, "--force"], { cwd });
    expect(read("mended.recipe.yaml")).toContain("# A sampler");
    expect(readdirSync(cwd).sort()).toEqual(["mended.recipe.yaml", "sampler.recipe.yaml"]);
  });

  it("writes nothing where there is nothing to mend", async () => {
    await run(["check", "sampler.recipe.yaml", "--mend", "good.recipe.yaml"], { cwd });
    const { stderr } = await run(["check", "good.recipe.yaml", "--mend", "better.recipe.yaml"], { cwd });
    expect(stderr).toBe("good.recipe.yaml: no mend was found, so nothing was written\n");
    expect(readdirSync(cwd)).not.toContain("better.recipe.yaml");
  });

  it("mends what is piped in", async () => {
    const { status } = await run(["check", "-", "--mend", "piped.recipe.yaml"], { cwd, stdin: faulty });
    expect(status).toBe(0);
    expect(read("piped.recipe.yaml")).toContain("# A sampler");
  });

  it("refuses more than one recipe", async () => {
    const argv = ["check", "sampler.recipe.yaml", "sampler.recipe.yaml", "--mend", "out.recipe.yaml"];
    const { status, stderr } = await run(argv, { cwd });
    expect(status).toBe(2);
    expect(stderr).toBe("drawcord check --mend mends one recipe at a time, not 2\n");
  });

  it("says so when the rows to be mended are drawn in a picture", async () => {
    const picture = `  picture: |\n${["....#", "...##", "..###", ".###.", "###..", ".###.", "..###", "...#.", "....#"].map((row) => `    ${row}\n`).join("")}`;
    const drawn = faulty.replace(/ {2}rows:\n[\s\S]*$/, picture);
    const { status, stderr } = await run(["check", "-", "--mend", "out.recipe.yaml"], { cwd, stdin: drawn });
    expect(status).toBe(2);
    expect(stderr).toMatch(
      /^standard input:\d+: the rows to be mended are drawn in a picture or put together from blocks; mend them there\n$/,
    );
    expect(readdirSync(cwd)).toEqual(["sampler.recipe.yaml"]);
  });
});
