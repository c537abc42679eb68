import { type Ground, type GroundStep, groundFromWeave, type ShaftSet, withSelvedge } from "@drawcord/ground";
import { parseShafts, parseThreading, type UnitDraft } from "@drawcord/units";
import { at, items, numberAt, type Spot, textAt, textOf, wayTo, wrong } from "../tree/spot.js";
import { notation } from "./notation.js";

/** What a named weave is fitted to. */
interface Fit {
  readonly unitEnds: number | readonly number[];
  readonly picksPerRow: number | readonly number[];
}

/** The ground of a draft, with the ends outside its units. */
type GroundAndEdges = Pick<UnitDraft, "ground" | "selvedge">;

/**
 * The section `ground`, whose shape was checked.
 * @throws {FileError} `unknown-weave`, `bad-notation`, `unknown-shaft`, `raised-and-sunk`, `bad-value`
 */
export function readGround(section: Spot, fit: Fit): GroundAndEdges {
  const ground = readHarness(section, fit);
  const selvedge = at(section, "selvedge");
  return selvedge === undefined ? { ground } : readSelvedge(selvedge, ground);
}

function readHarness(section: Spot, fit: Fit): Ground {
  const weave = at(section, "weave");
  if (weave === undefined) return readSteps(section);
  const stray = at(section, "shafts") ?? at(section, "threading");
  if (stray !== undefined) {
    const sentence = `${wayTo(stray.path)} goes with "steps"; a ground named by "weave" brings its own`;
    throw wrong(stray, "bad-value", sentence);
  }
  const ends = numberAt(section, "ends");
  const size = { unitEnds: commonStep(fit.unitEnds), picksPerRow: commonStep(fit.picksPerRow) };
  const options = ends === undefined ? size : { ...size, ends };
  return notation(weave, (text) => groundFromWeave(text, options), "unknown-weave");
}

/** The greatest number of threads that every border of the figure falls on a multiple of. */
export function commonStep(counts: number | readonly number[]): number {
  const divisor = (a: number, b: number): number => (b === 0 ? a : divisor(b, a % b));
  return typeof counts === "number" ? counts : counts.reduce((step, count) => divisor(step, count));
}

/** The ground that is given shaft by shaft. */
function readSteps(section: Spot): Ground {
  const stray = at(section, "ends");
  if (stray !== undefined) {
    throw wrong(
      stray,
      "bad-value",
      `ground.ends goes with "weave"; a ground of steps repeats with its threading`,
    );
  }
  const shafts = numberAt(section, "shafts") ?? 0;
  const threading = at(section, "threading")!;
  return {
    shafts,
    threading: readEnds(threading, shafts),
    steps: readEach(items(at(section, "steps")!), shafts),
  };
}

/** The most shafts that all steps together may raise and sink. */
const mostMoved = 20_000_000;

export function readEach(steps: readonly Spot[], shafts: number): readonly GroundStep[] {
  let moved = 0;
  return steps.map((spot) => {
    const step = readStep(spot, shafts);
    moved += step.raise.length + step.sink.length;
    if (moved <= mostMoved) return step;
    const sentence = `with ${wayTo(spot.path)} the steps raise and sink more than ${mostMoved} shafts`;
    throw wrong(spot, "too-large", sentence);
  });
}

function readStep(step: Spot, shafts: number): GroundStep {
  const raise = readShafts(at(step, "raise"), shafts);
  const sink = readShafts(at(step, "sink"), shafts);
  const sunk = new Set(sink);
  const both = raise.find((shaft) => sunk.has(shaft));
  if (both !== undefined) {
    throw wrong(step, "raised-and-sunk", `${wayTo(step.path)} both raises and sinks ground shaft ${both}`);
  }
  const weft = textAt(step, "weft");
  return weft === undefined ? { raise, sink } : { raise, sink, weft };
}

function readShafts(of: Spot | undefined, shafts: number): ShaftSet {
  if (of === undefined) return [];
  const set = notation(of, parseShafts);
  checkShafts(of, set, shafts);
  return set;
}

/** The ground shaft of each end: the threading notation, one shaft an end. */
function readEnds(of: Spot, shafts: number): readonly number[] {
  const ends = notation(of, (text) => parseThreading(text)).map((on, i) => {
    const [shaft] = on;
    if (shaft === undefined || on.length > 1) {
      const found = shaft === undefined ? "no shaft" : `shafts ${on.join(" and ")}`;
      const sentence = `${wayTo(of.path)}: end ${i + 1} hangs on ${found}; each end takes one ground shaft`;
      throw wrong(of, "bad-notation", sentence);
    }
    return shaft;
  });
  checkShafts(of, ends, shafts);
  return ends;
}

function checkShafts(of: Spot, named: readonly number[], shafts: number): void {
  const above = named.find((shaft) => shaft > shafts);
  if (above === undefined) return;
  const found = textOf(of).search(new RegExp(`\\b${above}\\b`));
  const sentence = `${wayTo(of.path)} names shaft ${above}; the ground harness has ${shafts} shafts`;
  throw wrong(of, "unknown-shaft", sentence, found < 0 ? undefined : found);
}

/** The ends outside the units: on the ground's shafts end by end, or in a weave that brings shafts of its own. */
function readSelvedge(selvedge: Spot, ground: Ground): GroundAndEdges {
  const left = at(selvedge, "left");
  const right = at(selvedge, "right");
  const weave = at(selvedge, "weave");
  if (weave === undefined) {
    return {
      ground,
      selvedge: {
        ...(left === undefined ? {} : { left: readEnds(left, ground.shafts) }),
        ...(right === undefined ? {} : { right: readEnds(right, ground.shafts) }),
      },
    };
  }
  const stray = left ?? right;
  if (stray !== undefined) {
    const sentence = `${wayTo(stray.path)} names shafts end by end; a selvedge in a weave brings its own`;
    throw wrong(stray, "bad-value", sentence);
  }
  const ends = numberAt(selvedge, "ends");
  const edged = notation(
    weave,
    (text) => withSelvedge(ground, { weave: text, ...(ends === undefined ? {} : { ends }) }),
    "unknown-weave",
  );
  return { ground: edged.ground, selvedge: { left: edged.left, right: edged.right } };
}
