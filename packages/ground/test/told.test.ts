import { describe, expect, it } from "vitest";
import { refusalBy } from "../../../tests/support/refusal.js";
import {
  type Ground,
  GroundError,
  groundFromWeave,
  groundPlanOf,
  parseWeave,
  regularPair,
  satinOrder,
  tieUpOf,
  twillAngle,
  twillsOn,
} from "../src/index.js";
import { pulleyPairs } from "../src/loom/pulleys.js";
import { checkShafts } from "../src/weave/needs.js";

/** What a refusal says, and the facts that it says it with. */
const told = (run: () => unknown) => {
  const { code, facts, message } = refusalBy(run, GroundError);
  return [code, message, facts];
};

const LAMMS =
  "a treadle is tied to the lower lamm of a shaft that it raises, and to the upper lamm of one that it sinks";
const RESTS =
  "a shaft neither raised nor sunk stays where the figure puts its ends, through long-eyed heddles";
const broken = groundFromWeave("broken twill");
const plain = groundPlanOf("plain").ground;
/** Two shafts at a time, a pick on which all rest, and a step that comes again. */
const paired: Ground = {
  shafts: 4,
  threading: [1, 2, 3, 4],
  steps: [
    { raise: [1, 2], sink: [3] },
    { raise: [], sink: [] },
    { raise: [4], sink: [1, 2] },
    { raise: [1, 2], sink: [3] },
  ],
};

describe("a tie-up", () => {
  it("says how lamms are tied, and that shafts rest where some do", () => {
    expect(tieUpOf(broken, "countermarch")).toMatchObject({ notes: [LAMMS, RESTS] });
    expect(tieUpOf(plain, "countermarch")).toMatchObject({ notes: [LAMMS] });
    expect(tieUpOf(paired, "countermarch")).toMatchObject({
      notes: [LAMMS, RESTS],
      treadling: [1, 0, 2, 1],
      count: 6,
    });
    expect(tieUpOf(broken, "pulleys")).toMatchObject({ notes: [RESTS] });
    expect(tieUpOf(plain, "pulleys")).toMatchObject({ notes: [], pairs: [[1, 2]] });
  });

  it("has a bar a pick on a list, one for a pick that rests and one for each that comes again", () => {
    expect(tieUpOf(paired, "list")).toMatchObject({ treadling: [1, 2, 3, 4], count: 9, notes: [RESTS] });
    expect(tieUpOf(plain, "list")).toMatchObject({ treadling: [1, 2], count: 4, notes: [] });
  });

  it("says what an action that moves one way does not hold", () => {
    expect(tieUpOf(plain, "jack")).toMatchObject({
      ties: [
        { raise: [1], sink: [] },
        { raise: [2], sink: [] },
      ],
      notes: ["a jack pulls no shaft down, so units may be drawn only on picks where no treadle is down"],
    });
    expect(tieUpOf(plain, "sinking")).toMatchObject({
      ties: [
        { raise: [], sink: [2] },
        { raise: [], sink: [1] },
      ],
      notes: [
        "a sinking shed holds no shaft up: at rest all shafts hang raised, and units may be drawn only on picks where no treadle is down",
      ],
    });
  });

  it.each<[Ground, "jack" | "sinking", string]>([
    [
      broken,
      "jack",
      "pick 1 sinks shaft 4 and leaves others to the figure, but a jack only raises: the drawn units would never be bound",
    ],
    [
      broken,
      "sinking",
      "pick 1 raises shaft 1 and leaves others to the figure, but a sinking shed only sinks: the undrawn units would never be bound",
    ],
    [
      paired,
      "sinking",
      "pick 1 raises shafts 1, 2 and leaves others to the figure, but a sinking shed only sinks: the undrawn units would never be bound",
    ],
    [
      { shafts: 2, threading: [1, 2], steps: [{ raise: [1], sink: [] }] },
      "jack",
      "pick 1 sinks shafts none and leaves others to the figure, but a jack only raises: the drawn units would never be bound",
    ],
  ])("says on which pick an action that moves one way fails: %#", (ground, action, why) => {
    expect(tieUpOf(ground, action)).toEqual({ possible: false, action, why });
  });

  it("tells treadles apart that differ in the places of their numbers alone", () => {
    const steps = [
      { raise: [1, 2], sink: [] },
      { raise: [12], sink: [] },
      { raise: [], sink: [1, 2] },
      { raise: [], sink: [12] },
    ];
    expect(tieUpOf({ shafts: 12, threading: [1], steps }, "countermarch")).toMatchObject({
      treadling: [1, 2, 3, 4],
    });
  });
});

describe("a shaft without a partner over a pulley", () => {
  const alone = "has no partner that sinks wherever it rises and rises wherever it sinks";
  const [up, back] = [
    { raise: [1], sink: [2] },
    { raise: [3], sink: [1] },
  ];

  it.each<[string, number, Ground["steps"], string]>([
    [
      "one up and one down on each pick",
      3,
      [up, { raise: [2], sink: [3] }, back],
      "shaft 1 rises where shaft 2 sinks, but sinks where shaft 3 rises; over a pulley it can have one partner only",
    ],
    ["two up and two down", 4, [{ raise: [1, 2], sink: [3, 4] }, up, back], `shaft 1 ${alone}`],
    [
      "two up and two down, of an odd number",
      5,
      [{ raise: [1, 2], sink: [3, 4] }, up, back],
      `shaft 1 of 5 ${alone}`,
    ],
    ["two up", 4, [{ raise: [1, 2], sink: [3] }, up, back], `shaft 1 ${alone}`],
    ["two down", 4, [{ raise: [1], sink: [3, 4] }, up, back], `shaft 1 ${alone}`],
    ["never down", 3, [up, { raise: [1], sink: [3] }], `shaft 1 of 3 ${alone}`],
    ["never up", 4, [{ raise: [2], sink: [1] }, back], `shaft 1 ${alone}`],
  ])("is told, and why: %s", (_, shafts, steps, why) => {
    expect(pulleyPairs({ shafts, threading: [1], steps })).toEqual({ why });
  });
});

describe("a weave that needs more shafts than there are", () => {
  it.each([
    [1, "plain"],
    [2, "plain"],
    [3, "twill 1/2"],
    [4, "broken twill 1/3 or twill 1/3"],
    [5, "satin 5 step 2, broken twill 1/4 or twill 1/4"],
    [6, "satin 6, broken twill 1/5 or twill 1/5"],
    [7, "satin 7 step 2, broken twill 1/6 or twill 1/6"],
    [8, "satin 8 step 3, broken twill 1/7 or twill 1/7"],
  ])("is refused on %i with what could be woven there", (loomShafts, fits) => {
    expect(
      told(() => checkShafts({ kind: "twill", ratio: [1, 8] }, "twill 1/8", undefined, loomShafts)),
    ).toEqual([
      "too-large",
      `twill 1/8 needs 9 ground shafts and the loom has ${loomShafts}; it could weave ${fits}`,
      { shafts: 9, loomShafts },
    ]);
  });

  it("is refused by the shafts of its ratio, its ends, its order, or the ends that it is counted on", () => {
    const needed = (run: () => void) => refusalBy(run, GroundError).facts["shafts"];
    expect(needed(() => checkShafts({ kind: "satin", ends: 8 }, "a satin", undefined, 7))).toBe(8);
    expect(
      needed(() => checkShafts({ kind: "satin", order: [1, 3, 5, 2, 4] }, "a satin", undefined, 4)),
    ).toBe(5);
    expect(needed(() => checkShafts({ kind: "plain" }, "plain", undefined, 1))).toBe(2);
    expect(needed(() => checkShafts({ kind: "plain" }, "plain", 6, 4))).toBe(6);
  });

  it("is not refused where there are as many, or nobody has counted them", () => {
    expect(() => checkShafts({ kind: "twill", ratio: [1, 8] }, "twill 1/8", undefined, 9)).not.toThrow();
    expect(() => checkShafts({ kind: "twill", ratio: [1, 8] }, "twill 1/8")).not.toThrow();
  });
});

describe("a regular pair", () => {
  it("is refused where there is none", () => {
    expect(told(() => regularPair(2))).toEqual([
      "bad-ends",
      "a raise and sink plan needs 3 ends or more, not 2",
      { ends: 2 },
    ]);
    expect(told(() => regularPair(8, []))).toEqual([
      "bad-step",
      "no pair of orders on 8 ends has its steps among none",
      { ends: 8 },
    ]);
  });

  it("leaves the fewest places open of all that its steps allow", () => {
    const open = ({ cut }: ReturnType<typeof regularPair>) => cut.sideways.open + cut.lengthways.open;
    expect([3, 5, 7, 8, 9].map((ends) => open(regularPair(ends)))).toEqual([4, 4, 4, 0, 4]);
    expect(open(regularPair(8, [2]))).toBe(4);
    expect(open(regularPair(8, [2, 4]))).toBe(0);
    expect(open(regularPair(8, [4, 2]))).toBe(0);
  });
});

describe("a plan says", () => {
  const odd = (ends: number, shaft: number) =>
    `on ${ends} ends the mirrored pair would raise and sink shaft ${shaft} on one pick, so two regular orders never cut clean all round`;
  const faces =
    "drawing can only raise ends, so drawn units weave this warp-faced weave and undrawn units its weft-faced counterpart";
  const none =
    "every pick raises or sinks every shaft, so no figure can show; add a pattern weft to show one";

  it.each<[string, Parameters<typeof groundPlanOf>[1], readonly string[], boolean]>([
    ["plain", {}, [none], false],
    ["twill 2/2", {}, [none], false],
    ["satin 5 step 2", {}, [odd(5, 3)], true],
    ["satin 5 step 2", { unitEnds: 10, picksPerRow: 10 }, [odd(5, 3)], true],
    [
      "satin 5 step 2",
      { unitEnds: 7 },
      [
        "a unit of 7 ends is no multiple of the 5 ends of the repeat, so units end at 5 places of it",
        odd(5, 3),
      ],
      false,
    ],
    [
      "satin 5 step 2",
      { picksPerRow: 7 },
      [
        "a row of 7 picks is no multiple of the 5 picks of the repeat, so rows end at 5 places of it",
        odd(5, 3),
      ],
      false,
    ],
    ["twill 2/1", {}, [faces, odd(3, 2)], false],
    ["twill 1/2", {}, [odd(3, 2)], false],
    ["twill 3/1", {}, [faces], false],
    ["satin 6", {}, [], false],
  ])(
    "%s %j: why it is as it is, and whether an irregular pair is cleaner",
    (weave, size, reasons, cleaner) => {
      const plan = groundPlanOf(weave, size);
      expect(plan.reasons).toEqual(reasons);
      expect(plan.cleaner !== undefined).toBe(cleaner);
    },
  );
});

describe("what cannot be", () => {
  it.each<[() => unknown, string, string, Readonly<Record<string, unknown>>]>([
    [
      () => twillsOn(1),
      "bad-size",
      "the number of ends of a twill must be a whole number of at least 2, not 1",
      { value: 1, least: 2 },
    ],
    [
      () => twillsOn(17),
      "too-large",
      "the twills on 17 ends are too many to list; 16 ends are the most",
      { ends: 17, most: 16 },
    ],
    [
      () => satinOrder(8, 2),
      "bad-step",
      "step 2 on 8 ends leaves ends unbound, for both are divisible by 2; the steps of a satin on 8 ends are 3, 5",
      { ends: 8, step: 2 },
    ],
    [
      () => satinOrder(8, 1),
      "bad-step",
      "step 1 on 8 ends is a twill; the steps of a satin on 8 ends are 3, 5",
      { ends: 8, step: 1 },
    ],
    [
      () => satinOrder(8, 7),
      "bad-step",
      "step 7 on 8 ends is a twill; the steps of a satin on 8 ends are 3, 5",
      { ends: 8, step: 7 },
    ],
    [
      () => satinOrder(8, 8),
      "bad-step",
      "a satin on 8 ends cannot have the step 8; the steps of a satin on 8 ends are 3, 5",
      { ends: 8, step: 8 },
    ],
    [
      () => satinOrder(8, 0),
      "bad-step",
      "a satin on 8 ends cannot have the step 0; the steps of a satin on 8 ends are 3, 5",
      { ends: 8, step: 0 },
    ],
    [
      () => satinOrder(4, 2),
      "bad-step",
      'no step makes a satin on 4 ends; "broken twill" stands in for it',
      { ends: 4, step: 2 },
    ],
    [
      () => twillAngle({ up: 1, out: 1 }, { ends: 0, picks: 2 }),
      "bad-size",
      "setts must be above 0, not 0 ends and 2 picks",
      { ends: 0, picks: 2 },
    ],
    [
      () => twillAngle({ up: 1, out: 1 }, { ends: 2, picks: 0 }),
      "bad-size",
      "setts must be above 0, not 2 ends and 0 picks",
      { ends: 2, picks: 0 },
    ],
  ])("is refused in a sentence with its facts: %#", (run, code, sentence, facts) => {
    expect(told(run)).toEqual([code, sentence, facts]);
  });

  it.each([
    ["corkscrew", 10, "the description ends where the number of ends (a whole number) was expected"],
    ["corkscrew 7x", 11, 'found "7x" where the number of ends (a whole number) was expected'],
    ["hopsack x", 9, 'found "x" where a ratio of ends up and down, as in 1/3 was expected'],
    ["hopsack 1/2x", 9, 'found "1/2x" where a ratio of ends up and down, as in 1/3 was expected'],
    ["satin 8 step", 13, "the description ends where the step (a whole number) was expected"],
    ["satin 8 order", 14, "the description ends where an end (a whole number) was expected"],
    ["twill x1/3", 7, 'found "x1/3" where a ratio of ends up and down, as in 1/3 was expected'],
    ["broken twill 1/3 by", 20, 'the description ends where "halves" or "fourths" was expected'],
    [
      "broken twill 1/3 take",
      22,
      "the description ends where the number of ends taken (a whole number) was expected",
    ],
    [
      "broken twill 1/3 take 2 skip",
      29,
      "the description ends where the number of ends skipped (a whole number) was expected",
    ],
    ["undulating twill 1/3 moves", 27, "the description ends where a move (a whole number) was expected"],
    [
      "herringbone twill 1/3 after",
      28,
      "the description ends where the number of ends (a whole number) was expected",
    ],
  ])("is refused where a description stops making sense: %s", (text, column, sentence) => {
    expect(told(() => parseWeave(text))).toEqual([
      "bad-description",
      `column ${column}: ${sentence}`,
      { column },
    ]);
  });

  it("is a weave that nobody knows, and the one that was meant is named", () => {
    expect(told(() => parseWeave("twil 1/3"))).toEqual([
      "unknown-weave",
      'column 1: "twil" is no weave known here; did you mean "twill"?',
      { column: 1, weave: "twil" },
    ]);
  });
});
