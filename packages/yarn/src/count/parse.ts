import { nearest } from "@drawcord/base";
import { YarnError } from "../error.js";
import { convert } from "../quantity/convert.js";
import { unitNamed } from "../quantity/parse.js";
import { quantity, units } from "../quantity/units.js";
import { checkShort } from "../short.js";
import { type CountSystemId, countSystems } from "./systems.js";
import type { Yarn } from "./yarn.js";

const NUMBER = "[+-]?(?:\\d+(?:\\.\\d+)?|\\.\\d+)";
const EXPECTED = "expected one such as 20/2 Ne, Nm 28/2, 2/20 worsted, 20 tex x 2 or 8400 yd/lb";

/**
 * Reads a yarn in the notation of its trade: `20/2 Ne`, `Nm 28/2`, `2/20 worsted`, `30s cotton`, `20 tex x 2`,
 * `R 40 tex / 2`, `60/2 spun silk`, `75 den`, `8400 yd/lb`, `170 m/50 g`. On either side of a stroke the smaller number is the
 * ply; more plies than the count are written with `x`, as in `8 Ne x 12`. In spun silk the count beside a stroke is that of
 * the plied yarn.
 * @param text the notation
 * @throws {YarnError} `no-number`, `unknown-system` (names the nearest), `bad-notation`, `too-long`, `zero` or `negative`, with the
 * `column`
 * @example parseYarn("2/20 worsted") // { system: "worsted", count: 20, plies: 2, resultant: false }
 */
export function parseYarn(text: string): Yarn {
  checkShort(text);
  const trimmed = text.trim();
  const yarn =
    readWeighed(trimmed) ??
    readResultant(text, trimmed) ??
    readTimes(text, trimmed) ??
    readPlain(text, trimmed);
  const check = (value: number, what: string): void => {
    if (!Number.isFinite(value))
      throw new YarnError("not-finite", `"${text}": its ${what} is not a finite number`, { text });
    if (value < 0) throw new YarnError("negative", `"${text}": its ${what} is below zero`, { text, value });
    if (value === 0) throw new YarnError("zero", `"${text}": its ${what} is zero`, { text, value });
  };
  check(yarn.count, "count");
  check(yarn.plies, "number of plies");
  if (!Number.isInteger(yarn.plies)) throw badNotation(text, `${yarn.plies} is not a number of plies`);
  return yarn;
}

/** `8400 yd/lb`, `170 m / 50 g`, `400 metres in 100 g`. */
function readWeighed(text: string): Yarn | undefined {
  const found = new RegExp(`^(${NUMBER}) *([a-z]+) *(?:/|per|in|to|an?) *(${NUMBER})? *([a-z]+)$`, "i").exec(
    text,
  );
  if (found === null) return undefined;
  const [, length, lengthWord, mass = "1", massWord] = found;
  const lengthUnit = unitNamed(lengthWord!);
  const massUnit = unitNamed(massWord!);
  if (lengthUnit === undefined || massUnit === undefined) return undefined;
  if (units[lengthUnit].kind !== "length" || units[massUnit].kind !== "mass") return undefined;
  const system = lengthUnit === "yd" ? "yards-a-pound" : "metres-in-100-g";
  const { length: one, mass: whole } = countSystems[system];
  const lengths = convert(quantity(Number(length), lengthUnit), one.unit).value;
  const masses = convert(quantity(Number(mass), massUnit), whole.unit).value / whole.value;
  return { system, count: lengths / masses, plies: 1, resultant: false };
}

/** `R 40 tex / 2`, `R 40 tex`. */
function readResultant(text: string, trimmed: string): Yarn | undefined {
  const found = new RegExp(`^R *(${NUMBER}) *([^/]*[^/ ])(?: */ *(${NUMBER}))?$`).exec(trimmed);
  if (found === null) return undefined;
  const [, count, name, plies = "1"] = found;
  return {
    system: systemNamed(text, name!),
    count: Number(count),
    plies: Number(plies),
    resultant: Number(plies) !== 1,
  };
}

/** `20 tex x 2`. */
function readTimes(text: string, trimmed: string): Yarn | undefined {
  const found = new RegExp(`^(${NUMBER}) *(\\S.*?) *[x×] *(${NUMBER})$`, "i").exec(trimmed);
  if (found === null) return undefined;
  const [, count, name, plies] = found;
  return { system: systemNamed(text, name!), count: Number(count), plies: Number(plies), resultant: false };
}

/** `20/2 Ne`, `Nm 28/2`, `30s cotton`, `75 den`. */
function readPlain(text: string, trimmed: string): Yarn {
  const form = `^([a-z][^\\d]*?)? *(${NUMBER})(?: */ *(${NUMBER}))?(?:'?s(?= |$))? *([a-z].*)?$`;
  const found = new RegExp(form, "i").exec(trimmed);
  if (found === null) {
    if (/\d/.test(trimmed)) throw badNotation(text, `is not a yarn count; ${EXPECTED}`);
    throw new YarnError("no-number", `"${text}" has no number; ${EXPECTED}`, { column: 1, text });
  }
  const [, before, one, other, after] = found;
  if (before !== undefined && after !== undefined) {
    throw badNotation(text, `names a yarn system on both sides of the number; ${EXPECTED}`);
  }
  const system = systemNamed(text, before ?? after);
  if (other === undefined) return { system, count: Number(one), plies: 1, resultant: false };
  const { stroke, title } = countSystems[system];
  if (stroke === undefined) {
    throw badNotation(
      text,
      `in ${title} plies are written as in 20 tex x 2, or R 40 tex / 2 for the whole yarn`,
    );
  }
  const [plies, count] = [Number(one), Number(other)].sort((a, b) => Math.abs(a) - Math.abs(b)) as [
    number,
    number,
  ];
  return { system, count, plies, resultant: stroke.of === "plied" && plies !== 1 };
}

function badNotation(text: string, why: string): YarnError {
  return new YarnError("bad-notation", `"${text}": ${why}`, { column: 1, text });
}

/** The system of a name in a yarn's text. */
function systemNamed(text: string, name: string | undefined): CountSystemId {
  if (name === undefined) {
    throw new YarnError("unknown-system", `"${text}" names no yarn system; ${EXPECTED}`, {
      column: text.length + 1,
      text,
    });
  }
  const system = systemOf(name);
  if (system !== undefined) return system;
  throw unknownSystem(`"${text}": no`, name, EXPECTED, { column: text.indexOf(name.trim()) + 1, text });
}

/**
 * A yarn system by any of its names.
 * @param name a name, or a number with one, in any letter case
 * @throws {YarnError} `unknown-system`, which names the nearest
 * @example parseCountSystem("Ne") // "cotton"
 */
export function parseCountSystem(name: string): CountSystemId {
  checkShort(name);
  const system = systemOf(name);
  if (system !== undefined) return system;
  const known = Object.values(countSystems).map(({ names }) => names[0]);
  throw unknownSystem("no", name, `there are ${known.join(", ")}`, {});
}

function unknownSystem(
  lead: string,
  name: string,
  otherwise: string,
  facts: Readonly<Record<string, string | number>>,
): YarnError {
  const plain = plainName(name);
  const holding = Object.values(countSystems).flatMap(({ names }) =>
    names.filter((one) => one.toLowerCase().split(" ").includes(plain)).slice(0, 1),
  );
  const like =
    holding.length > 0
      ? holding.join(" or ")
      : nearest(
          plain,
          Object.values(countSystems).flatMap(({ names }) => names),
        );
  const hint = like === undefined ? otherwise : `is it ${like}?`;
  return new YarnError("unknown-system", `${lead} yarn system is called "${name.trim()}"; ${hint}`, {
    ...facts,
    system: name.trim(),
  });
}

function plainName(name: string): string {
  return name.trim().toLowerCase().replace(/\s+/g, " ");
}

function systemOf(name: string): CountSystemId | undefined {
  const plain = plainName(name);
  for (const [id, { names }] of Object.entries(countSystems)) {
    if (id === plain || names.some((one) => one.toLowerCase() === plain)) return id as CountSystemId;
  }
  return undefined;
}
