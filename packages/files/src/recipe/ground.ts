import { type Ground, type GroundStep, groundFromWeave, type ShaftSet, withSelvedge } from "@drawcord/ground";
import { parseShafts, parseThreading, type UnitDraft } from "@drawcord/units";
import { attempt, tell, Unread } from "../tree/problems.js";
import {
  allItems,
  at,
  isLeftOut,
  isWhole,
  need,
  numberAt,
  type Spot,
  scalar,
  textAt,
  textOf,
  wayTo,
  wrong,
} from "../tree/spot.js";
import { notation, partAt, readable } from "./notation.js";

/** What a named weave is fitted to; left out where it is not known. */
interface Fit {
  readonly unitEnds?: number | readonly number[] | undefined;
  readonly picksPerRow?: number | readonly number[] | undefined;
  /** The longest float of a pattern weft, in ends. */
  readonly longestFloat?: number | undefined;
}

/** The ground of a draft, with the ends outside its units. */
type GroundAndEdges = Pick<UnitDraft, "ground" | "selvedge">;

/**
 * The section `ground`, whose shape was checked. Of a selvedge and of steps, what cannot be read is told and left out.
 * @throws {FileError} `unknown-weave`, `bad-notation`, `unknown-shaft`, `bad-value`; {Unread}
 */
export function readGround(section: Spot | undefined, fit: Fit): GroundAndEdges {
  if (section === undefined) throw new Unread();
  const ground = readHarness(section, fit);
  const selvedge = at(section, "selvedge");
  if (selvedge === undefined) return { ground };
  return attempt(selvedge.tree.problems, () => readSelvedge(selvedge, ground)) ?? { ground };
}

function readHarness(section: Spot, fit: Fit): Ground {
  const steps = at(section, "steps");
  if (steps !== undefined && at(section, "weave") === undefined) return readSteps(section);
  const weave = need(section, "weave");
  const { problems } = section.tree;
  for (const key of ["shafts", "threading"]) {
    const stray = at(section, key);
    if (stray === undefined || steps !== undefined) continue;
    const sentence = `${wayTo(stray.path)} goes with "steps"; a ground named by "weave" brings its own`;
    tell(problems, wrong(stray, "bad-value", sentence));
  }
  if (!isWhole(section, ["ends"])) throw new Unread();
  const ends = numberAt(section, "ends");
  const { longestFloat, picksPerRow, unitEnds } = fit;
  const options = {
    ...(unitEnds === undefined ? {} : { unitEnds: commonStep(unitEnds) }),
    ...(picksPerRow === undefined ? {} : { picksPerRow: commonStep(picksPerRow) }),
    ...(ends === undefined ? {} : { ends }),
    ...(longestFloat === undefined ? {} : { longestFloat }),
  };
  return notation(weave, (text) => groundFromWeave(text, options), "unknown-weave");
}

/** Of so many units or rows one may be otherwise, by a slip or for once, and the ground is begun as the others want it. */
const ONE_IN = 6;

/** The number of threads that all but a few units or rows share; else the greatest that every border of the figure falls on a multiple of. */
export function commonStep(counts: number | readonly number[]): number {
  if (typeof counts === "number") return counts;
  const times = new Map<number, number>();
  for (const count of counts) times.set(count, (times.get(count) ?? 0) + 1);
  const [usual, often] = [...times].reduce((most, one) => (one[1] > most[1] ? one : most));
  if (ONE_IN * (counts.length - often) <= often) return usual;
  const divisor = (a: number, b: number): number => (b === 0 ? a : divisor(b, a % b));
  return counts.reduce((step, count) => divisor(step, count));
}

/** The ground that is given shaft by shaft. */
function readSteps(section: Spot): Ground {
  const stray = at(section, "ends");
  if (stray !== undefined) {
    const sentence = `ground.ends goes with "weave"; a ground of steps repeats with its threading`;
    tell(section.tree.problems, wrong(stray, "bad-value", sentence));
  }
  const shafts = scalar(need(section, "shafts")) as number;
  const { problems } = section.tree;
  const threading = attempt(problems, () => readEnds(need(section, "threading"), shafts));
  const steps = readEach(allItems(need(section, "steps")), shafts);
  if (threading === undefined) throw new Unread();
  return { shafts, threading, steps };
}

/** The most shafts that all steps together may raise and sink. */
const mostMoved = 20_000_000;

/** The steps; one that cannot be read moves no shaft, so that the steps after it keep their picks. */
export function readEach(steps: readonly Spot[], shafts: number): readonly GroundStep[] {
  let moved = 0;
  return steps.map((spot) => {
    const step = isLeftOut(spot) ? { raise: [], sink: [] } : readStep(spot, shafts);
    moved += step.raise.length + step.sink.length;
    if (moved <= mostMoved) return step;
    const sentence = `with ${wayTo(spot.path)} the steps raise and sink more than ${mostMoved} shafts`;
    throw wrong(spot, "too-large", sentence);
  });
}

function readStep(step: Spot, shafts: number): GroundStep {
  const raise = readShafts(at(step, "raise"), shafts);
  const sunk = new Set(readShafts(at(step, "sink"), shafts));
  const both = raise.filter((shaft) => sunk.has(shaft));
  for (const shaft of both) sunk.delete(shaft);
  if (both.length > 0) {
    const sentence = `${wayTo(step.path)} both raises and sinks ground shaft ${both[0]}`;
    tell(step.tree.problems, wrong(step, "raised-and-sunk", sentence));
  }
  const weft = textAt(step, "weft");
  return { raise, sink: [...sunk], ...(weft === undefined ? {} : { weft }) };
}

/** A set of ground shafts; what cannot be read of it is told and left out. */
function readShafts(of: Spot | undefined, shafts: number): ShaftSet {
  if (of === undefined) return [];
  const read = (text: string) => parseShafts(text);
  const text = attempt(of.tree.problems, () =>
    readable(of, textOf(of), 0, { read, filler: "", nothing: "none" }),
  );
  const set = text === undefined ? [] : read(text);
  return attempt(of.tree.problems, () => checkShafts(of, set, shafts)) ?? set.filter((n) => n <= shafts);
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
  return checkShafts(of, ends, shafts);
}

/** The shafts named, where the harness has them all. */
function checkShafts(of: Spot, named: readonly number[], shafts: number): readonly number[] {
  const above = named.find((shaft) => shaft > shafts);
  if (above === undefined) return named;
  const from = textOf(of).search(new RegExp(`\\b${above}\\b`));
  const sentence = `${wayTo(of.path)} names shaft ${above}; the ground harness has ${shafts} shafts`;
  const piece = from < 0 ? undefined : { from, to: from + `${above}`.length };
  throw wrong(of, "unknown-shaft", sentence, piece);
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
        ...partAt(selvedge, "left", "left", (of) => readEnds(of, ground.shafts)),
        ...partAt(selvedge, "right", "right", (of) => readEnds(of, ground.shafts)),
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
