import type { FloatLimit, Limits } from "@drawcord/check";
import type { Ground } from "@drawcord/ground";
import { toMetric } from "@drawcord/yarn";
import { unknownKey } from "../tree/shape.js";
import { at, entries, isSection, type Spot, textOf, wayTo, wrong } from "../tree/spot.js";
import { quantityOf } from "./notation.js";
import { weftsOf } from "./yarns.js";

/** The limits of the section `limits`, whose shape was checked, with the ground's own wefts by name. */
export function readLimits(section: Spot | undefined, ground: Ground): Limits {
  if (section === undefined) return {};
  const float = at(section, "float");
  return {
    ...(float === undefined ? {} : readFloats(float, weftsOf(ground))),
    ...limitAt(section, "open-cuts", "openCuts", readShare),
    ...limitAt(section, "take-up", "takeUp", readShare),
    ...limitAt(section, "stretch", "stretch", (of) => readSize(of, "picks")),
    ...readAreas(at(section, "area")),
    ...limitAt(section, "face-share", "faceShare", readShare),
    ...limitAt(section, "thin-area", "thinArea", (of) => Number(textOf(of))),
    ...limitAt(section, "unlike-sides", "unlikeSides", (of) => Number(textOf(of))),
  };
}

/** One limit for all areas, or one for drawn and one for undrawn ones. */
function readAreas(area: Spot | undefined): Limits {
  if (area === undefined) return {};
  if (!isSection(area)) return { area: readSize(area, "squares") };
  return {
    ...limitAt(area, "drawn", "drawnArea", (of) => readSize(of, "squares")),
    ...limitAt(area, "undrawn", "undrawnArea", (of) => readSize(of, "squares")),
  };
}

/** A limit that may be left out, as a part of an object. */
function limitAt<Name extends keyof Limits>(
  section: Spot,
  key: string,
  name: Name,
  read: (of: Spot) => NonNullable<Limits[Name]>,
): Pick<Limits, Name> {
  const value = at(section, key);
  return value === undefined ? ({} as Pick<Limits, Name>) : ({ [name]: read(value) } as Pick<Limits, Name>);
}

function readFloats(float: Spot, wefts: readonly string[]): Limits {
  if (!isSection(float)) return { float: readFloat(float) };
  const warp = at(float, "warp");
  const weft = at(float, "weft");
  const named = entries(float).filter(([name]) => name !== "warp" && name !== "weft");
  const known = new Set(wefts);
  for (const [name, { key, ...limit }] of named) {
    if (known.has(name)) continue;
    const sentence = unknownKey(name, ["warp", "weft", ...wefts], float.path);
    throw wrong({ ...limit, node: key ?? limit.node }, "unknown-key", sentence);
  }
  return {
    ...(warp === undefined ? {} : { warpFloat: readFloat(warp) }),
    ...(weft === undefined ? {} : { weftFloat: readFloat(weft) }),
    ...(named.length === 0
      ? {}
      : { floatOfWeft: Object.fromEntries(named.map(([name, limit]) => [name, readFloat(limit)])) }),
  };
}

function readFloat(of: Spot): FloatLimit {
  return readSize(of, "threads");
}

/** A size as a number of things from 1, or as a length. */
function readSize<Things extends string>(
  of: Spot,
  things: Things,
): { readonly mm?: number } & { readonly [key in Things]?: number } {
  const size = quantityOf(of, ["number", "length"]);
  if (size.kind === "length" && size.value > 0) {
    return { mm: toMetric(size).value } as { mm: number } & { [key in Things]?: number };
  }
  if (size.kind === "number" && Number.isInteger(size.value) && size.value >= 1) {
    return { [things]: size.value } as { mm?: number } & { [key in Things]: number };
  }
  const sentence = `${wayTo(of.path)} is ${textOf(of)}; expected a whole number of ${things} from 1, or a length above 0`;
  throw wrong(of, "bad-value", sentence);
}

function readShare(of: Spot): number {
  const { value } = quantityOf(of, ["share"]);
  if (value <= 100) return value;
  throw wrong(of, "bad-value", `${wayTo(of.path)} is ${textOf(of)}; a share goes up to 100 %`);
}
