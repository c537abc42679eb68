import { type AllowedFloat, allowedFloat } from "../float-limit.js";
import { eachLongRun } from "../measure/long-runs.js";
import { joinFaults } from "../regions.js";
import { figure, many } from "../words.js";
import type { Fact, Rule } from "./rule.js";

/** A float that is longer than the weaver allows, in either system and on either side of the cloth. */
export const floatLength: Rule = {
  name: "float-length",
  severity: "error",
  summary: "a float longer than allowed",
  meaning:
    "A thread passes over or under more threads of the other system than the limit allows. Floats are counted along ends and along picks, on the face and on the back, the edges of the cloth included.",
  reason:
    "Long floats catch on a ring or a cup, pull out of line in the wash and let the threads beside them slip. On the back they catch all the same.",
  mend: "Tie the float down: turn a square of the figure, change the ground's step so that a binding point falls inside it, or choose a closer sett. Where long floats are wanted, raise the limit for that system or that weft.",
  source:
    "common practice: about 6 mm in cloth that is worn or washed often, about 12 mm in cloth to look at; without a sett, 20 threads a cm are assumed",
  examples: {
    passes: [
      {
        title: "weft floats of just the limit",
        cloth: "#...#...\n..#...#.",
        options: { limits: { float: { threads: 3 } } },
      },
      {
        title: "12 picks at 20 a cm are 6 mm",
        cloth: "#.#.\n#...\n#.#.\n#...\n#.#.\n#...\n#.#.\n#...\n#.#.\n#...\n#.#.\n#...\n.#.#",
        options: { sett: { endsPerCm: 20, picksPerCm: 20 } },
      },
    ],
    fails: [
      {
        title: "one end more than the limit",
        cloth: "#....#\n..#...",
        options: { limits: { float: { threads: 3 } } },
      },
      {
        title: "12 picks at 19 a cm are longer than 6 mm",
        cloth: "#.#.\n#...\n#.#.\n#...\n#.#.\n#...\n#.#.\n#...\n#.#.\n#...\n#.#.\n#...\n.#.#",
        options: { sett: { endsPerCm: 20, picksPerCm: 19 } },
      },
    ],
  },
  *find(cloth) {
    const warp = allowedFloat(cloth.options, "warp");
    for (const state of [1, 0] as const) {
      for (const region of joinFaults(cloth, (visit) =>
        eachLongRun(
          cloth.warp,
          state,
          () => warp.threads,
          (end, first, last, length) => visit(end, end, first, last, length),
        ),
      )) {
        yield { ...measured(region, warp), face: state === 1 ? "face" : "back", system: "warp" };
      }
    }
    for (const [index, name] of cloth.wefts.entries()) {
      const allowed = allowedFloat(cloth.options, "weft", name);
      const allowedOn = (pick: number) =>
        cloth.weftOfPick[pick] === index ? allowed.threads : Number.POSITIVE_INFINITY;
      for (const state of [0, 1] as const) {
        for (const region of joinFaults(cloth, (visit) =>
          eachLongRun(cloth.weft, state, allowedOn, (pick, first, last, length) =>
            visit(first, last, pick, pick, length),
          ),
        )) {
          yield {
            ...measured(region, allowed),
            face: state === 0 ? "face" : "back",
            system: "weft",
            ...(name !== "" && { weft: name }),
          };
        }
      }
    }
  },
  say(fact, cloth) {
    const { system = "warp", face = "face", weft, measured = 0, limit = 0, count = 1 } = fact;
    const allowed = allowedFloat(cloth.options, system, weft);
    const passed = system === "warp" ? "pick" : "end";
    const inMm = fact.unit === "mm";
    const threads = inMm ? Math.round((measured * allowed.perCm) / 10) : measured;
    const length = inMm ? `${figure(measured)} mm (${many(threads, passed)})` : many(measured, passed);
    const most = inMm ? `${figure(limit)} mm` : `${limit}`;
    const of = `on the ${face}${weft === undefined ? "" : ` in the weft ${weft}`}`;
    const floats =
      count === 1
        ? `${system} float of ${length} ${of}`
        : `${count} ${system} floats ${of}, the longest of ${length}`;
    const sett = allowed.assumed ? ` as ${figure(allowed.perCm)} ${passed}s a cm are assumed` : "";
    return `${floats}, where ${most} ${most === "1" ? "is" : "are"} allowed${sett}`;
  },
};

function measured(region: { readonly measured: number }, allowed: AllowedFloat): Fact {
  if (allowed.mm === undefined || allowed.assumed) {
    return { ...region, limit: allowed.threads, unit: "threads" };
  }
  return { ...region, measured: (region.measured * 10) / allowed.perCm, limit: allowed.mm, unit: "mm" };
}
