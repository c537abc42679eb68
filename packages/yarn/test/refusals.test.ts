import { describe, expect, it } from "vitest";
import {
  calculate,
  chains,
  countIn,
  dentsOf,
  diameterByPacking,
  endsInDents,
  firmness,
  parseCountSystem,
  parseQuantity,
  parseReed,
  parseSley,
  parseYarn,
  plied,
  quantity,
  sleyings,
  tex,
  YarnError,
  type YarnErrorCode,
} from "../src/index.js";
import { drawdown } from "./weaves.js";

type Refusal = readonly [what: string, run: () => unknown, code: YarnErrorCode, message: string];

const EXPECTED = "expected one such as 20/2 Ne, Nm 28/2, 2/20 worsted, 20 tex x 2 or 8400 yd/lb";

const yarns: readonly Refusal[] = [
  ["no system", () => parseYarn("20/2"), "unknown-system", `"20/2" names no yarn system; ${EXPECTED}`],
  [
    "a slip in the system",
    () => parseYarn("2/20 wosted"),
    "unknown-system",
    '"2/20 wosted": no yarn system is called "wosted"; is it worsted?',
  ],
  [
    "an unknown system",
    () => parseYarn("12 zzzzzzz"),
    "unknown-system",
    `"12 zzzzzzz": no yarn system is called "zzzzzzz"; ${EXPECTED}`,
  ],
  [
    "half the name of two systems",
    () => parseYarn("60/2 silk"),
    "unknown-system",
    '"60/2 silk": no yarn system is called "silk"; is it spun silk or silk dram?',
  ],
  ["no number", () => parseYarn("cotton"), "no-number", `"cotton" has no number; ${EXPECTED}`],
  ["nothing", () => parseYarn(""), "no-number", `"" has no number; ${EXPECTED}`],
  ["NaN", () => parseYarn("NaN Ne"), "no-number", `"NaN Ne" has no number; ${EXPECTED}`],
  ["a count of 0", () => parseYarn("0 Ne"), "zero", '"0 Ne": its count is zero'],
  ["a negative count", () => parseYarn("-20/2 Ne"), "negative", '"-20/2 Ne": its count is below zero'],
  ["no plies", () => parseYarn("20 tex x 0"), "zero", '"20 tex x 0": its number of plies is zero'],
  ["half a ply", () => parseYarn("16/1.5 Ne"), "bad-notation", '"16/1.5 Ne": 1.5 is not a number of plies'],
  [
    "a stroke in tex",
    () => parseYarn("40 tex/2"),
    "unknown-system",
    `"40 tex/2": no yarn system is called "tex/2"; is it tex?`,
  ],
  [
    "a stroke in denier",
    () => parseYarn("20/22 denier"),
    "bad-notation",
    '"20/22 denier": in denier plies are written as in 20 tex x 2, or R 40 tex / 2 for the whole yarn',
  ],
  [
    "two systems",
    () => parseYarn("Ne 20/2 cotton"),
    "bad-notation",
    `"Ne 20/2 cotton": names a yarn system on both sides of the number; ${EXPECTED}`,
  ],
  [
    "a count of 10,000",
    () => tex("10000 Ne"),
    "absurd",
    "10000 Ne: yarn in tex from a count of lengths in a weight comes out as 0.05905 tex; expected 0.5 to 5000 tex",
  ],
  [
    "10,000 tex",
    () => tex("10000 tex"),
    "absurd",
    "10000 tex: yarn in tex from a count of weights of a length comes out as 10000 tex; expected 0.5 to 5000 tex",
  ],
  [
    "no yarns to ply",
    () => plied([]),
    "missing",
    "plied yarn of unlike singles: the singles in tex must be at least one",
  ],
  [
    "twist of 100 %",
    () => tex("20/2 Ne", { twistTakeUp: "100 %" }),
    "absurd",
    "20/2 Ne: plied yarn of like singles: twist take-up, on the length of the plies is 100 %; expected at most 50 %",
  ],
  [
    "a length for a yarn",
    () => countIn(quantity(5, "mm"), "cotton"),
    "wrong-kind",
    "count of lengths in a weight: yarn count in tex: 5 mm is not a yarn such as 20 tex",
  ],
  [
    "a slip in a system to convert to",
    () => parseCountSystem("wosted"),
    "unknown-system",
    'no yarn system is called "wosted"; is it worsted?',
  ],
  [
    "a system that there is not",
    () => parseCountSystem("qqqqqqqqqq"),
    "unknown-system",
    'no yarn system is called "qqqqqqqqqq"; there are tex, dtex, den, Nm, Ne, spun silk, worsted, lea, woollen cut, woollen run, Yorkshire skein, dram, jute, grain, yd/lb, m/100 g',
  ],
  [
    "an unknown fibre",
    () => diameterByPacking("20 tex", "coton"),
    "unknown-fibre",
    'no fibre is called "coton"; is it cotton?',
  ],
];

const quantities: readonly Refusal[] = [
  [
    "no unit",
    () => calculate("width-in-reed", { n: 540, S: 40 }),
    "no-unit",
    "width in the reed: ends in the reed: 40 has no unit; expected a sett such as 24 per inch or 10 per cm",
  ],
  [
    "no unit in a text",
    () => calculate("width-in-reed", { n: 540, S: "40" }),
    "no-unit",
    'width in the reed: ends in the reed: "40" has no unit; expected a sett such as 24 per inch or 10 per cm',
  ],
  [
    "a unit of the wrong kind",
    () => calculate("width-in-reed", { n: 540, S: "40 mm" }),
    "wrong-kind",
    'width in the reed: ends in the reed: "40 mm" is not a sett such as 24 per inch or 10 per cm',
  ],
  [
    "negative ends",
    () => calculate("width-in-reed", { n: -4, S: "40 epi" }),
    "negative",
    "width in the reed: ends is -4; it cannot be below zero",
  ],
  [
    "no ends",
    () => calculate("width-in-reed", { n: 0, S: "40 epi" }),
    "zero",
    "width in the reed: ends is 0; it must be more than zero",
  ],
  [
    "half an end",
    () => calculate("width-in-reed", { n: 56.5, S: "40 epi" }),
    "not-whole",
    "width in the reed: ends is 56.5; expected a whole number",
  ],
  [
    "NaN ends",
    () => calculate("width-in-reed", { n: Number.NaN, S: "40 epi" }),
    "not-finite",
    "width in the reed: ends is NaN; expected a finite number",
  ],
  [
    "infinite ends",
    () => calculate("width-in-reed", { n: Number.POSITIVE_INFINITY, S: "40 epi" }),
    "not-finite",
    "width in the reed: ends is Infinity; expected a finite number",
  ],
  [
    "a sett of 0",
    () => calculate("width-in-reed", { n: 540, S: "0 per inch" }),
    "zero",
    "width in the reed: ends in the reed is 0 per inch; it must be more than zero",
  ],
  [
    "a shrinkage of 100 %",
    () => calculate("size-before-shrinkage", { f: "12 in", s: "100 %" }),
    "absurd",
    "size before the wash: shrinkage in the wash is 100 %; expected at most 75 %",
  ],
  [
    "a take-up of 200 %",
    () => calculate("yarn-in-cloth", { L_c: "8 m", k: "200 %" }),
    "absurd",
    "yarn in a length of cloth: take-up, on the length of the cloth (crimp) is 200 %; expected at most 100 %",
  ],
  [
    "yarn shorter than its cloth",
    () => calculate("crimp", { L_y: "7 m", L_c: "8 m" }),
    "absurd",
    "crimp comes out as -12.5 %; expected 0 or more %; it follows from length of the yarn taken out of the cloth 7 m and length of the cloth 8 m",
  ],
  [
    "a missing value",
    () => calculate("width-in-reed", { n: 540 } as never),
    "missing",
    "width in the reed: ends in the reed is not given; expected a sett such as 24 per inch or 10 per cm",
  ],
  [
    "nothing interlaces",
    () => firmness(drawdown("##", "##")),
    "zero",
    "mean float: intersections along the threads is 0; it must be more than zero",
  ],
  [
    "a repeat without threads",
    () => firmness(drawdown()),
    "zero",
    "a repeat of 0 ends and 0 picks has no interlacements",
  ],
];

const reeds: readonly Refusal[] = [
  [
    "a reed without its count's name",
    () => dentsOf("12"),
    "no-unit",
    '"12" does not say how the reed is counted; expected one such as 12 per inch, 50 per 10 cm or 60 Stockport',
  ],
  [
    "a slip in the reed's name",
    () => dentsOf("60 Stokport"),
    "unknown-system",
    '"60 Stokport": no reed count is called "Stokport"; is it Stockport?',
  ],
  ["a reed of 0", () => dentsOf("0 per inch"), "zero", '"0 per inch" is zero; it must be more'],
  [
    "no number in a reed",
    () => dentsOf("Stockport"),
    "no-number",
    '"Stockport" does not begin with a number',
  ],
  [
    "a crowded reed",
    () => sleyings("700 per inch", "12 per inch"),
    "absurd",
    "that is 58 ends in a dent; expected at most 50",
  ],
  [
    "a sley of words",
    () => parseSley("one-two"),
    "bad-notation",
    '"one-two" is not a sleying pattern; expected ends in each dent, such as 2 or 1-2-2',
  ],
  ["an empty sley", () => parseSley("0-0"), "zero", '"0-0" leaves every dent empty'],
  ["a crowded sley", () => parseSley("99"), "absurd", '"99" puts 99 ends in a dent; expected at most 50'],
  [
    "half an end in the dents",
    () => endsInDents(2.5, [2]),
    "not-whole",
    "2.5 ends cannot be sleyed; expected a whole number",
  ],
  [
    "more ends than any loom has",
    () => endsInDents(1e9, [2]),
    "absurd",
    "1000000000 ends are more than any loom has; expected at most 10000000",
  ],
  [
    "more ends than are ever wound",
    () => chains(1e9),
    "absurd",
    "passes along the warping board or mill: ends is 1000000000; expected at most 10000000",
  ],
  [
    "a sley that takes no ends",
    () => endsInDents(4, [0]),
    "zero",
    "a sleying pattern needs a dent with ends in it",
  ],
  [
    "no double passes in a chain",
    () => chains(100, { doublePassesInAChain: 0 }),
    "zero",
    "chains: double passes in a chain is 0; it must be more than zero",
  ],
];

describe("a text too long to be a notation", () => {
  const long = `20/2 ${" ".repeat(1_000_000)}x${"y".repeat(1_000_000)}`;

  it.each([
    ["yarn", parseYarn],
    ["system", parseCountSystem],
    ["quantity", parseQuantity],
    ["reed", parseReed],
    ["sley", parseSley],
  ])("is no %s, and is refused before it is looked at", (_, read) => {
    expect(() => read(long)).toThrow(
      '"20/2                ..." is 2000006 characters long; expected at most 200',
    );
  });
});

describe("each slip is refused in one sentence", () => {
  it.each([...yarns, ...quantities, ...reeds])("%s", (_, run, code, message) => {
    let failure: unknown;
    try {
      run();
    } catch (thrown) {
      failure = thrown;
    }
    expect(failure).toBeInstanceOf(YarnError);
    expect(failure).toMatchObject({ code, message });
    expect(message).not.toMatch(/\n|undefined|\[object/);
  });
});
