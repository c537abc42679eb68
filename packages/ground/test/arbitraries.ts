import fc from "fast-check";
import { commonDivisor } from "../src/arithmetic.js";
import {
  type AddedPoint,
  type BaseWeave,
  type Ground,
  GroundError,
  type PatternTies,
  satinSteps,
  type WeaveDescription,
  weaveOf,
} from "../src/index.js";
import { otherShafts } from "../src/weave/weave.js";

const small = fc.integer({ min: 1, max: 4 });
const direction = fc.constantFrom("z" as const, "s" as const);

/** A ratio of pairs on up to 12 ends. */
export const ratio = fc
  .array(fc.tuple(small, small), { minLength: 1, maxLength: 3 })
  .map((pairs) => pairs.flat())
  .filter((numbers) => numbers.reduce((a, b) => a + b) <= 12);

/** What a part of a description is when it may be left out. */
function maybe<Key extends string, Value>(key: Key, value: fc.Arbitrary<Value>) {
  return fc.option(value, { nil: undefined }).map((found) => {
    const part: { [K in Key]?: Value } = {};
    if (found !== undefined) part[key] = found;
    return part;
  });
}

function described<Parts extends fc.Arbitrary<object>[]>(...parts: Parts) {
  return fc.tuple(...parts).map((all) => Object.assign({}, ...all));
}

const ordered = [
  ratio.map((found) => ({ ratio: found })),
  maybe("direction", direction),
  maybe("alongPicks", fc.constant(true as const)),
];
const coprimeTwill = ratio.chain((found) => {
  const n = found.reduce((a, b) => a + b);
  const steps = Array.from({ length: n - 1 }, (_, i) => i + 1).filter((step) => commonDivisor(step, n) === 1);
  return described(
    fc.constant({ kind: "twill", ratio: found }),
    maybe("step", fc.constantFrom(...steps)),
    maybe("direction", direction),
  );
});
const satinEnds = fc.constantFrom(5, 7, 8, 9, 10, 11, 12, 16);
const satinByStep = satinEnds.chain((ends) =>
  described(
    fc.constant({ kind: "satin", ends }),
    maybe("step", fc.constantFrom(...satinSteps(ends))),
    maybe("direction", direction),
    maybe("warpFaced", fc.constant(true as const)),
  ),
);
const satinByOrder = fc.constantFrom(4, 5, 6, 7).chain((ends) =>
  described(
    fc.constant({ kind: "satin" }),
    fc
      .shuffledSubarray(
        Array.from({ length: ends }, (_, i) => i + 1),
        { minLength: ends },
      )
      .map((order) => ({ order })),
    maybe("direction", direction),
  ),
);
const crepe = satinEnds.chain((ends) =>
  described(
    fc.constant({ kind: "crepe", ends }),
    fc.constantFrom(...satinSteps(ends)).map((step) => ({ step })),
  ),
);
const pairs = fc.tuple(small, small);
const breaking = fc.oneof(
  fc.constant({ by: "halves" as const }),
  fc.record({ by: fc.constant("skipping" as const), take: small, skip: small }),
);

/** Any base weave that can be built. */
const baseWeave: fc.Arbitrary<BaseWeave> = fc.oneof(
  fc.constant({ kind: "plain" as const }),
  described(
    fc.constant({ kind: "hopsack" }),
    pairs.map((picks) => ({ picks })),
    maybe("ends", pairs),
  ),
  fc.record({ kind: fc.constantFrom("warp rib" as const, "weft rib" as const), group: pairs }),
  coprimeTwill,
  described(fc.constant({ kind: "pointed twill" }), ...ordered),
  described(
    fc.constant({ kind: "undulating twill" }),
    fc.array(fc.nat({ max: 3 }), { minLength: 1, maxLength: 5 }).map((moves) => ({ moves })),
    ...ordered,
  ),
  described(
    fc.constant({ kind: "herringbone twill" }),
    fc.integer({ min: 2, max: 9 }).map((after) => ({ after })),
    ...ordered,
  ),
  described(fc.constant({ kind: "broken twill" }), maybe("break", breaking), ...ordered).filter(
    ({ ratio: found }) => found.reduce((a: number, b: number) => a + b) > 2,
  ),
  satinByStep,
  satinByOrder,
  fc.constantFrom(5, 7, 9, 11).map((ends) => ({ kind: "corkscrew" as const, ends })),
);

const point: fc.Arbitrary<AddedPoint> = fc
  .record({ right: fc.integer({ min: -3, max: 3 }), above: fc.integer({ min: -3, max: 3 }) })
  .filter(({ right, above }) => right !== 0 || above !== 0);

/** Whether a weave binds every end and pick, as it must. */
function binds(weave: WeaveDescription): boolean {
  try {
    weaveOf(weave);
    return true;
  } catch (error) {
    if (error instanceof GroundError && error.code === "unbound") return false;
    throw error;
  }
}

/** Any description of a weave that can be built. */
/** Ways to tie a pattern weft. */
const ties: fc.Arbitrary<PatternTies> = fc.oneof(
  fc.record({ in: fc.constant("shafts" as const), shafts: fc.constantFrom([1, 2], [2, 1]) }),
  fc.record(
    { in: fc.constantFrom("halves" as const, "thirds" as const), within: fc.integer({ min: 2, max: 30 }) },
    { requiredKeys: ["in"] },
  ),
  fc.record(
    {
      in: fc.constant("twill" as const),
      shafts: fc.integer({ min: 2, max: 8 }),
      within: fc.integer({ min: 7, max: 30 }),
    },
    { requiredKeys: ["in", "shafts"] },
  ),
);

/** Any weave that can be written down. */
export const description: fc.Arbitrary<WeaveDescription> = fc
  .oneof(
    {
      weight: 4,
      arbitrary: described(
        baseWeave.map((base) => ({ base })),
        fc.oneof(
          fc.constant({}),
          fc.constant({ patternWeft: true as const }),
          fc.constant({ patternWeft: true as const, ties: { in: "none" as const } }),
          ties.map((tied) => ({ patternWeft: true as const, ties: tied })),
        ),
      ),
    },
    {
      weight: 1,
      arbitrary: described(
        fc.oneof(crepe, satinByStep).map((base) => ({ base })),
        fc.array(point, { minLength: 1, maxLength: 2 }).map((plus) => ({ plus })),
      ),
    },
  )
  .filter(binds);

/** Any ground at all, long-eyed: shafts raised, sunk and left alone at random. */
export const ground: fc.Arbitrary<Ground> = fc.integer({ min: 1, max: 6 }).chain((shafts) =>
  fc.record({
    shafts: fc.constant(shafts),
    threading: fc.array(fc.integer({ min: 1, max: shafts }), { minLength: 1, maxLength: 12 }),
    steps: fc.array(
      fc
        .array(fc.constantFrom("up", "down", "free"), { minLength: shafts, maxLength: shafts })
        .map((moves) => ({
          raise: otherShafts(
            shafts,
            moves.flatMap((move, i) => (move === "up" ? [] : [i + 1])),
          ),
          sink: otherShafts(
            shafts,
            moves.flatMap((move, i) => (move === "down" ? [] : [i + 1])),
          ),
        })),
      { minLength: 1, maxLength: 9 },
    ),
  }),
);

/** Ends in a unit or picks in a row. */
export const threads = fc.integer({ min: 1, max: 12 });
