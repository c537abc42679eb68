import type { Finding, Report } from "@drawcord/check";
import { fromCells } from "@drawcord/grid";
import { describe, expect, it } from "vitest";
import { paintFor } from "../src/paint.js";
import { lastLine } from "../src/pretty/last-line.js";
import { type Cloth, reportText } from "../src/pretty/report.js";
import { list } from "../src/pretty/words.js";

const plain = paintFor({ isTerminal: false, env: {} });

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
};

const cloth = (findings: readonly Finding[]): Cloth => ({
  file: "small.recipe.yaml",
  title: "Small",
  report: { ...report, findings },
  drawdown: () => fromCells(4, 8, (pick, end) => (end - pick + 4) % 4 === 0),
});

describe("the report as a weaver reads it", () => {
  it("names the file and its size, draws each finding, and lists the numbers", () => {
    expect(reportText(cloth([finding]), 80, plain)).toBe(`small.recipe.yaml  Small

error  float-length
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
cuts         sideways 9120, all clean; lengthways 8864, 64 open
balance      warp on 25 % of the face; 33.3 % drawn, in 1 area, the largest of 2 squares
             intersections: 1 on each end; 4 to 9 on a pick, 5.3 on average
integrity    the cloth falls apart into 3 layers; 4 loose ends: 1-3 7; 1 loose pick: 2
`);
  });

  it("shows a few findings of a rule and counts the rest", () => {
    const many = Array.from({ length: 30 }, () => finding);
    const text = reportText(cloth(many), 80, plain);
    expect(text.match(/error {2}float-length/g)).toHaveLength(5);
    expect(text).toContain("\n\nand 25 more of float-length; --format json lists them all\n");
  });

  it("works the cloth out only when there is something to draw", () => {
    const never = {
      ...cloth([
        { rule: "idle-shaft", severity: "note", message: "pattern shaft 3 is idle", shaft: 3, picks: [1, 4] },
      ]),
    };
    const text = reportText(
      {
        ...never,
        drawdown: () => {
          throw new Error("drawn");
        },
      },
      80,
      plain,
    );
    expect(text).toContain("note  idle-shaft\n  pattern shaft 3 is idle\n\n");
  });

  it("tells a finding that is accepted by its reason, and names a rule that did not run", () => {
    const waived = { ...finding, waived: "the fringe covers it" };
    const rules = { ran: ["float-length"], skipped: [{ rule: "open-cut", reason: "it is switched off" }] };
    const { drawdown } = cloth([]);
    const text = reportText(
      { file: "a", title: undefined, report: { ...report, rules, findings: [waived] }, drawdown },
      80,
      plain,
    );
    expect(text).toMatch(
      /^a\n\nwaived {2}float-length: the fringe covers it\n {2}weft float of 3 ends .*\n\nsize /,
    );
    expect(text).toMatch(/\n\nopen-cut did not run: it is switched off\n$/);
  });

  it("never prints what a terminal would obey, from a title, a name or a message", () => {
    const evil = "\u001b]0;owned\u0007\u009b2J\u202e\r";
    const { drawdown } = cloth([]);
    const text = reportText(
      { file: evil, title: evil, report: { ...report, findings: [{ ...finding, message: evil }] }, drawdown },
      80,
      plain,
    );
    expect(text.replaceAll("\n", "")).not.toMatch(/[\p{Cc}\u202e]/u);
    expect(text.split("<U+001B>]0;owned<U+0007><U+009B>2J<U+202E><U+000D>")).toHaveLength(4);
  });
});

describe("the last line", () => {
  const ran = { ran: ["layers", "float-length", "open-cut"], skipped: [] };
  const none = { error: 0, warning: 0, note: 0 };

  it("says what was found and what ran", () => {
    expect(lastLine([{ summary: none, waived: 0, rules: ran }])).toBe("0 findings, 3 of 3 rules ran\n");
    expect(lastLine([{ summary: { error: 1, warning: 2, note: 0 }, waived: 2, rules: ran }])).toBe(
      "3 findings (1 error, 2 warnings), 2 waived, 3 of 3 rules ran\n",
    );
  });

  it("adds files up, and a rule ran when it looked at all of them", () => {
    const part = {
      ran: ["layers", "float-length"],
      skipped: [{ rule: "open-cut", reason: "it is switched off" }],
    };
    expect(
      lastLine([
        { summary: { ...none, note: 1 }, waived: 0, rules: part },
        { summary: none, waived: 0, rules: ran },
      ]),
    ).toBe("1 finding (1 note) in 2 files, 2 of 3 rules ran\n");
  });
});

it("numbers in a list have their runs folded, and a long list an end", () => {
  expect(list([1, 2, 3, 7, 9, 10])).toBe("1-3 7 9-10");
  expect(list(Array.from({ length: 20 }, (_, i) => 2 * i))).toBe("0 2 4 6 8 10 12 14 and 12 more");
});
