import { type Finding, NOT_ASKED_FOR, type Report } from "@drawcord/check";
import { fromCells } from "@drawcord/grid";
import { describe, expect, it } from "vitest";
import type { CheckedCloth } from "../src/checking/cloth.js";
import { addTo, countsOf, emptyTally } from "../src/checking/tally.js";
import type { Look } from "../src/formats/format.js";
import { paintFor } from "../src/paint.js";
import { lastLine } from "../src/pretty/last-line.js";
import { numbers } from "../src/pretty/numbers.js";
import { reportText as textOf } from "../src/pretty/report.js";

const plain = paintFor({ isTerminal: false, env: {} });
const look: Look = { width: 80, colour: false, all: false };
const reportText = (cloth: CheckedCloth, more: Partial<Look> = {}) =>
  textOf(cloth, { ...look, ...more }, plain);

const report: Report = {
  ok: false,
  size: { ends: 8, picks: 4, units: 2, rows: 1 },
  summary: { error: 1, warning: 0, note: 0 },
  floats: {
    warpFace: { longest: 12, lengths: { "12": 1, "3": 5120 } },
    warpBack: { longest: 0, lengths: {} },
    weftFace: { longest: 8, lengths: { "1": 1, "2": 10, "3": 4, "4": 5, "5": 6, "6": 7, "7": 8, "8": 9 } },
    weftBack: { longest: 1, lengths: { "1": 9 } },
  },
  cut: { side: { cutting: 9120, open: 0 }, across: { cutting: 8800, open: 64 } },
  balance: {
    warpFaceShare: 0.25,
    drawnShare: 1 / 3,
    intersections: { ends: { least: 1, most: 1, mean: 1 }, picks: { least: 4, most: 9, mean: 5.25 } },
    areas: { count: 1, largest: 2 },
  },
  integrity: { hangsTogether: false, layers: 3, looseEnds: [1, 2, 3, 7], loosePicks: [2] },
  waived: 0,
  rules: { ran: ["layers", "float-length"], skipped: [] },
  findings: [],
};

const finding: Finding = {
  rule: "float-length",
  severity: "error",
  message: "weft float of 3 ends on the face at ends 2-4, pick 2 (units 1, row 1), where 2 are allowed",
  ends: [2, 4],
  picks: [2, 2],
  measured: 3,
  limit: 2,
  unit: "threads",
  face: "face",
  system: "weft",
};

const openCut: Finding = {
  rule: "open-cut",
  severity: "warning",
  message: "open",
  measured: 50,
  limit: 0,
  unit: "percent",
  system: "weft",
  side: "left",
};

const place = {
  file: "small.recipe.yaml",
  ...{ line: 7, column: 3, offset: 90 },
  end: { line: 7, column: 9, offset: 96 },
};

const cloth = (findings: readonly Finding[]): CheckedCloth => ({
  file: "small.recipe.yaml",
  title: "Small",
  report: { ...report, findings },
  places: findings.map(() => place),
  causes: [],
  untried: [],
  edits: () => [],
  changed: () => fromCells(4, 8, () => false),
  drawdown: () => fromCells(4, 8, (pick, end) => (end - pick + 4) % 4 === 0),
});

describe("the report as a weaver reads it", () => {
  it("names the file and its size, draws each finding, and lists the numbers", () => {
    expect(reportText(cloth([finding]))).toBe(`small.recipe.yaml  Small

error  float-length  line 7
  weft float of 3 ends on the face at ends 2-4, pick 2 (units 1, row 1), where 2 are allowed

  pick 4   ...#...#
       3   ..#...#.
       2 > .#...#..
       1   #...#...
            ^^^
     end    2 4   8

size         8 ends x 4 picks, 2 units x 1 row
warp floats  on the face up to 12 (5120 of 3, 1 of 12)
             on the back none
weft floats  on the face up to 8 (11 shorter, 4 of 3, 5 of 4, 6 of 5, 7 of 6, 8 of 7, 9 of 8)
             on the back up to 1 (9 of 1)
cuts         side edges 9120, all clean; top and bottom 8864, 64 open
balance      warp on 25 % of the face; 33.3 % drawn, in 1 area, the largest of 2 squares
             intersections: 1 on each end; 4 to 9 on a pick, 5.3 on average
integrity    the cloth falls apart into 3 layers; 4 loose ends: 1-3 7; 1 loose pick: 2
`);
  });

  it("shows the worst few findings of a rule and counts the rest, unless all are asked for", () => {
    const many = Array.from({ length: 190 }, () => finding);
    const text = reportText(cloth(many));
    expect(text.match(/error {2}float-length/g)).toHaveLength(3);
    expect(text).toContain("\n\nand 187 more of float-length; --all shows them\n\nsize ");
    const all = reportText(cloth(many), { all: true });
    expect(all.match(/error {2}float-length/g)).toHaveLength(190);
    expect(all).not.toContain("more of");
  });

  it("counts each rule for itself, right after what it shows of it, and what is waived last", () => {
    const waived = { ...finding, waived: "the fringe covers it" };
    const text = reportText(cloth([...Array(4).fill(finding), waived, waived, ...Array(5).fill(openCut)]));
    const heads = text.match(/^(error|warning|waived|and) .*/gm);
    expect(heads).toEqual([
      ...Array(3).fill("error  float-length  line 7"),
      "and 1 more of float-length; --all shows them",
      ...Array(3).fill("warning  open-cut  line 7"),
      "and 2 more of open-cut; --all shows them",
      ...Array(2).fill("waived  float-length: the fringe covers it"),
    ]);
  });

  it("shows with --quiet only what fails, without the numbers", () => {
    const waived = { ...finding, waived: "the fringe covers it" };
    const text = reportText(cloth([openCut, waived]), { least: "warning" });
    expect(text).toBe("small.recipe.yaml  Small\n\nwarning  open-cut  line 7\n  open\n");
  });

  it("works the cloth out only when there is something to draw", () => {
    const text = reportText({
      ...cloth([
        {
          rule: "idle-shaft",
          severity: "note",
          message: "pattern shaft 3 is idle",
          harness: "pattern",
          shaft: 3,
          picks: [1, 4],
        },
      ]),
      places: [null],
      drawdown: () => {
        throw new Error("drawn");
      },
    });
    expect(text).toContain("note  idle-shaft\n  pattern shaft 3 is idle\n\n");
  });

  it("never prints what a terminal would obey, from a title, a name or a message", () => {
    const evil = "\u001b]0;owned\u0007\u009b2J\u202e\r";
    const text = reportText({ ...cloth([{ ...finding, message: evil }]), file: evil, title: evil });
    expect(text.replaceAll("\n", "")).not.toMatch(/[\p{Cc}\u202e]/u);
    expect(text.split("<U+001B>]0;owned<U+0007><U+009B>2J<U+202E><U+000D>")).toHaveLength(4);
  });
});

describe("the last line", () => {
  const ran: Report["rules"] = { ran: ["layers", "float-length", "open-cut"], skipped: [] };
  const off = { rule: "open-cut" as const, reason: "it is switched off" };
  const part: Report["rules"] = { ran: ["layers", "float-length"], skipped: [off] };
  const none = { error: 0, warning: 0, note: 0 };
  const tallyOf = (...reports: Partial<Report>[]) => {
    const tally = emptyTally();
    for (const one of reports) addTo(tally, countsOf({ ...report, summary: none, rules: ran, ...one }));
    return tally;
  };

  it("says what was found, what was waived, and what ran", () => {
    expect(lastLine(tallyOf({}))).toBe("0 findings, 3 of 3 rules ran");
    const waived = { ...finding, waived: "the fringe covers it" };
    const cut = { ...openCut, waived: "the fringe covers it" };
    const found = { summary: { error: 1, warning: 2, note: 0 }, findings: [waived, cut, finding, waived] };
    expect(lastLine(tallyOf(found))).toBe(
      "3 findings (1 error, 2 warnings), 3 waived (2 of float-length, 1 of open-cut), 3 of 3 rules ran",
    );
  });

  it("names the rules that did not run, and why", () => {
    expect(lastLine(tallyOf({ rules: part }))).toBe(
      "0 findings, 2 of 3 rules ran; not open-cut: it is switched off",
    );
    const skipped: Report["rules"]["skipped"] = [
      off,
      { rule: "layers", reason: "it is switched off" },
      { rule: "static-drawn", reason: "no plan" },
    ];
    expect(lastLine(tallyOf({ rules: { ran: ["edge-float"], skipped } }))).toBe(
      "0 findings, 1 of 4 rules ran; not open-cut, layers: it is switched off; not static-drawn: no plan",
    );
  });

  it("counts only the rules that were asked for", () => {
    const skipped: Report["rules"]["skipped"] = [{ rule: "layers", reason: NOT_ASKED_FOR }, off];
    expect(lastLine(tallyOf({ rules: { ran: ["float-length"], skipped } }))).toBe(
      "0 findings, 1 of 2 rules asked for ran; not open-cut: it is switched off",
    );
  });

  it("adds files up; a rule ran when it looked at all of them", () => {
    const tally = tallyOf({ rules: part, summary: { ...none, note: 1 } }, {});
    expect(lastLine(tally)).toBe(
      "1 finding (1 note) in 2 files, 2 of 3 rules ran; not open-cut at 1 file: it is switched off",
    );
    tally.failures.push({ file: "bad", reasons: [{ message: "bad: there is no such file" }] });
    expect(lastLine(tally)).toContain("in 2 files, 1 file not usable, 2 of 3");
  });
});

describe("the cuts of the whole cloth beside those of open-cut", () => {
  const rules = { ran: ["open-cut" as const], skipped: [] };
  const lines = (findings: readonly Finding[], open: number) =>
    numbers({
      ...report,
      rules,
      findings,
      cut: { side: { cutting: 4, open }, across: { cutting: 0, open: 0 } },
    });

  it("say why where they are not the same, and nothing where they are", () => {
    expect(lines([{ ...openCut, count: 3 }], 3).join("\n")).not.toContain("open-cut");
    expect(lines([openCut], 3).join("\n")).toContain(
      "open-cut reports 1 open at side edges and 0 at top and bottom",
    );
  });
});
