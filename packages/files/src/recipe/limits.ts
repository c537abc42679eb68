import { type Limit, type Limits, limits } from "@drawcord/check";
import type { Ground } from "@drawcord/ground";
import { toMetric } from "@drawcord/yarn";
import { attempt } from "../tree/problems.js";
import { unknownKey } from "../tree/shape.js";
import { at, entries, isSection, type Spot, textOf, wayTo, wrong } from "../tree/spot.js";
import { quantityOf } from "./notation.js";
import type { KnownYarns } from "./pieces/yarn-order.js";
import { weftsOf } from "./yarns.js";

/** What one limit is set to. */
type Value = number | Readonly<Record<string, number>>;

/**
 * The limits of the section `limits`, whose shape was checked, with the ground's own wefts and the yarns by name; where the
 * ground is not known, any may be named.
 */
export function readLimits(
  section: Spot | undefined,
  ground: Ground | undefined,
  yarns: KnownYarns = [],
): Limits {
  if (section === undefined) return {};
  const read = (limits as readonly Limit[]).flatMap((limit) => {
    const set = at(section, limit.key);
    return set === undefined
      ? []
      : readLimit(set, limit, ground && yarns && [...new Set([...weftsOf(ground), ...yarns])]);
  });
  return Object.fromEntries(read);
}

/** One limit for all, or one for each part; each under its name. */
function readLimit(
  set: Spot,
  limit: Limit,
  wefts: readonly string[] | undefined,
): readonly (readonly [name: string, value: Value | Readonly<Record<string, Value>>])[] {
  const { apart = {}, byWeft, name } = limit;
  const { problems } = set.tree;
  const read = (key: string, of: Spot, check: () => void = () => {}) => {
    const value = attempt(problems, () => {
      check();
      return readValue(of, limit);
    });
    return value === undefined ? [] : [[key, value] as const];
  };
  if (!isSection(set)) return read(name, set);
  const parts = Object.entries(apart).flatMap(([key, part]) => {
    const value = at(set, key);
    return value === undefined ? [] : read(part, value);
  });
  const known = wefts && [...Object.keys(apart), ...wefts];
  const named = entries(set).flatMap(([key, value]) =>
    Object.hasOwn(apart, key) || byWeft === undefined
      ? []
      : read(key, value, () => checkKnown(key, value, known, set)),
  );
  return named.length === 0 ? parts : [...parts, [byWeft!, Object.fromEntries(named)]];
}

function checkKnown(
  name: string,
  { key, ...value }: Spot,
  known: readonly string[] | undefined,
  set: Spot,
): void {
  if (known === undefined || known.includes(name)) return;
  throw wrong({ ...value, node: key ?? value.node }, "unknown-key", unknownKey(name, known, set.path));
}

function readValue(of: Spot, { kind, things = "" }: Limit): Value {
  if (kind === "share" || kind === "percent") return readShare(of, kind);
  return kind === "size" ? readSize(of, things) : Number(textOf(of));
}

/** A size as a number of things from 1, or as a length. */
function readSize(of: Spot, things: string): Readonly<Record<string, number>> {
  const size = quantityOf(of, ["number", "length"]);
  if (size.kind === "length" && size.value > 0) return { mm: toMetric(size).value };
  if (size.kind === "number" && Number.isInteger(size.value) && size.value >= 1) {
    return { [things]: size.value };
  }
  const sentence = `${wayTo(of.path)} is ${textOf(of)}; expected a whole number of ${things} from 1, or a length above 0`;
  throw wrong(of, "bad-value", sentence);
}

function readShare(of: Spot, kind: "share" | "percent"): number {
  const { value } = quantityOf(of, ["share"]);
  if (kind === "percent" || value <= 100) return value;
  throw wrong(of, "bad-value", `${wayTo(of.path)} is ${textOf(of)}; a share goes up to 100 %`);
}
