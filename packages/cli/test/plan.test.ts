import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { run } from "./run.js";

/** Napkins in inches: 420 ends at 36 an inch, 4 to a unit, cotton 12/2 and 10/2, 7 yards of warp. */
const napkins = `recipe: 1
title: Napkins
ground: { weave: broken twill }
units: { ends: 4, threading: X*2 (1-10)*10 1 X*2 }
lifts: { picks: 4, rows: [1*50, 2*50, 3*60] }
yarns:
  warp: { count: 12/2 Ne, package: 5040 yd }
  weft: { count: 10/2 Ne, package: 1 lb, stock: 2 oz }
cloth:
  sett: 36 per inch
  picks: 28 per inch
  reed: 18 per inch
  draw-in: 5 %
  take-up: 10 %
  shrinkage: 10 %
project: { warp: 7 yd, length: 20 in }
`;

const bare = `recipe: 1
ground: { weave: broken twill }
units: { ends: 4, threading: X 1 X }
lifts: { picks: 4, rows: [1] }
`;

const cwd = mkdtempSync(join(tmpdir(), "drawcord-plan-"));
writeFileSync(join(cwd, "napkins.yaml"), napkins);
writeFileSync(join(cwd, "bare.yaml"), bare);
writeFileSync(join(cwd, "shrunk.yaml"), napkins.replace("shrinkage: 10 %", "shrinkage: 100 %"));
writeFileSync(join(cwd, "slip.yaml"), napkins.replace("12/2 Ne", "12/2 Nee"));

const json = async (...argv: string[]) =>
  JSON.parse((await run([...argv, "--format", "json"], { cwd })).stdout);

describe("drawcord plan", () => {
  it("gives a script metric numbers, each with its unit: 11 2/3 in, 105 units and lingos, 8 pieces", async () => {
    const plan = await json("plan", "napkins.yaml");
    expect(plan).toMatchObject({
      file: "napkins.yaml",
      title: "Napkins",
      ends: { value: 420, unit: "ends" },
      units: { value: 105, unit: "units" },
      lingos: { value: 105, unit: "lingos" },
      widthInReed: { value: 296.3, unit: "mm" },
      pieces: { value: 8, unit: "pieces" },
      warpLength: { value: 6400.8, unit: "mm" },
      reed: { value: 7.087, unit: "per cm", sley: "2", dents: 210, ends: "2 a dent in 210 dents" },
      missing: [],
      notes: [],
    });
    // Finished about 10 inches wide.
    expect(plan.finishedWidth).toEqual({ value: 253.4, unit: "mm" });
    expect(plan.leftOver.value).toBeGreaterThan(0);
    expect(plan.leftOver.unit).toBe("mm");
    // 420 ends of 7 yards: 2940 yards of 5040 in a pound, 0.583 lb.
    expect(plan.warpYarn).toEqual({
      length: { value: 2688, unit: "m" },
      mass: { value: 264.6, unit: "g" },
    });
    expect(plan.weftYarn).toHaveLength(1);
    expect(plan.weftYarn[0]).toMatchObject({
      name: "weft",
      picks: { unit: "picks" },
    });
    expect(plan.buy[1]).toMatchObject({ yarns: ["weft"], packages: 1 });
    expect(plan.woven).toHaveLength(1);
    expect(plan.clothWeight.unit).toBe("g/m2");
    // 36 an inch of 42.6 at k 0.90 in a broken twill.
    expect(plan.firmness.share.value).toBeCloseTo(84.5, 1);
    expect(plan.firmness.words).toBe("a balanced working sett");
  });

  it("prints the project for a weaver, and what was assumed", async () => {
    const { status, stdout } = await run(["plan", "napkins.yaml"], { cwd });
    expect(status).toBe(0);
    expect(stdout).toContain("threads   420 ends, 105 units, 105 lingos");
    expect(stdout).toContain("296.3 mm (11.67 in) in the reed");
    expect(stdout).toContain("pieces    8");
    expect(stdout).toContain("loom waste: 36 in (a floor loom, common practice)");
    expect(stdout).not.toContain("shrinkage in the wash:");
    expect(stdout).not.toContain("n = 420");
  });

  it("adds the working of each number, in text and in json", async () => {
    const { stdout } = await run(["plan", "napkins.yaml", "--explain"], { cwd });
    expect(stdout).toContain(
      "  W = 420 / (36 per inch) = 296.333 mm = 11.6667 in\n  to 1 decimal: 296.3 mm\n  n = 420: ends",
    );
    const { working } = await json("plan", "napkins.yaml", "--explain");
    const formulas = (working as { formula: string; source: string; tex: string }[]).map(
      ({ formula }) => formula,
    );
    expect(formulas).toEqual(
      expect.arrayContaining(["width-in-reed", "pieces-of-warp", "cloth-weight-of-piece"]),
    );
    // What a number rests on stands before it.
    expect(formulas.indexOf("width-in-reed")).toBeLessThan(formulas.indexOf("width-after-draw-in"));
    for (const { source, tex } of working)
      expect([source, tex].every((text: string) => text !== "")).toBe(true);
    expect((await json("plan", "napkins.yaml")).working).toBeUndefined();
  });

  it("says what is missing, and still gives what it can", async () => {
    const plan = await json("plan", "bare.yaml");
    expect(plan.ends).toEqual({ value: 12, unit: "ends" });
    expect(plan.widthInReed).toBeUndefined();
    expect(plan.missing).toEqual([
      "widths and weft need a sett, or a reed with its sley",
      "lengths need the length of a piece, or the picks of the cloth",
      "weights of the warp need its yarn",
      "weights of the weft need its yarn",
    ]);
  });

  it("serves a shaft draft too, as far as it tells", async () => {
    const wif = [
      "[WIF]",
      "Version=1.1",
      "[WEAVING]",
      "Shafts=2",
      "Treadles=2",
      "[WARP]",
      "Threads=4",
      "Units=inches",
      "Spacing=0.05",
      "[WEFT]",
      "Threads=2",
      "[THREADING]",
      "1=1\n2=2\n3=1\n4=2",
      "[TIEUP]",
      "1=1\n2=2",
      "[TREADLING]",
      "1=1\n2=2",
    ].join("\n");
    const { status, stderr, stdout } = await run(["plan", "-", "--format", "json"], { stdin: wif });
    expect([status, stderr]).toEqual([0, ""]);
    const plan = JSON.parse(stdout);
    expect(plan.ends).toEqual({ value: 4, unit: "ends" });
    expect(plan.picks).toEqual({ value: 2, unit: "picks" });
    // 4 ends at 20 an inch.
    expect(plan.widthInReed).toEqual({ value: 5.1, unit: "mm" });
    expect(plan.loom).toEqual({ needs: { shafts: 2, heddles: [2, 2], treadles: 2, ties: 2 } });
  });

  it("keeps to the width of the terminal", async () => {
    const { stdout } = await run(["plan", "napkins.yaml"], { cwd, width: 60 });
    for (const line of stdout.split("\n")) expect(line.length).toBeLessThanOrEqual(60);
  });

  it("refuses what cannot be in one sentence, and exits with 2", async () => {
    expect(await run(["plan", "shrunk.yaml"], { cwd })).toEqual({
      status: 2,
      stdout: "",
      stderr: "shrunk.yaml:15:14: cloth.shrinkage is 100 %; expected at most 75 %\n",
    });
    expect(await run(["plan", "slip.yaml"], { cwd })).toMatchObject({
      status: 2,
      stderr: 'slip.yaml:7:23: yarns.warp.count: "12/2 Nee": no yarn system is called "Nee"; is it Ne?\n',
    });
  });
});

it("says of numbers that cannot be what check says, and exits as it does", async () => {
  const stdin = `${leastWith("hems: 500 cm")}`;
  const [plan, check] = [
    await run(["plan", "-"], { stdin, width: 400 }),
    await run(["check", "-"], { stdin, width: 400 }),
  ];
  expect([plan.status, check.status]).toEqual([1, 1]);
  const told =
    "the numbers of the project cannot be: finished length of a piece comes out as -4980 mm; expected 0 or more mm; it follows from cloth woven for one piece 20 mm, shrinkage in the wash 0 % and hems of a piece, both ends together 500 cm";
  for (const { stdout } of [plan, check]) expect(stdout).toContain(told);
  expect(plan.stdout).toMatch(/^threads +8 ends, 4 units, 4 lingos; 8 picks in a piece$/m);
  expect(plan.stdout).toContain("the numbers of the project cannot be, so no other is worked out");
  const json = JSON.parse((await run(["plan", "-", "--format", "json"], { stdin })).stdout);
  expect(json).toMatchObject({ ends: { value: 8 }, agreement: { ok: false }, weftYarn: [] });
});

it("tells what to take care of in the wash, where there is one", async () => {
  const washed = await run(["plan", "-"], { stdin: leastWith("waste: 50 cm"), width: 400 });
  expect(washed.stdout).toMatch(/^wash +Take care with hot water, /m);
  const bare = await run(["plan", "-"], { stdin: leastWith("waste: 50 cm").replace(/sett: 4 per cm, /, "") });
  expect(bare.stdout).not.toContain("hot water");
});

/** A small recipe with something said of its project. */
function leastWith(project: string): string {
  return `recipe: 1
ground: { weave: plain }
units: { ends: 2, threading: 1 X 1 X }
lifts: { picks: 2, rows: [1, none, 1, none] }
cloth: { sett: 4 per cm, picks: 4 per cm, shrinkage: 0 % }
project: { ${project} }
`;
}

it("a chart alone has no project", async () => {
  expect(await run(["plan", "-"], { stdin: "#.\n.#\n" })).toEqual({
    status: 2,
    stdout: "",
    stderr: "standard input: a chart alone has no project; make a recipe of it with drawcord chart\n",
  });
});

describe("drawcord check", () => {
  it("finds numbers that cannot be, whether or not one is stated", async () => {
    for (const stated of ["stated: { warp-yarn: 100 g }\n", ""]) {
      const stdin = `${napkins.replace("12/2 Ne", "10000 Ne")}${stated}`;
      const { status, stdout } = await run(["check", "-"], { stdin });
      expect([status, stdout]).toEqual([
        1,
        expect.stringMatching(/error {2}impossible-number.*\n.*expected 0\.5 to 5000/),
      ]);
    }
  });

  it("compares the numbers that a recipe states with those of its plan", async () => {
    const check = async (claims: string) => {
      const { findings } = JSON.parse(
        (await run(["check", "-", "--format", "json"], { stdin: `${napkins}stated: { ${claims} }\n` }))
          .stdout,
      ) as { findings: { rule: string; message: string }[] };
      return findings.filter(({ rule }) => rule === "stated-number").map(({ message }) => message);
    };
    expect(await check("ends: 420, units: 105, lingos: 105, width-in-reed: 11.7 in, pieces: 8")).toEqual([]);
    expect(await check("width-in-reed: 12.3 in")).toEqual([
      "line 17 states 12.3 in in the reed; worked out, 11.67 in, 0.63 in less; it looks as if the draw-in was added twice",
    ]);
  });
});

describe("the winding of the warp", () => {
  const winding = async (ends: number, ...more: string[]) => {
    const text = bare.replace("ends: 4, threading: X 1 X", `ends: 1, threading: X*${ends - 1} 1`);
    const { stdout } = await run(["plan", "-", ...more], { stdin: text });
    return stdout;
  };
  const linesOf = (text: string) => /^winding {3}(.*)\n {10}(.*)$/m.exec(text)?.slice(1);

  it("counts passes, double passes and chains, and says how many ends each chain has", async () => {
    expect(linesOf(await winding(420))).toEqual([
      "210 passes of 2 threads (a 2x2 cross), 105 double passes",
      "6 chains of 20 double passes at most: 5 of 80 ends and 1 of 20",
    ]);
    expect(linesOf(await winding(160))).toEqual([
      "80 passes of 2 threads (a 2x2 cross), 40 double passes",
      "2 chains of 20 double passes at most: 2 of 80 ends",
    ]);
    expect(linesOf(await winding(2))).toEqual([
      "1 pass of 2 threads (a 2x2 cross), 1 double pass",
      "1 chain of 20 double passes at most: 1 of 2 ends",
    ]);
  });

  it("is data for a script, and shows its working", async () => {
    const { winding: found } = JSON.parse(await winding(83, "--format", "json"));
    expect(found).toEqual({
      threads: 2,
      passes: 42,
      doublePasses: 21,
      doublePassesInAChain: 20,
      endsInChains: [80, 3],
      spare: 1,
    });
    expect(await winding(83, "--explain")).toContain("  p = ceil(n / t)\n  p = ceil(83 / 2) = 42\n");
  });
});

describe("drawcord yarn", () => {
  it("takes a number below zero for what it is, and no option", async () => {
    const refused = (stderr: string) => ({ status: 2, stdout: "", stderr });
    expect(await run(["yarn", "-3 Ne"])).toEqual(refused('"-3 Ne": its count is below zero\n'));
    expect(await run(["yarn", "-.5Nm", "--to", "tex"])).toEqual(
      refused('"-.5Nm": its count is below zero\n'),
    );
    expect(await run(["yarn", "-3", "-4"])).toEqual(
      refused('drawcord yarn takes YARN; "-4" is one too many\n'),
    );
    expect((await run(["yarn", "-x"])).stderr).toMatch(/^drawcord yarn has no option -x/);
  });

  it("prints one number", async () => {
    expect(await run(["yarn", "20/2 Ne", "--to", "tex"])).toEqual({
      status: 0,
      stdout: "59.0541\n",
      stderr: "",
    });
    expect((await run(["yarn", "2/20 worsted", "--to", "Nm"])).stdout).toBe("11.2891\n");
    expect((await run(["yarn", "20 tex x 2", "--to", "tex", "--format", "json"])).stdout).toBe("40\n");
  });

  it("prints a yarn in every system with its diameter and setts", async () => {
    const { stdout } = await run(["yarn", "20/2 Ne"]);
    expect(stdout).toMatch(/^20\/2 Ne\n/);
    expect(stdout).toMatch(/yards a pound +8400$/m);
    expect(stdout).toMatch(/cotton count +10$/m);
    // 82.49 diameters an inch and 41.2 in plain at k 0.90 (derived).
    expect(stdout).toMatch(/82\.49 per inch\) side by side/);
    expect(stdout).toMatch(/plain .*\(41\.24 per inch\)/);
    const { counts, setts } = await json("yarn", "20/2 Ne");
    expect(counts).toMatchObject({ tex: 59.0541, cotton: 10, "yards-a-pound": 8400 });
    expect(setts[0]).toEqual({
      weave: "plain",
      closest: { value: 16.24, unit: "per cm" },
      working: { value: 12.99, unit: "per cm" },
    });
  });

  it("says which values it took because none was given", async () => {
    const { stdout } = await run(["yarn", "20/2 Ne"]);
    expect(stdout).toMatch(/^assumed\n.*twist neglected[\s\S]*fibre constant +0\.9 \(a firm yarn\)/m);
    const { assumed } = await json("yarn", "20/2 Ne", "--fibre", "cotton");
    const taken = assumed.map(({ meaning }: { meaning: string }) => meaning);
    expect(taken).toContain("share of the yarn's section that is fibre");
    expect(taken).not.toContain("fibre constant");
  });

  it("shows how a number was found", async () => {
    const { stdout } = await run(["yarn", "20/2 Ne", "--to", "tex", "--explain"]);
    expect(stdout).toContain("T = (1 lb) / (20 × (840 yd)) = 29.5271 tex");
  });

  it.each([
    [["yarn", "20/2"], '"20/2" names no yarn system; expected one such as'],
    [["yarn", "2/20 wosted"], 'no yarn system is called "wosted"; is it worsted?'],
    [
      ["yarn", "10000 Ne"],
      "10000 Ne: yarn in tex from a count of lengths in a weight comes out as 0.05905 tex; expected",
    ],
    [["yarn", "20/2 Ne", "--to", "wosted"], 'no yarn system is called "wosted"; is it worsted?'],
    [["yarn", "20/2 Ne", "--fibre", "coton"], 'no fibre is called "coton"; is it cotton?'],
  ])("%j is refused in one sentence", async (argv, sentence) => {
    const { status, stderr, stdout } = await run(argv);
    expect([status, stdout]).toEqual([2, ""]);
    expect(stderr).toContain(sentence);
    expect(stderr.trimEnd().split("\n")).toHaveLength(1);
  });
});

describe("a ground named by its weave, under rows of unlike picks", () => {
  const bound = `recipe: 1
ground: { weave: broken twill }
units: { ends: 4, threading: X 1 2 X }
lifts: { picks: 4, rows: [1, 2, 1] }
`;
  writeFileSync(join(cwd, "alike.yaml"), bound);
  writeFileSync(
    join(cwd, "once.yaml"),
    bound.replace("picks: 4", "picks: 4*7 3").replace("[1, 2, 1]", "[1, 2, 1, 2, 1, 2, 1, 2]"),
  );
  writeFileSync(join(cwd, "unlike.yaml"), bound.replace("picks: 4", "picks: [4, 3, 4]"));

  it("says in plan and in check that the start is another, and nothing where all rows are alike", async () => {
    const told = async (file: string) => [
      (await run(["plan", file], { cwd })).stdout.replace(/\s+/g, " "),
      (await run(["check", file], { cwd, width: 400 })).stdout.replace(/\s+/g, " "),
    ];
    for (const text of await told("alike.yaml")) expect(text).not.toContain("begun for");
    for (const text of await told("unlike.yaml")) {
      expect(text).toMatch(
        /rows have 3 and 4 picks, so the ground "broken twill" is begun for steps of 1: with shafts \d raised and \d sunk; were all rows of 4 picks, with shafts \d raised and \d sunk/,
      );
    }
    // One row in eight that is otherwise moves nothing.
    for (const text of await told("once.yaml")) expect(text).not.toContain("begun for");
  });

  it("fails by the warnings that are allowed, as check does", async () => {
    const warned = bound.replace("rows: [1, 2, 1] }", "rows: [1, 2, 1] }\nstated: { ends: 99 }");
    writeFileSync(join(cwd, "warned.yaml"), warned);
    const status = async (...argv: string[]) => (await run(["plan", "warned.yaml", ...argv], { cwd })).status;
    expect(await status()).toBe(0);
    expect(await status("--max-warnings", "1")).toBe(0);
    expect(await status("--max-warnings", "0")).toBe(1);
    expect(await status("--fail-on", "warning")).toBe(1);
    expect(await status("--max-warnings", "few")).toBe(2);
  });
});

describe("the closest setts of a yarn with and without its fibre", () => {
  it("say how far they lie apart and why", async () => {
    const { stdout } = await run(["yarn", "20/2 Ne", "--fibre", "cotton"]);
    expect(stdout).toContain(
      "with the fibre's own constant, 0.95; without --fibre it is 0.9, that of a firm yarn, so these setts are 5.6 % closer",
    );
  });
});
