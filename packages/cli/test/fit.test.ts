import { existsSync, mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { starterRecipe } from "@drawcord/files";
import { describe, expect, it } from "vitest";
import { nearestFits } from "../src/fit/fit.js";
import { parseChange } from "../src/fit/what-if.js";
import { run } from "./run.js";

const cwd = mkdtempSync(join(tmpdir(), "drawcord-fit-"));
writeFileSync(join(cwd, "a.recipe.yaml"), `${starterRecipe()}# the last word\n`);

const json = async (argv: readonly string[]) => {
  const { status, stdout, stderr } = await run([...argv, "--format", "json"], { cwd });
  expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
  return JSON.parse(stdout);
};

let written = 0;
/** What a fit writes, and whether the check of it is clean. */
const writes = async (...argv: string[]) => {
  const name = `fitted-${++written}.recipe.yaml`;
  const { status, stderr } = await run(["fit", "a.recipe.yaml", ...argv, "-o", name], { cwd });
  expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
  const check = await run(["check", name], { cwd });
  expect(check).toMatchObject({ status: 0, stderr: "" });
  expect(check.stdout).toMatch(/^0 findings/m);
  const text = readFileSync(join(cwd, name), "utf8");
  expect(text).toContain("# the last word");
  return { text, plan: await json(["plan", name]) };
};

describe("drawcord fit", () => {
  it("finds the repeats of a block for a length, below and above", async () => {
    const found = await json(["fit", "a.recipe.yaml", "--length", "45cm"]);
    expect(found.below.comes).toEqual({ value: 40, unit: "cm" });
    expect(found.above.comes).toEqual({ value: 45.4, unit: "cm" });
    expect(found.above.change).toContain("lozenge*9 in place of lozenge*8");
  });

  it.each(["30cm", "45cm", "24 in", "0.9 m"])("what it writes for a length of %s passes", async (length) => {
    const { plan, text } = await writes("--length", length);
    expect(text).not.toContain("lozenge*8");
    expect(plan.picks.value).toBe(plan.woven[0].picks);
  });

  it.each(["20cm", "40cm", "12 in"])(
    "what it writes for a width of %s passes, and is near",
    async (width) => {
      const { plan } = await writes("--width", width);
      const [value, unit] = /([\d.]+) ?(\w+)/.exec(width)!.slice(1) as [string, string];
      const wanted = Number(value) * (unit === "in" ? 25.4 : 10);
      // A border unit more on both sides: eight ends at 12 a cm.
      expect(Math.abs(plan.finishedWidth.value - wanted)).toBeLessThan(7);
    },
  );

  it("says how many pieces a warp gives, and what one more takes; what it writes passes", async () => {
    const found = await json(["fit", "a.recipe.yaml", "--warp", "4m"]);
    expect(found.below.change).toMatch(/^5 pieces, [\d.]+ m left$/);
    expect(found.above.change).toMatch(/^6 pieces take a warp of 4\.2 m$/);
    const { plan } = await writes("--warp", "4m");
    expect(plan.pieces.value).toBeGreaterThanOrEqual(5);
  });

  it("says what warp a number of pieces takes", async () => {
    const found = await json(["fit", "a.recipe.yaml", "--pieces", "6"]);
    expect(found.below.change).toBe("a warp of 4.2 m");
    expect((await writes("--pieces", "6")).plan.pieces.value).toBe(6);
  });

  const asked = async (text: string, ...argv: string[]) => {
    writeFileSync(join(cwd, "b.recipe.yaml"), text);
    const { stdout, stderr } = await run(["fit", "b.recipe.yaml", ...argv], { cwd });
    return stdout + stderr;
  };
  const seasons = readFileSync(
    join(import.meta.dirname, "../../../shared/recipes/seasons.recipe.yaml"),
    "utf8",
  );

  it("fits one of several pieces, and says which there are", async () => {
    expect(await asked(seasons, "--length", "40 cm")).toContain(
      "of several pieces one is fitted; name it with --piece: tulips, daisies, acorns or stars",
    );
    // What fills its piece goes on filling it.
    const acorns = await asked(seasons, "--length", "40 cm", "--piece", "acorns", "-o", "acorns.recipe.yaml");
    expect(acorns).toContain("36.36 cm: a length of 36.36 cm, which 3 repeats of the block fill in line 5");
    expect(acorns).toContain("46.89 cm: a length of 46.89 cm, which 4 repeats");
    const written = readFileSync(join(cwd, "acorns.recipe.yaml"), "utf8");
    expect(written).toBe(seasons.replace(/(acorns\n +count: 2\n +length: )36.4 cm/, "$136.36 cm"));
    const warp = await asked(seasons, "--warp", "8 m", "--piece", "stars");
    expect(warp).toMatch(/7 pieces of stars, 0\.236 m left\n.*8 pieces of stars take a warp of 8\.28 m/);
    expect(await asked(seasons, "--pieces", "5", "--piece", "stars")).toContain("a warp of 6.733 m");
    expect(await asked(seasons, "--warp", "8 m", "--piece", "moons")).toContain('there is no piece "moons"');
    expect(await asked(seasons, "--width", "30 cm", "--piece", "stars")).toContain(
      "--piece goes without --width, which all pieces on a warp share",
    );
  });

  it("puts units in or leaves them out along both edges where nothing is repeated", async () => {
    const straight = starterRecipe().replace("X*2 9 (1-8 7-2)*3 1 9 X*2", "9 1-8 7-1 9");
    const wider = await asked(straight, "--width", "12 cm", "-o", "wide.recipe.yaml");
    expect(wider).toMatch(/12\.126 cm: 13 static units put in along each edge of the threading/);
    expect(readFileSync(join(cwd, "wide.recipe.yaml"), "utf8")).toMatch(/threading: X\*13 9 1-8 7-1 9 X\*13/);
    const narrower = await asked(straight, "--width", "4 cm");
    expect(narrower).toMatch(/below .*: 2 units left out along each edge.*\n +but then 146 lifts draw/);
    const one = straight.replace("ends: 4\n  threading: 9 1-8 7-1 9", "ends: [4, 8]\n  threading: 1 9");
    expect(await asked(one, "--width", "30 cm")).toMatch(
      /no unit can be put in or left out; 30 cm take 426 ends, and there are 12, which a sett of 0\.34 per cm would/,
    );
  });

  it("lets the widest stripe take the ends, and states anew what was right", async () => {
    const striped = starterRecipe()
      .replace(
        "yarns:",
        "colours: { warp: blue*8 warp*180 blue*8 }\nyarns:\n  blue: { count: 10/2 Ne, fibre: cotton }",
      )
      .concat("stated: { ends: 196, units: 56, finished-width: 13.8 cm }\n");
    await asked(striped, "--width", "10 cm", "-o", "striped.recipe.yaml");
    const text = readFileSync(join(cwd, "striped.recipe.yaml"), "utf8");
    expect(text).toContain("blue*8 warp*124 blue*8");
    // What was wrong stays.
    expect(text).toMatch(/stated: \{ ends: 140, units: 56, finished-width: 9\.9 cm \}/);
  });

  it("writes nothing that does not pass, and says why", async () => {
    const few = starterRecipe().concat("loom: { lingos: 50 }\n");
    const found = await asked(few, "--width", "20 cm", "-o", "few.recipe.yaml");
    expect(found).toContain("nothing was written, for the nearest does not pass: the plan needs");
    expect(existsSync(join(cwd, "few.recipe.yaml"))).toBe(false);
  });

  it("refuses in one sentence what it cannot fit", async () => {
    const none = await run(["fit", "a.recipe.yaml"], { cwd });
    expect(none.status).toBe(2);
    expect(none.stderr).toContain("needs one of --length, --width, --warp and --pieces");
    writeFileSync(
      join(cwd, "rows.recipe.yaml"),
      "recipe: 1\nground: { weave: plain }\nunits: { ends: 2, threading: 1 X }\nlifts: { picks: 2, rows: [1, none] }\n",
    );
    const rows = await run(["fit", "rows.recipe.yaml", "--length", "4 cm"], { cwd });
    expect(rows.stderr).toContain("its lifts are rows and not blocks");
    const width = await run(["fit", "rows.recipe.yaml", "--width", "4 cm"], { cwd });
    expect(width.stderr).toContain("it needs a sett");
  });

  it("takes the smaller change of two that come as near", () => {
    const one = (what: string, value: number, change: number) =>
      ({ what, comes: { value, unit: "cm", kind: "length" }, change, revisions: [] }) as const;
    const wanted = { value: 10, unit: "cm", kind: "length" } as const;
    const { above, below } = nearestFits(
      [one("a", 9, 4), one("b", 9, 1), one("c", 12, 1), one("d", 11, 5)],
      wanted,
    );
    expect(below!.what).toBe("b");
    expect(above!.what).toBe("d");
  });
});

describe("drawcord plan --with", () => {
  it("prints the numbers that differ side by side, and leaves the file alone", async () => {
    const before = readFileSync(join(cwd, "a.recipe.yaml"), "utf8");
    const { changes } = await json([
      "plan",
      "a.recipe.yaml",
      "--with",
      "project.pieces: 4",
      "--with",
      "project.waste: 80 cm",
    ]);
    const names = changes.map(({ name }: { name: string }) => name);
    expect(names).toContain("pieces");
    expect(names).toContain("warp-length");
    expect(names).not.toContain("width-in-reed");
    const { stdout } = await run(["plan", "a.recipe.yaml", "--with", "project.pieces: 4"], { cwd });
    expect(stdout).toMatch(/^pieces +2 pieces +4 pieces$/m);
    expect(readFileSync(join(cwd, "a.recipe.yaml"), "utf8")).toBe(before);
  });

  it("says which number rules another, and what the rules then find", async () => {
    writeFileSync(
      join(cwd, "sleyed.recipe.yaml"),
      starterRecipe().replace("reed: 60 per 10 cm", "reed: 60 per 10 cm\n  sley: 2"),
    );
    const { stdout } = await run(["plan", "sleyed.recipe.yaml", "--with", "cloth.sett: 14 per cm"], { cwd });
    expect(stdout).toContain("widths and yarn go by the sley");
    expect(stdout).toContain("but then sleyed 2, the reed makes 12 per cm, and the sett is 14 per cm");
    const { finds, goesBy } = await json(["plan", "sleyed.recipe.yaml", "--with", "cloth.sett: 14 per cm"]);
    expect([finds.length, goesBy.length]).toEqual([1, 2]);
  });

  it("says when no number differs, and refuses what is no change", async () => {
    const same = await run(["plan", "a.recipe.yaml", "--with", "project.pieces: 2"], { cwd });
    expect(same.stdout).toContain("no number of the plan differs");
    const bad = await run(["plan", "a.recipe.yaml", "--with", "pieces"], { cwd });
    expect(bad).toMatchObject({ status: 2 });
    expect(bad.stderr).toContain("is no change; expected one such as 'cloth.sett: 14 per cm'");
  });

  it("reads a change by its keys and its value", () => {
    expect(parseChange("cloth.sett: 14 per cm")).toEqual({ path: ["cloth", "sett"], value: "14 per cm" });
    expect(parseChange("lifts.order.2: lozenge*3")).toEqual({
      path: ["lifts", "order", 1],
      value: "lozenge*3",
    });
    expect(parseChange("project.pieces: 12")).toEqual({ path: ["project", "pieces"], value: 12 });
  });
});

describe("drawcord plan --fill-stated", () => {
  it.each(["runner", "napkin", "band"])("what it fills in %s always passes", async (name) => {
    const file = join(import.meta.dirname, `../../../shared/recipes/${name}.recipe.yaml`);
    const out = `filled-${name}.recipe.yaml`;
    const { status, stderr } = await run(["plan", file, "--fill-stated", "-o", out], { cwd });
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    const { findings } = (await run(["check", out, "--format", "json"], { cwd })).stdout.startsWith("{")
      ? JSON.parse((await run(["check", out, "--format", "json"], { cwd })).stdout)
      : { findings: ["unreadable"] };
    expect(findings.filter(({ rule }: { rule: string }) => rule === "stated-number")).toEqual([]);
    expect(readFileSync(join(cwd, out), "utf8")).toMatch(/warp-length: \d+ mm/);
  });

  it("needs a file to write", async () => {
    const { status, stderr } = await run(["plan", "a.recipe.yaml", "--fill-stated"], { cwd });
    expect(status).toBe(2);
    expect(stderr).toContain("needs -o FILE");
  });
});
