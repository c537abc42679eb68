import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { drawdownOfDraft, rules, type ShaftDraft } from "@drawcord/check";
import {
  readPbm,
  readPng,
  soundRecipe,
  soundWif,
  starterRecipe,
  writePbm,
  writePng,
  writeWif,
} from "@drawcord/files";
import { fromText, toText } from "@drawcord/grid";
import { expand } from "@drawcord/units";
import { decode } from "fast-png";
import { beforeEach, describe, expect, it } from "vitest";
import { folder } from "../../../tests/support/folder.js";
import { run } from "./run.js";

/** A 2/2 twill towel on four shafts and four treadles, eight ends and picks to the centimetre. */
const towel: ShaftDraft = {
  title: "Twill towel",
  shafts: 4,
  threading: Array.from({ length: 16 }, (_, end) => [(end % 4) + 1]),
  shedding: {
    kind: "tie-up",
    tieUp: [
      [1, 2],
      [2, 3],
      [3, 4],
      [1, 4],
    ],
    treadling: Array.from({ length: 12 }, (_, pick) => [(pick % 4) + 1]),
  },
  rising: true,
  warp: { unit: "centimeters", spacing: { all: 0.125 } },
  weft: { unit: "centimeters", spacing: { all: 0.125 } },
};
const cloth = drawdownOfDraft(towel);
const diamond = `recipe: 1
title: Small diamond
ground: { weave: broken twill }
units: { ends: 4, threading: X 1-3 2-1 X }
lifts: { picks: 4, rows: [1, 2, 3, 2, 1] }
`;
const diamondCloth = expand(soundRecipe(diamond, "diamond").draft).drawdown;

let cwd = "";
const bytes = (name: string) => readFileSync(join(cwd, name));
beforeEach(() => {
  cwd = folder();
  writeFileSync(join(cwd, "towel.wif"), writeWif(towel));
  writeFileSync(join(cwd, "diamond.yaml"), diamond);
  writeFileSync(join(cwd, "cloth.txt"), `${toText(cloth)}\n`);
});

describe("a plain draft", () => {
  it("is checked as a recipe is, and says how sure the drawn areas are", async () => {
    const { status, stdout, stderr } = await run(["check", "towel.wif"], { cwd });
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    expect(stdout).toMatch(/^towel\.wif {2}Twill towel\n/);
    expect(stdout).toContain("16 ends x 12 picks\n");
    expect(stdout).toMatch(/what is drawn (is inferred|cannot be told)/);
    expect(stdout).toContain("the cloth hangs together");
  });

  it.each([
    ["end-without-shaft", { ...towel, threading: towel.threading.with(4, []) }],
    [
      "treadle-without-tie",
      { ...towel, shedding: { ...towel.shedding, tieUp: [[1, 2], [2, 3], [3, 4], [1, 4], []] } as never },
    ],
    [
      "pick-without-shed",
      { ...towel, shedding: { ...towel.shedding, treadling: Array(12).fill([1]).with(3, []) } as never },
    ],
  ] as const)("with the fault %s is told so by that rule, asked for alone too", async (rule, draft) => {
    writeFileSync(join(cwd, "bad.wif"), writeWif(draft));
    const all = await run(["check", "bad.wif", "--fail-on", "note", "--format", "json"], { cwd });
    expect(all.status).toBe(1);
    const rulesOf = (text: string) =>
      (JSON.parse(text) as { findings: { rule: string }[] }).findings.map((finding) => finding.rule);
    expect(rulesOf(all.stdout)).toContain(rule);
    const alone = await run(["check", "bad.wif", "--rule", rule, "--format", "json"], { cwd });
    expect(new Set(rulesOf(alone.stdout))).toEqual(new Set([rule]));
    const other = await run(["check", "bad.wif", "--rule", "layers", "--format", "json"], { cwd });
    expect(rulesOf(other.stdout)).not.toContain(rule);
    const summary = (text: string) => (JSON.parse(text) as { summary: Record<string, number> }).summary;
    expect(Object.values(summary(other.stdout)).reduce((sum, one) => sum + one, 0)).toBe(
      rulesOf(other.stdout).length,
    );
  });

  it("has its rules explained, with drawings", async () => {
    for (const { name } of rules.filter((rule) => "plainOnly" in rule)) {
      const { status, stdout } = await run(["rules", name]);
      expect(status).toBe(0);
      expect(stdout).toMatch(/Fails: an? .*\n {2}[#.]+\n/);
    }
  });

  it("has nothing for its rules in a recipe", async () => {
    expect(await run(["check", "diamond.yaml", "--rule", "end-without-shaft"], { cwd })).toMatchObject({
      status: 2,
      stderr: "diamond.yaml: none of the rules asked for has anything to look at, so nothing was checked\n",
    });
  });

  it("is planned: its threads, sett, shafts, heddles, treadles and ties", async () => {
    const { status, stdout } = await run(["plan", "towel.wif"], { cwd });
    expect(status).toBe(0);
    expect(stdout).toContain(
      "shafts    4\nheddles   4 on shaft 1, 4 on shaft 2, 4 on shaft 3, 4 on shaft 4\ntreadles  4, 8 ties\n",
    );
    const json = await run(["plan", "towel.wif", "--format", "json"], { cwd });
    expect(JSON.parse(json.stdout)).toMatchObject({
      title: "Twill towel",
      ends: { value: 16 },
      sett: { value: 8, unit: "per cm" },
      loom: { needs: { shafts: 4, heddles: [4, 4, 4, 4], treadles: 4, ties: 8 } },
    });
  });

  it.each([
    ["sheet", ["-o", "t.html", "--piece", "towels"], "this is a draft; only recipes have pieces"],
    ["threading", [], "this is a draft; only recipes have units"],
    ["lifts", [], "this is a draft; only recipes have lifts of pattern shafts"],
    ["chart", [], "this is no chart; a text of # and ., a PBM or a PNG picture was expected"],
  ])("is told from what %s takes", async (command, more, sentence) => {
    expect(await run([command, "towel.wif", ...more], { cwd })).toEqual({
      status: 2,
      stdout: "",
      stderr: `towel.wif: ${sentence}\n`,
    });
  });

  it("is written out as a sheet in every format", async () => {
    for (const name of ["t.html", "t.pdf", "t.md", "t.svg", "t.png"]) {
      const { status, stderr, stdout } = await run(["sheet", "towel.wif", "-o", name], { cwd });
      expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
      expect(stdout).toMatch(/t(-lifts)?\.(html|pdf|md|svg|png) was written/);
    }
  });

  it("without shafts is planned as well", async () => {
    writeFileSync(
      join(cwd, "bare.wif"),
      "[WIF]\nVersion=1.1\n[WARP]\nThreads=3\n[WEFT]\nThreads=2\n[LIFTPLAN]\n",
    );
    const { status, stdout } = await run(["plan", "bare.wif"], { cwd });
    expect(status).toBe(0);
    expect(stdout).toContain("shafts    0\nheddles   none\ntreadles  none: a lift plan\n");
  });

  it("says which sections were not used", async () => {
    writeFileSync(
      join(cwd, "own.wif"),
      `${writeWif(towel)}\r\n[PRIVATE \u001b]\r\nx=1\r\n`.replace(" \u001b", " LOOM"),
    );
    const told = "own.wif: not used: [PRIVATE LOOM]\n";
    const check = ["check", "own.wif", "--fail-on", "error"];
    // The second time the report is taken from the cache.
    const cached = [...check, "--cache", "kept", "--format", "json"];
    for (const argv of [["expand", "own.wif"], ["plan", "own.wif"], check, cached, cached]) {
      const { status, stderr } = await run(argv, { cwd });
      expect({ status, stderr }).toEqual({ status: 0, stderr: told });
    }
    expect((await run([...check, "--quiet"], { cwd })).stderr).toBe("");
  });
});

describe("a chart of interlacements", () => {
  it("is checked as the cloth it is", async () => {
    const chart = JSON.parse(
      (await run(["check", "cloth.txt", "--format", "json"], { cwd })).stdout,
    ) as object;
    const { floats } = JSON.parse(
      (await run(["check", "towel.wif", "--format", "json"], { cwd })).stdout,
    ) as { floats: object };
    expect(chart).toMatchObject({ size: { ends: 16, picks: 12 }, floats });
  });

  it("cannot be planned", async () => {
    expect(await run(["plan", "cloth.txt"], { cwd })).toEqual({
      status: 2,
      stdout: "",
      stderr: "cloth.txt: a chart alone has no project; make a recipe of it with drawcord chart\n",
    });
  });
});

describe("drawcord expand", () => {
  it.each(["towel.wif", "cloth.txt"])(
    "draws the same cloth from %s, in every format and back again",
    async (file) => {
      const out = async (format: string) => {
        const name = `out.${format}`;
        const { status, stderr, stdout } = await run(["expand", file, "--format", format, "-o", name], {
          cwd,
        });
        expect({ status, stderr, stdout }).toEqual({ status: 0, stderr: "", stdout: "" });
        return bytes(name);
      };
      expect(String(await out("text"))).toBe(`${toText(cloth)}\n`);
      expect(readPbm(await out("pbm"), "p").equals(cloth)).toBe(true);
      expect(readPng(await out("png"), "p").equals(cloth)).toBe(true);
      expect(drawdownOfDraft(soundWif(await out("wif"), "w").draft).equals(cloth)).toBe(true);
      const { drawdown, ends } = JSON.parse(String(await out("json"))) as {
        drawdown: string[];
        ends: number;
      };
      expect(ends).toBe(16);
      expect(fromText([...drawdown].reverse().join("\n")).equals(cloth)).toBe(true);
      for (const name of ["out.pbm", "out.png", "out.wif"]) {
        expect((await run(["expand", name], { cwd })).stdout).toBe(`${toText(cloth)}\n`);
      }
    },
  );

  it("keeps the shafts, treadles and title of a draft", async () => {
    await run(["expand", "towel.wif", "--format", "wif", "-o", "again.wif"], { cwd });
    expect(soundWif(bytes("again.wif"), "w").draft).toEqual(soundWif(writeWif(towel), "w").draft);
    await run(["expand", "towel.wif", "--format", "wif", "--shedding", "lift-plan", "-o", "lifted.wif"], {
      cwd,
    });
    const lifted = soundWif(bytes("lifted.wif"), "w").draft;
    expect(lifted.shedding.kind).toBe("lift-plan");
    expect(drawdownOfDraft(lifted).equals(cloth)).toBe(true);
  });

  it("makes a draft of a recipe, with a lift plan or treadles, on no more shafts than stated", async () => {
    for (const shedding of ["lift-plan", "tie-up"]) {
      const { stdout } = await run(["expand", "diamond.yaml", "--format", "wif", "--shedding", shedding], {
        cwd,
      });
      const { draft } = soundWif(stdout, "w");
      expect(draft).toMatchObject({ title: "Small diamond", shedding: { kind: shedding } });
      expect(drawdownOfDraft(draft).equals(diamondCloth)).toBe(true);
      const argv = ["expand", "diamond.yaml", "--format", "wif", "--most-shafts", String(draft.shafts)];
      expect((await run(argv, { cwd })).status).toBe(0);
      const fewer = await run([...argv.slice(0, -1), String(draft.shafts - 1), "-o", "no.wif"], { cwd });
      expect(fewer).toEqual({
        status: 2,
        stdout: "",
        stderr: `diamond.yaml: the cloth takes ${draft.shafts} shafts, for so many of its ends weave differently; ${draft.shafts - 1} are allowed\n`,
      });
      expect(readdirSync(cwd)).not.toContain("no.wif");
    }
    expect(await run(["expand", "towel.wif", "--format", "wif", "--most-shafts", "3"], { cwd })).toEqual({
      status: 2,
      stdout: "",
      stderr: "towel.wif: the draft has 4 shafts; 3 are allowed\n",
    });
  });

  it("paints warp and weft in their colours, as large as is asked", async () => {
    const colours = ["--scale", "3", "--warp", "#2f4f7f", "--weft", "#f4ecd8"];
    await run(["expand", "diamond.yaml", "--format", "png", ...colours, "-o", "d.png"], { cwd });
    const image = decode(bytes("d.png"));
    expect([image.width, image.height]).toEqual([84, 60]);
    expect(bytes("d.png")).toEqual(
      Buffer.from(writePng(diamondCloth, { scale: 3, warp: "#2f4f7f", weft: "#f4ecd8" })),
    );
    expect(image.palette).toEqual([
      [0xf4, 0xec, 0xd8],
      [0x2f, 0x4f, 0x7f],
    ]);
  });

  it("paints a draft in its own colours, unless it is told others", async () => {
    const colours = <Name extends string>(names: readonly Name[], threads: number) =>
      Array.from({ length: threads }, (_, i) => names[i % names.length]!);
    const warp = colours(["#eee6d3", "#eee6d3", "#a8452f"], 16);
    const weft = colours(["#2f4a6d"], 12);
    const picture = async (look: Pick<ShaftDraft, "warp" | "weft">, ...argv: string[]) => {
      writeFileSync(join(cwd, "own.wif"), writeWif({ ...towel, ...look }));
      await run(["expand", "own.wif", "--format", "png", "--force", "-o", "own.png", ...argv], { cwd });
      return bytes("own.png");
    };
    const as = (...options: Parameters<typeof writePng>[1][]) => Buffer.from(writePng(cloth, ...options));
    const own = { warp: { colours: warp }, weft: { colours: weft } };
    expect(await picture(own)).toEqual(as({ warp, weft }));
    expect(await picture({ warp: own.warp, weft: {} })).toEqual(as({ warp }));
    expect(await picture(own, "--weft", "#ffcc00")).toEqual(as({ warp, weft: "#ffcc00" }));
    expect(await picture(own, "--warp", "#000000", "--weft", "#ffffff")).toEqual(as({}));
    // All of one colour would show nothing.
    expect(await picture({ warp: { colours: colours(["#2f4a6d"], 16) }, weft: own.weft })).toEqual(as({}));
  });

  it("paints a recipe in the colours of its yarns, where all have one", async () => {
    const picture = async (weft: string) => {
      const yarns = `yarns: { warp: { count: 10/2 Ne, colour: "#a8452f" }, weft: { count: 10/2 Ne, colour: ${weft} } }\n`;
      writeFileSync(join(cwd, "own.yaml"), diamond + yarns);
      await run(["expand", "own.yaml", "--format", "png", "--force", "-o", "own.png"], { cwd });
      return bytes("own.png");
    };
    const warp = "#a8452f";
    expect(await picture('"#2f4a6d"')).toEqual(
      Buffer.from(writePng(diamondCloth, { warp, weft: "#2f4a6d" })),
    );
    expect(await picture("old gold")).toEqual(Buffer.from(writePng(diamondCloth, { warp })));
  });

  it.each(["pbm", "png", "svg", "wif", "json", "text"])(
    "is %s where the file that is written ends so",
    async (format) => {
      await run(["expand", "diamond.yaml", "--force", "--format", format, "-o", "asked"], { cwd });
      await run(["expand", "diamond.yaml", "--force", "-o", `ended.${format.toUpperCase()}`], { cwd });
      expect(bytes(`ended.${format.toUpperCase()}`)).toEqual(bytes("asked"));
    },
  );

  it("writes a PBM as the library does", async () => {
    await run(["expand", "diamond.yaml", "--format", "pbm", "-o", "d.pbm"], { cwd });
    expect(bytes("d.pbm")).toEqual(Buffer.from(writePbm(diamondCloth)));
  });

  it.each([
    [["--scale", "2"], "drawcord expand: --scale goes with --format png or svg, not with text\n"],
    [
      ["--format", "png", "--shedding", "tie-up"],
      "drawcord expand: --shedding goes with --format wif, not with png\n",
    ],
    [
      ["--format", "png", "--scale", "257"],
      'drawcord expand: --scale takes a whole number from 1 to 256, not "257"\n',
    ],
    [
      ["--format", "png", "--warp", "\u001b[31m"],
      'drawcord expand: a colour such as #b8860b was expected, not "<U+001B>[31m"\n',
    ],
    [
      ["--format", "png", "--warp", "#ffffff"],
      "drawcord expand: warp and weft both have the colour #ffffff; they must differ\n",
    ],
    [
      ["--format", "wif", "--most-shafts", "1e9"],
      'drawcord expand: --most-shafts takes a whole number from 1 to 4096, not "1e9"\n',
    ],
  ])("%j cannot be meant", async (argv, stderr) => {
    expect(await run(["expand", "diamond.yaml", ...argv], { cwd })).toEqual({
      status: 2,
      stdout: "",
      stderr,
    });
  });

  it.each(["pbm", "png"])("does not pour a %s picture over a terminal", async (format) => {
    const { status, stdout } = await run(["expand", "diamond.yaml", "--format", format], {
      cwd,
      isTerminal: true,
    });
    expect({ status, stdout }).toEqual({ status: 2, stdout: "" });
  });

  it("draws the starter recipe", async () => {
    const { status, stdout } = await run(["expand", "-"], { cwd, stdin: starterRecipe() });
    expect(status).toBe(0);
    expect(stdout).toMatch(/^(?:[#.]+\n)+$/);
  });
});

describe("the towel of the winter course, on shafts alone", () => {
  const path = join(import.meta.dirname, "../../../shared/drafts/towel.wif");
  const draft = soundWif(readFileSync(path, "utf8"), "towel.wif").draft;

  it("is as the package writes it", () => {
    expect(readFileSync(path, "utf8")).toBe(writeWif(draft));
  });

  it("is warned of its plain borders, which take up more than the twill, and told which wefts are carried", async () => {
    const { status, stdout } = await run(["check", path, "--format", "json"]);
    const { findings } = JSON.parse(stdout) as { findings: { rule: string; severity: string }[] };
    expect(status).toBe(0);
    expect(findings.map(({ rule, severity }) => `${severity} ${rule}`)).toEqual([
      "warning uneven-take-up",
      "warning uneven-take-up",
      "note carried-weft",
      "note carried-weft",
    ]);
  });

  it("is planned by its sett: 401 ends at 8 per cm are 501.25 mm, rounded up, in the reed", async () => {
    const { status, stdout } = await run(["plan", path]);
    expect(status).toBe(0);
    expect(stdout).toContain("401 ends; 561 picks in a piece");
    expect(stdout).toContain("501.3 mm (19.73 in) in the reed");
    // Its wefts are named by their colours, each once.
    expect(stdout).toMatch(/^ +#a8452f: 8 picks a piece, /m);
  });

  it("expands to the twill 2/1/1/1/1/2 in its middle and to plain weave at both ends", async () => {
    const { status, stdout } = await run(["expand", path]);
    const rows = stdout.trimEnd().split("\n");
    expect(status).toBe(0);
    expect(rows).toHaveLength(561);
    expect(rows.at(-1)).toBe(`${"#.".repeat(200)}#`);
    expect(rows.at(-29)!.slice(0, 32)).toBe("##.#.#..".repeat(4));
  });
});
