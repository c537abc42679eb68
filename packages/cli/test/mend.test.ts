import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
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

const examples = join(import.meta.dirname, "..", "..", "..", "shared", "recipes");

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
    const [made, threaded, ...others] = stderr.trimEnd().split("\n");
    expect(threaded).toContain("mended: unit 7 hangs on shaft 2 where the rest of the threading says 3");
    expect(made).toBe(
      "sampler.recipe.yaml: mended: row 8 leaves shaft 5 down where the rest of the plan does not: draw shaft 5 in row 8",
    );
    // Begun a step earlier or a step later it would cut: the weaver says which.
    expect(others[0]).toMatch(
      /^sampler\.recipe\.yaml: not mended, as it is not sure: the ground is begun .*; or begin/,
    );
    expect(others.at(-1)).toBe("mended.recipe.yaml: the mended recipe");
    const mended = read("mended.recipe.yaml");
    for (const comment of ["# A sampler for the small loom.", "# begun late", "# a point", "# wider"]) {
      expect(mended).toContain(comment);
    }
    const again = await run(["check", "mended.recipe.yaml"], { cwd });
    expect(again.stdout).not.toContain("row 8");
    expect(read("sampler.recipe.yaml")).toBe(faulty);
  });

  it("mends the faulty runner of the examples but for the start of its ground, which is not sure", async () => {
    const faultyRunner = readFileSync(join(examples, "faulty-runner.recipe.yaml"), "utf8");
    const { stderr } = await run(["check", "-", "--mend", "runner.recipe.yaml"], {
      cwd,
      stdin: faultyRunner,
    });
    const said = stderr.trimEnd().split("\n");
    for (const edit of [
      "tie step 7 of the ground to raise shaft 4 and to sink shaft 1",
      "leave shaft 15 down in row 4; leave shaft 15 down in row 34",
      "leave shaft 14 down in row 3; leave shaft 14 down in row 35",
      "hang unit 37 on shaft 8",
      "write 324 for stated.ends",
      "write 27 cm for stated.width-in-reed",
    ]) {
      expect(
        said.filter((line) => line.startsWith("standard input: mended: ") && line.endsWith(`: ${edit}`)),
      ).toHaveLength(1);
    }
    expect(
      said.filter((line) => line.includes("not mended, as it is not sure: the ground is begun")),
    ).toHaveLength(1);
    // Every line but those with a slip in them is as it was, and so is every comment.
    const mended = read("runner.recipe.yaml");
    const lines = mended.split("\n");
    const [before, whole] = [faultyRunner, readFileSync(join(examples, "runner.recipe.yaml"), "utf8")].map(
      (text) => text.split("\n"),
    );
    expect(lines.filter((line) => /^\s*#|\s# /.test(line))).toEqual(
      before!.filter((line) => /^\s*#|\s# /.test(line)),
    );
    expect(before!.filter((line) => !lines.includes(line)).length).toBeLessThan(7);
    const squeezed = (all: readonly string[]) => all.map((line) => line.replaceAll(" ", ""));
    for (const line of ["line:{rows:[1-13]}", "edge:{rows:[13]}"]) {
      expect([line, squeezed(whole!).includes(line), squeezed(lines).includes(line)]).toEqual([
        line,
        true,
        true,
      ]);
    }
    const { stdout } = await run(["check", "runner.recipe.yaml", "--format", "json"], { cwd });
    expect(JSON.parse(stdout).summary).toMatchObject({ error: 0 });
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
    writeFileSync(join(cwd, "good.recipe.yaml"), readFileSync(join(examples, "runner.recipe.yaml")));
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

  it("mends rows that are drawn in a picture, square by square", async () => {
    const rows = ["....#", "...##", "..###", ".###.", "###..", ".###.", "..###", "...#.", "....#"];
    const picture = `  picture: |\n${rows.map((row) => `    ${row}\n`).join("")}# the end\n`;
    const drawn = faulty.replace(/ {2}rows:\n[\s\S]*$/, picture);
    const { status, stderr } = await run(["check", "-", "--mend", "out.recipe.yaml"], { cwd, stdin: drawn });
    expect(status).toBe(0);
    expect(stderr).toMatch(/\nout\.recipe\.yaml: the mended recipe\n$/);
    const changed = read("out.recipe.yaml")
      .split("\n")
      .filter((line) => /^ +[#.]+$/.test(line))
      .filter((line, i) => line.trim() !== rows[i]);
    expect(changed).toHaveLength(1);
    expect(read("out.recipe.yaml")).toContain("# the end\n");
  });

  it("mends no draft and no chart", async () => {
    const chart = "#.#.\n.#.#\n#.#.\n.#.#\n";
    const { stderr } = await run(["check", "-", "--mend", "out.recipe.yaml"], { cwd, stdin: chart });
    expect(stderr).toBe("standard input: only a recipe can be mended; nothing was written\n");
    expect(readdirSync(cwd)).toEqual(["sampler.recipe.yaml"]);
  });

  it.each([
    ["no/such/out.yaml", "no/such/out.yaml: there is no such folder; nothing was written\n"],
    [
      "sampler.recipe.yaml/x",
      "sampler.recipe.yaml/x: a part of this path is a file, not a folder; nothing was written\n",
    ],
    ["drafts", "drafts: this is a folder; name a file in it; nothing was written\n"],
    ["/dev/full", "/dev/full: the disk is full\n"],
  ])("leaves the original whole where %s cannot be written", async (output, sentence) => {
    mkdirSync(join(cwd, "drafts"));
    const { status, stderr } = await run(["check", "sampler.recipe.yaml", "--mend", output], { cwd });
    expect({ status, stderr }).toEqual({ status: 2, stderr: sentence });
    expect(read("sampler.recipe.yaml")).toBe(faulty);
    expect(readdirSync(cwd).sort()).toEqual(["drafts", "sampler.recipe.yaml"]);
  });

  it("mends a recipe in its place with --force", async () => {
    const argv = ["check", "sampler.recipe.yaml", "--mend", "sampler.recipe.yaml", "--force"];
    expect((await run(argv, { cwd })).status).toBe(0);
    expect(read("sampler.recipe.yaml")).not.toBe(faulty);
    expect(read("sampler.recipe.yaml")).toContain("# wider");
    expect(readdirSync(cwd)).toEqual(["sampler.recipe.yaml"]);
  });

  it("mends a slip of a piece that is not the first, where its block stands", async () => {
    const rows = (row7: string) =>
      `[1, 1 2, 1-3, 2-5, 3-6, 4-7, ${row7}, 2-5, 1-3, 1 2, 1, none, 1, 1 2, 1-3, 2-5, 3-6, 4-7, 3-6, 2-5, 1-3, 1 2, 1]`;
    const two = (row7: string) => `recipe: 1
ground: { weave: broken twill, ends: 4 }
units: { ends: 4, threading: X*2 1-9 8-1 X*2 }
lifts:
  picks: 4
  blocks:
    dart: { rows: [9, 8 9, 7-9, 6-9, 5-8, 4-7, 5-8, 6-9, 7-9, 8 9, 9] }
    moth: { rows: ${rows(row7)} } # at dusk
pieces:
  - { name: darts, count: 1, lifts: { order: [dart*2] } }
  - { name: moths, count: 1, lifts: { order: [moth*2] } }
`;
    const { stderr } = await run(["check", "-", "--mend", "two.recipe.yaml"], { cwd, stdin: two("3-7") });
    expect(stderr).toContain("mended: moths: row 7 (and the other time that it is woven) draws shaft 7");
    expect(read("two.recipe.yaml")).toBe(two("3-6"));
    const asked = await run(["check", "-", "--propose", "--format", "json"], { cwd, stdin: two("3-7") });
    expect(JSON.parse(asked.stdout).mends).toMatchObject([
      { piece: "moths", words: expect.stringMatching(/^in moths: leave shaft 7/) },
    ]);
    // The picture beside it is of the piece: its rows go on where the first piece has ended.
    expect((await run(["check", "-"], { cwd, stdin: two("3-7") })).stdout).toContain("as it would be");
  });
});
