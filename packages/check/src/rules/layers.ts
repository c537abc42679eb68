import { listed, many, runsOf } from "@drawcord/base";
import type { Cloth } from "../cloth.js";
import { threadsOf } from "../measure/integrity.js";
import { unitsAndRows } from "../regions.js";
import type { Span } from "../report.js";
import { numbersIn, stretchesOf } from "../runs-of.js";
import { anyCloth } from "./needs.js";
import { GROUND } from "./parts.js";
import type { Fact, Rule, RulePage } from "./rule.js";

/** What the rule finds. */
export interface LayersFact extends Fact {
  /** What was measured, in `unit` where there is one. */
  readonly measured: number;
  /** What is allowed, in the unit of `measured`. */
  readonly limit: number;
  /** Of `measured` and `limit`. */
  readonly unit: "layers";
  /** The threads that lie over the largest layer and lift off the face. */
  readonly above: ThreadRuns;
  /** The threads that lie under it and drop off the back. */
  readonly below: ThreadRuns;
}

/** Threads of both systems, run by run. */
interface ThreadRuns {
  /** Ends, from 1. */
  readonly ends: readonly Span[];
  /** Picks, from 1. */
  readonly picks: readonly Span[];
}

/** What the page of this rule says. */
export const layersPage: RulePage = {
  summary: "the cloth does not hang together",
  meaning:
    "Some threads lie over all the others wherever they cross them, so that they can be lifted off as a layer: the cloth is really several, one on top of another, or has threads that belong to none.",
  reason:
    "Layers part as soon as the cloth leaves the loom. Double cloth is woven so on purpose; anything else is a slip in the threading or the treadling.",
  mend: "Let the layers change places or stitch them: raise an end of the lower layer over a pick of the upper one at intervals.",
  source:
    "C. R. J. Clapham, When a fabric hangs together, Bulletin of the London Mathematical Society 12 (1980) 161-164",
  examples: {
    passes: [
      { title: "plain weave", cloth: "#.#.\n.#.#" },
      { title: "a double cloth whose layers are stitched once", cloth: "###.\n#.##\n#...\n.##." },
    ],
    fails: [{ title: "a double cloth of two plain weaves", cloth: "###.\n#.##\n#...\n..#." }],
  },
};

const say = ({ above, below, measured }: LayersFact) => {
  const parts = [leave(above, "lift", "off the face"), leave(below, "drop", "off the back")];
  return `the cloth does not hang together but falls into ${many(measured, "layer")}: ${listed(parts.filter((part) => part !== ""))}`;
};

/** The sentence of what it finds, under its name. */
export const layersSentence = { layers: say };

/** A cloth that falls apart into layers. */
export const layers: Rule<"layers", LayersFact> = {
  name: "layers",
  severity: "error",
  changes: ["ground-threading", "tie"],
  of: anyCloth,
  *find(cloth) {
    const { integrity } = cloth;
    if (integrity.layers < 2) return;
    const { above, below } = apart(cloth);
    const ends = extent([...above.ends, ...below.ends]);
    const picks = extent([...above.picks, ...below.picks]);
    yield {
      ...(ends && { ends }),
      ...(picks && { picks }),
      ...unitsAndRows(cloth, ends, picks),
      measured: integrity.layers,
      limit: 1,
      unit: "layers",
      above: inRuns(above),
      below: inRuns(below),
    };
  },
  say,
  parts: () => GROUND,
};

interface Threads {
  readonly ends: readonly number[];
  readonly picks: readonly number[];
}

/** The threads over and under the largest layer, from 1 in ascending order. */
function apart({ integrity }: Cloth): { above: Threads; below: Threads } {
  const { picksBefore, endsBefore, layers: count } = integrity;
  const size = (layer: number) =>
    picksBefore[layer + 1]! - picksBefore[layer]! + endsBefore[layer + 1]! - endsBefore[layer]!;
  // Of equal layers the lowest stays: what lies on top is what lifts off.
  let main = count - 1;
  for (let layer = count - 2; layer >= 0; layer--) if (size(layer) > size(main)) main = layer;
  return { above: threadsOf(integrity, 0, main), below: threadsOf(integrity, main + 1, count) };
}

function extent(numbers: readonly number[]): Span | undefined {
  if (numbers.length === 0) return undefined;
  return numbers.reduce<Span>(
    ([first, last], number) => [Math.min(first, number), Math.max(last, number)],
    [numbers[0]!, numbers[0]!],
  );
}

function inRuns({ ends, picks }: Threads): ThreadRuns {
  return { ends: stretchesOf(ends), picks: stretchesOf(picks) };
}

/** `ends 3-4 and pick 7 lift off the face`; nothing when there are none. */
function leave(runs: ThreadRuns, verb: string, where: string): string {
  const [ends, picks] = [numbersIn(runs.ends), numbersIn(runs.picks)];
  const parts = [];
  if (ends.length > 0) parts.push(`${ends.length === 1 ? "end" : "ends"} ${runsOf(ends)}`);
  if (picks.length > 0) parts.push(`${picks.length === 1 ? "pick" : "picks"} ${runsOf(picks)}`);
  if (parts.length === 0) return "";
  return `${listed(parts)} ${ends.length + picks.length === 1 ? `${verb}s` : verb} ${where}`;
}
