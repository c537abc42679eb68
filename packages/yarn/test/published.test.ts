import { expect, it } from "vitest";
import {
  calculate,
  chains,
  convert,
  countIn,
  coverFactor,
  dentsOf,
  diameterByPacking,
  diameterByPeirce,
  diametersByRoot,
  fibres,
  firmness,
  interlacing,
  massOf,
  parseYarn,
  plied,
  type Quantity,
  settByBrierley,
  settByRoot,
  settInAnotherWeave,
  settInAnotherYarn,
  settInReed,
  settOfWraps,
  sleyings,
  tex,
  toMetric,
  type UnitName,
  usualWeaves,
  weighed,
} from "../src/index.js";
import { brokenTwill, drawdown, plain, satin5, satin8, twill13, twill21, twill22 } from "./weaves.js";

// The works, as they are named beside each value; pages are printed pages.
const TAY = "J. T. Taylor, Cotton Weaving and Designing, 6th ed. 1909, p.";
const BELL = "T. F. Bell, Jacquard Weaving and Designing, 1895, p.";
const WOLF = "A. Wolfensberger, Theory of Silk Weaving, 2nd ed. 1921, p.";
const BRK = "C. P. Brooks, Cotton Manufacturing, 1888 (the year from memory)";
const D2260 = "ASTM D2260, Standard Tables of Conversion Factors and Equivalent Yarn Numbers, Table 1";
const SETT = "Sett Systems, Dictionary of the English textile terms, 2014 (online)";
const GATE = "Graduate Aptitude Test in Engineering, paper Textile,";
const NIST = "NIST Special Publication 811";
const PEIRCE =
  "F. T. Peirce, The Geometry of Cloth Structure, Journal of the Textile Institute 28, 1937, pp. T45-T96 (the formula from memory, its page not at hand)";
const DERIVED = "derived";
const COMMON = "common practice";

/** What is claimed, what the package finds, the printed figure, how far off a printed figure may be, and who printed it. */
type Check = readonly [claim: string, found: () => number, printed: number, within: number, source: string];

const inch = (from: Quantity): number => convert(from, "per inch").value;
const as = (from: Quantity, unit: UnitName): number => convert(from, unit).value;
const cotton = (from: string | Quantity): number => countIn(from, "cotton").value;
const endsAt = (reed: string, inADent: number): number => inch(settInReed(reed, [inADent]));
const hanks = (length: Quantity): number => calculate("hanks-of-length", { l: length, h: "840 yd" }).value;
const weftOf = (width: string, picks: string, cloth: string): Quantity =>
  calculate("weft-yarn", { p: calculate("picks-in-length", { P: picks, c: cloth }), W: width });
const warpOf = (ends: number, length: string): Quantity => calculate("warp-yarn", { n: ends, L: length });
const firm = firmness;

const counts: readonly Check[] = [
  ["cotton, C", () => tex("1 Ne").value, 590.541247, 1e-6, D2260],
  ["spun silk, C", () => tex("1 spun silk").value, 590.541247, 1e-6, D2260],
  ["worsted, C", () => tex("1 worsted").value, 885.811871, 1e-6, D2260],
  ["linen lea, C", () => tex("1 lea").value, 1653.515493, 1e-6, D2260],
  ["woollen cut, C", () => tex("1 cut").value, 1653.515493, 1e-6, D2260],
  ["woollen run, C", () => tex("1 run").value, 310.034155, 1e-6, D2260],
  ["a thousand yards a pound, C / 1000", () => tex("1000 yd/lb").value, 496.054647857, 1e-9, D2260],
  ["Yorkshire skein, C", () => tex("1 YSW").value, 1937.713468, 1e-6, COMMON],
  ["cotton, yards a pound", () => countIn("1 Ne", "yards-a-pound").value, 840, 1e-9, `${TAY} 307`],
  ["worsted, yards a pound", () => countIn("1 worsted", "yards-a-pound").value, 560, 1e-9, `${TAY} 307`],
  ["linen, yards a pound", () => countIn("1 lea", "yards-a-pound").value, 300, 1e-9, `${TAY} 307`],
  ["spun silk, yards a pound", () => countIn("1 spun silk", "yards-a-pound").value, 840, 1e-9, `${TAY} 307`],
  ["woollen cut, yards a pound", () => countIn("1 cut", "yards-a-pound").value, 300, 1e-9, `${TAY} 307`],
  ["woollen run, yards a pound", () => countIn("1 run", "yards-a-pound").value, 1600, 1e-9, D2260],
  ["metric 1 in cotton counts", () => cotton("Nm 1"), 0.590541, 5e-7, D2260],
  ["cotton 1 in worsted counts", () => countIn("1 Ne", "worsted").value, 1.5, 1e-9, D2260],
  ["cotton 1 in runs", () => countIn("1 Ne", "woollen-run").value, 0.525, 1e-9, D2260],
  ["cotton 1 in leas", () => countIn("1 Ne", "linen-lea").value, 2.8, 1e-9, D2260],
  ["a grain in 120 yards, tex", () => tex("1 grain").value, 0.590541, 5e-7, D2260],
  ["cotton 10 in worsted counts", () => countIn("10 Ne", "worsted").value, 15, 1e-9, D2260],
  ["30 tex in cotton counts", () => cotton("30 tex"), 19.7, 0.05, D2260],
  ["cotton 20 in worsted counts", () => countIn("20 Ne", "worsted").value, 30, 1e-9, `${BRK}, p. 91`],
  ["cotton 20 in leas", () => countIn("20 Ne", "linen-lea").value, 56, 1e-9, `${BRK}, p. 91`],
  ["30s, yards a pound", () => countIn("30s cotton", "yards-a-pound").value, 25_200, 1e-6, `${TAY} 307`],
  ["32s, yards a pound", () => countIn("32s cotton", "yards-a-pound").value, 26_880, 1e-6, `${TAY} 337`],
  ["60 with 40", () => cotton(plied(["60 Ne", "40 Ne"])), 24, 1e-9, `${TAY} 308-310`],
  ["10, 20 and 60", () => cotton(plied(["10 Ne", "20 Ne", "60 Ne"])), 6, 1e-9, `${TAY} 308-310`],
  ["of 100 lb of it, 10s", () => 100 * (tex("10 Ne").value / tex("6 Ne").value), 60, 1e-9, `${TAY} 308-310`],
  ["of 100 lb of it, 20s", () => 100 * (tex("20 Ne").value / tex("6 Ne").value), 30, 1e-9, `${TAY} 308-310`],
  ["of 100 lb of it, 60s", () => 100 * (tex("60 Ne").value / tex("6 Ne").value), 10, 1e-9, `${TAY} 308-310`],
  ["40 with 20", () => cotton(plied(["40 Ne", "20 Ne"])), 13 + 1 / 3, 1e-9, `${BRK}, p. 91`],
  ["40, 80 and 120", () => cotton(plied(["40 Ne", "80 Ne", "120 Ne"])), 21.81, 0.01, `${BRK}, p. 91`],
  ["2/40 cotton counts", () => cotton("2/40 cotton"), 20, 1e-9, `${TAY} 308`],
  ["2/40 worsted counts", () => countIn("2/40 worsted", "worsted").value, 20, 1e-9, `${TAY} 308`],
  ["2/40 linen counts", () => countIn("2/40 linen", "linen-lea").value, 20, 1e-9, `${TAY} 308`],
  ["40/2 spun silk counts", () => countIn("40/2 spun silk", "spun-silk").value, 40, 1e-9, `${TAY} 308`],
  ["120 yd of 20 grains", () => cotton(weighed("120 yd", "20 gr")), 50, 1e-9, `${TAY} 329-331`],
  ["34 yd of 8 grains", () => cotton(weighed("34 yd", "8 gr")), 35.4167, 5e-5, `${TAY} 329-331`],
  ["16 yd of 20s, grains", () => as(massOf("20 Ne", "16 yd"), "gr"), 6.667, 5e-4, `${TAY} 329-331`],
  [
    "2000 ends of 500 yd in 60 lb",
    () => cotton(weighed(warpOf(2000, "500 yd"), "60 lb")),
    19.84,
    0.005,
    `${TAY} 331`,
  ],
  ["a pound in grams", () => toMetric({ value: 1, unit: "lb", kind: "mass" }).value, 453.59237, 0, NIST],
  ["a yard in millimetres", () => toMetric({ value: 1, unit: "yd", kind: "length" }).value, 914.4, 0, NIST],
  ["denier times cotton count", () => countIn("1 Ne", "denier").value, 5314.871, 5e-4, DERIVED],
  ["jute of 1 lb a spyndle, tex", () => tex("1 jute").value, 34.448, 5e-4, DERIVED],
  ["a silk dram, tex", () => tex("1 dram").value, 1.937713, 5e-7, DERIVED],
  ["a silk dram, denier", () => countIn("1 dram", "denier").value, 17.4394, 5e-5, DERIVED],
  ["spun silk single, plies by x", () => countIn("40 spun silk x 2", "spun-silk").value, 20, 1e-9, DERIVED],
  ...(
    [
      [1, 590.5412],
      [4, 147.6353],
      [8, 73.8177],
      [10, 59.0541],
      [16, 36.9088],
      [20, 29.5271],
      [30, 19.6847],
      [40, 14.7635],
      [60, 9.8424],
    ] as const
  ).map(
    ([count, printed]): Check => [
      `cotton ${count}, tex`,
      () => tex(`${count} Ne`).value,
      printed,
      5e-5,
      DERIVED,
    ],
  ),
  ...(
    [
      ["3/2 Ne", 1260],
      ["5/2 Ne", 2100],
      ["8/2 Ne", 3360],
      ["10/2 Ne", 4200],
      ["16/2 Ne", 6720],
      ["20/2 Ne", 8400],
      ["20/2 lea", 3000],
      ["16/2 lea", 2400],
    ] as const
  ).map(
    ([yarn, printed]): Check => [
      `${yarn}, yards a pound`,
      () => countIn(yarn, "yards-a-pound").value,
      printed,
      1e-6,
      COMMON,
    ],
  ),
];

const diameters: readonly Check[] = [
  // Printed to the half, most of them rounded up to it, the last to the ten.
  ...(
    [
      [1, 27.5],
      [4, 55.5],
      [8, 78],
      [16, 110],
      [20, 123.5],
      [30, 151],
      [32, 156],
      [40, 174.5],
      [60, 213],
      [100, 275.5],
      [200, 390],
    ] as const
  ).map(
    ([count, printed]): Check => [
      `cotton ${count}, diameters an inch`,
      () => inch(diametersByRoot(`${count} Ne`, { fibre: "cotton" })),
      printed,
      0.62,
      `${TAY} 335`,
    ],
  ),
  ["constant of cotton", () => fibres.cotton.k, 0.95, 0, `${TAY} 337`],
  [
    "cotton 16, diameter in mm",
    () => diameterByPeirce("16 Ne").value,
    0.22679,
    5e-6,
    `${DERIVED} from ${PEIRCE}`,
  ],
  [
    "cotton 36, diameters in an inch",
    () => 1 / as(diameterByPeirce("36 Ne"), "in"),
    168,
    1e-9,
    `${DERIVED} from ${PEIRCE}`,
  ],
  [
    "constant of the packing form",
    () => diameterByPacking("1 tex", "1 g/cm3", { packing: "100 %" }).value,
    0.0356825,
    5e-8,
    DERIVED,
  ],
  [
    "20/2 cotton, diameters an inch, k 0.90",
    () => inch(diametersByRoot("20/2 Ne", { k: 0.9 })),
    82.49,
    5e-3,
    DERIVED,
  ],
];

const { plain: P, "2/2 twill": T22, "2/1 twill": T21, "1/3 twill": T13 } = usualWeaves;

const setts: readonly Check[] = [
  ["plain of 32s", () => inch(settByRoot("32 Ne", P!, { fibre: "cotton" })), 78, 0.5, `${TAY} 334`],
  ["2/1 twill of 24s", () => inch(settByRoot("24 Ne", T21!, { fibre: "cotton" })), 81, 0.5, `${TAY} 338`],
  [
    "plain at 103, as 2/2 twill",
    () => inch(settInAnotherWeave("103 per inch", P!, T22!)),
    137 + 1 / 3,
    1e-6,
    `${TAY} 339`,
  ],
  [
    "78 of 32s, as 60s",
    () => inch(settInAnotherYarn("78 per inch", "32 Ne", "60 Ne")),
    106.8,
    0.05,
    `${TAY} 341`,
  ],
  [
    "mean float of 2/2 twill to the power of 0.39",
    () => inch(calculate("sett-by-brierley", { F: 2, K: 1, N: 1 })),
    1.31039,
    5e-6,
    `${GATE} 2006, question 66`,
  ],
  [
    "2/2 twill in 60 tex",
    () => inch(settByBrierley("60 tex", T22!)),
    58.1,
    0.05,
    `${GATE} 2006, question 66`,
  ],
  [
    "full cover of cotton",
    () => coverFactor(calculate("wraps-of-diameter", { d: diameterByPeirce("16 Ne") }), "16 Ne").value,
    28,
    1e-9,
    PEIRCE,
  ],
  [
    "the metric cover factor over that of inches",
    () =>
      calculate("cover-factor-in-tex", { S: "10 per inch", T: tex("9 Ne") }).value /
      coverFactor("10 per inch", "9 Ne").value,
    0.956734,
    5e-7,
    DERIVED,
  ],
  ["plain of 20/2 cotton, k 0.90", () => inch(settByRoot("20/2 Ne", P!, { k: 0.9 })), 41.2, 0.05, DERIVED],
  [
    "1/3 twill of 20/2 cotton, k 0.90",
    () => inch(settByRoot("20/2 Ne", T13!, { k: 0.9 })),
    55,
    0.05,
    DERIVED,
  ],
  [
    "diameters in the pitch of a square jammed plain weave",
    () => calculate("pitch-of-jammed-plain", { d: "1 mm" }).value,
    Math.sqrt(3) / 2,
    1e-12,
    `${DERIVED} from ${PEIRCE}`,
  ],
  [
    "crimp of a square jammed plain weave, %",
    () =>
      calculate("crimp-of-jammed-plain", { d: "1 mm", p: calculate("pitch-of-jammed-plain", { d: "1 mm" }) })
        .value,
    20.92,
    0.005,
    `${DERIVED} from ${PEIRCE}`,
  ],
  [
    "half covered both ways, %",
    () => calculate("cover-of-cloth", { c_1: "50 %", c_2: "50 %" }).value,
    75,
    1e-9,
    DERIVED,
  ],
  ["plain by wraps", () => inch(settOfWraps("36 per inch", P!)), 18, 1e-9, COMMON],
  ["twill by wraps", () => inch(settOfWraps("36 per inch", T22!)), 24, 1e-9, COMMON],
  [
    "a working sett of 30 closest",
    () => inch(calculate("working-sett", { S_m: "30 per inch" })),
    24,
    1e-9,
    COMMON,
  ],
];

const clothes: readonly Check[] = [
  ["8.6 m in 8 m, crimp", () => calculate("crimp", { L_y: "8.6 m", L_c: "8 m" }).value, 7.5, 1e-9, DERIVED],
  [
    "8.6 m in 8 m, contraction",
    () => calculate("contraction", { L_y: "8.6 m", L_c: "8 m" }).value,
    6.977,
    5e-4,
    DERIVED,
  ],
  ["60 Stockport at two", () => endsAt("60 Stockport", 2), 60, 1e-9, SETT],
  ["60 Stockport at three", () => endsAt("60 Stockport", 3), 90, 1e-9, SETT],
  ["Bradford 50 at two", () => endsAt("Bradford 50", 2), 55.56, 5e-3, SETT],
  ["Bradford 72 at two", () => endsAt("Bradford 72", 2), 80, 1e-9, SETT],
  ["12 porters Leeds at two", () => endsAt("12 porters Leeds", 2), 50.667, 5e-4, SETT],
  ["Irish 10s, dents an inch", () => inch(dentsOf("Irish 10s")), 25, 1e-9, `${TAY} 310`],
  ["36 Bradford, ends an inch", () => endsAt("36 Bradford", 2), 40, 1e-9, SETT],
  ["24 1/4 beers Bolton, dents an inch", () => inch(dentsOf("24 1/4 beers Bolton")), 20, 1e-9, SETT],
  ["9 porters Leeds, ends an inch", () => endsAt("9 Leeds", 2), 38, 1e-9, SETT],
  ["40 hundreds Irish, dents an inch", () => inch(dentsOf("40 Irish")), 100, 1e-9, SETT],
  ["20 Huddersfield, dents an inch", () => inch(dentsOf("20 Huddersfield")), 20, 1e-9, SETT],
  ["100 in 10 cm, dents in a centimetre", () => dentsOf("100 per 10 cm").value, 10, 1e-9, SETT],
  [
    "2280 ends of 38 yd, hanks",
    () => hanks(warpOf(2280, "38 yd")),
    103 + 1 / 7,
    1e-9,
    `${BRK}, page not at hand`,
  ],
  [
    "2280 ends of 38 yd of 30s, lb",
    () => as(massOf("30 Ne", warpOf(2280, "38 yd")), "lb"),
    3.438,
    5e-4,
    `${BRK}, page not at hand`,
  ],
  [
    "37.5 in by 64 picks by 36 yd of 36s, lb",
    () => as(massOf("36 Ne", weftOf("37.5 in", "64 per inch", "36 yd")), "lb"),
    2.857,
    5e-4,
    `${BRK}, page not at hand`,
  ],
  ["2000 ends of 84 yd, hanks", () => hanks(warpOf(2000, "84 yd")), 200, 1e-9, `${TAY} 332`],
  [
    "34 in by 60 picks by 84 yd, hanks",
    () => hanks(weftOf("34 in", "60 per inch", "84 yd")),
    204,
    1e-9,
    `${TAY} 332`,
  ],
  [
    "100 yd of cloth, 10 % taken up, yd",
    () => as(calculate("yarn-in-cloth", { L_c: "100 yd", k: "10 %" }), "yd"),
    110,
    1e-9,
    `${WOLF} 76`,
  ],
  [
    "4032 ends of 110 yd of 1.47 dram and 4 % waste, lb",
    () =>
      as(calculate("yarn-with-waste", { m: massOf("1.47 dram", warpOf(4032, "110 yd")), a: "4 %" }), "lb"),
    2.65,
    0.005,
    `${WOLF} 76-77`,
  ],
  [
    "100 ends an inch on 4 shafts, heddles an inch",
    () => inch(calculate("heddles-on-a-shaft", { S: "100 per inch", s: 4 })),
    25,
    1e-9,
    `${WOLF} 71`,
  ],
  [
    "30 and 20 tex, 40 and 30 a cm, 10 % crimp, g/m2",
    () =>
      calculate("cloth-weight", {
        S_1: "40 per cm",
        T_1: "30 tex",
        k_1: "10 %",
        S_2: "30 per cm",
        T_2: "20 tex",
        k_2: "10 %",
      }).value,
    198,
    1e-9,
    `${GATE} 2009, question 37`,
  ],
  [
    "60 in at 100 an inch, ends",
    () => calculate("ends-in-width", { W: "60 in", S: "100 per inch" }).value,
    6000,
    0,
    `${BELL} 174-177`,
  ],
  [
    "6000 ends, 3 to a mail, hooks",
    () => calculate("units-of-ends", { n: 6000, e: 3 }).value,
    2000,
    0,
    `${BELL} 174-177`,
  ],
  [
    "2000 ends, 5 to a mail, hooks",
    () => calculate("units-of-ends", { n: 2000, e: 5 }).value,
    400,
    0,
    `${TAY} 163`,
  ],
  ["a 12-dent reed at 1-2", () => endsOfPattern("12 per inch", [1, 2]), 18, 1e-9, COMMON],
  ["a 12-dent reed at 1-2-2", () => endsOfPattern("12 per inch", [1, 2, 2]), 20, 1e-9, COMMON],
  ["a 12-dent reed at 1-1-2", () => endsOfPattern("12 per inch", [1, 1, 2]), 16, 1e-9, COMMON],
  ["a 10-dent reed at 1-1-1-2", () => endsOfPattern("10 per inch", [1, 1, 1, 2]), 12.5, 1e-9, COMMON],
];

const firmnesses: readonly Check[] = (
  [
    ["plain", plain, 1, 2, 0, 1],
    ["2/2 twill", twill22, 2, 1, 1, 2],
    ["1/3 twill", twill13, 2, 1, 1, 3],
    ["4-end broken twill", brokenTwill, 2, 1, 1, 3],
    ["5-end satin", satin5, 2.5, 0.8, 1.2, 4],
    ["8-end satin", satin8, 4, 0.5, 1.5, 7],
  ] as const
).flatMap(([name, weave, F, CFF, FYF, longest]): Check[] => [
  [`${name}, mean float`, () => firm(weave).meanFloat.value, F, 1e-12, DERIVED],
  [`${name}, crossing-over firmness`, () => firm(weave).crossingOver.value, CFF, 1e-12, DERIVED],
  [`${name}, floating-yarn factor`, () => firm(weave).floatingYarn.value, FYF, 1e-12, DERIVED],
  [`${name}, longest float`, () => firm(weave).longestFloat, longest, 0, DERIVED],
]);

function endsOfPattern(reed: string, sley: readonly number[]): number {
  return inch(settInReed(reed, sley));
}

const all = [...counts, ...diameters, ...setts, ...clothes, ...firmnesses];

it.each(all)("%s", (claim, found, printed, within, source) => {
  const value = found();
  expect(Math.abs(value - printed), `${claim}: found ${value}, ${source} has ${printed}`).toBeLessThanOrEqual(
    within,
  );
});

it("every value names its work and page, its paper and question, or says what is missing", () => {
  // Tables and papers without pages; then the books, whose page stands behind the name.
  const named = [D2260, SETT, NIST, PEIRCE, DERIVED, COMMON];
  const paged = [
    `${TAY} `,
    `${BELL} `,
    `${WOLF} `,
    `${BRK}, p. `,
    "J. T. Taylor, Cotton Weaving and Designing, 6th ed. 1909, pp. ",
  ];
  const isNamed = (source: string) =>
    named.some((work) => source.startsWith(work)) ||
    source === `${BRK}, page not at hand` ||
    (source.startsWith(GATE) && / \d{4}, question \d+$/.test(source)) ||
    paged.some((work) => source.startsWith(work) && /^\d/.test(source.slice(work.length)));
  expect(all.filter(([, , , , source]) => !isNamed(source))).toEqual([]);
});

it("at least eighty of the values are published", () => {
  const published = all.filter(([, , , , source]) => !source.startsWith(DERIVED) && source !== COMMON);
  expect(published.length).toBeGreaterThanOrEqual(80);
});

it("R and I of a weave are taken from the weave itself", () => {
  expect(interlacing(twill21).warp).toEqual(usualWeaves["2/1 twill"]);
  expect(interlacing(twill22).weft).toEqual(usualWeaves["2/2 twill"]);
  expect(interlacing(brokenTwill).warp).toEqual(usualWeaves["1/3 twill"]);
  expect(interlacing(satin5).warp).toEqual(usualWeaves["5-end satin"]);
  expect(interlacing(satin8).weft).toEqual(usualWeaves["8-end satin"]);
  // A rib: its ends interlace as plain weave, its picks with a float of two.
  expect(interlacing(drawdown("#.", "#.", ".#", ".#"))).toEqual({
    warp: { threads: 2, intersections: 2 },
    weft: { threads: 4, intersections: 2 },
  });
});

it("the yarn that a trade writes is the yarn that it means", () => {
  expect(parseYarn("20/2 Ne")).toEqual({ system: "cotton", count: 20, plies: 2, resultant: false });
  expect(parseYarn("Nm 28/2")).toEqual({ system: "metric", count: 28, plies: 2, resultant: false });
  expect(parseYarn("20 tex x 2")).toEqual({ system: "tex", count: 20, plies: 2, resultant: false });
  expect(parseYarn("R 40 tex / 2")).toEqual({ system: "tex", count: 40, plies: 2, resultant: true });
  expect(tex("20 tex x 2").value).toBe(tex("R 40 tex / 2").value);
});

it("a warp of 540 ends wound four at a time makes 135 passes and 68 double passes (derived)", () => {
  const warping = chains(540, { threads: 4 });
  expect(warping.passes.value).toBe(135);
  expect(warping.doublePasses.value).toBe(68);
  expect(warping.cross).toBe("4x4");
});

it("20 an inch in a 12-dent reed is 1-2-2 and nothing else (common practice)", () => {
  expect(sleyings("20 per inch", "12 per inch").map(({ sley, error }) => [sley, error])).toEqual([
    [[1, 2, 2], 0],
  ]);
});
