import type { Cloth, System } from "../cloth.js";
import { faceShareLimit } from "../limits/face-share.js";
import { allowedLength } from "../measured-length.js";
import { unitsAndRows } from "../regions.js";
import type { Span } from "../report.js";
import { figure, figureBeyond, withPlace } from "../words.js";
import { anyCloth } from "./needs.js";
import { inFigure } from "./parts.js";
import type { Fact, Rule, RulePage } from "./rule.js";

/** The least length or width of a band, in mm: about as much as a weaver sees at once beside the reed (Drawcord's own). */
const BAND_MM = 50;

/** What the rule finds. */
export interface FaceShareFact extends Fact {
  /** What was measured, in `unit` where there is one. */
  readonly measured: number;
  /** What is allowed, in the unit of `measured`. */
  readonly limit: number;
  /** Of `measured` and `limit`. */
  readonly unit: "percentage points";
  /** Whose threads it is about. */
  readonly system: "warp" | "weft";
}

/** What the page of this rule says. */
export const faceSharePage: RulePage = {
  summary: "a band or a column that shows much more or less warp than the cloth",
  meaning:
    "Of a band of at least 50 mm of the cloth's length, or a column of at least 50 mm of its width, the share of interlacements with the warp on the face lies far from that of the whole cloth.",
  reason:
    "Bands of different share draw in by different amounts: the cloth comes off the loom with waving edges, or does not lie flat.",
  mend: "Spread the figure more evenly over length and width, or exchange drawn and undrawn in some of the bands. Drawcord proposes up to eight squares to change; more than that would be another figure, and that is yours to draw.",
  limit: "`face-share: 40 %` in `limits`, in percentage points. Usual: 30.",
  source: "common practice; the limit, and the least band of 50 mm, are Drawcord's own",
  examples: {
    passes: [
      {
        title: "plain weave of 200 mm, at two ends and two picks a cm",
        cloth: "#.#.#.#.#.#.#.#.#.#.\n.#.#.#.#.#.#.#.#.#.#\n#.#.#.#.#.#.#.#.#.#.\n.#.#.#.#.#.#.#.#.#.#",
        options: { sett: { endsPerCm: 2, picksPerCm: 2 } },
      },
      {
        title: "a column of 50 mm that shows 33.3 percentage points more warp, where 34 are allowed",
        cloth:
          "#...#...#...#...#....###.###.#\n...#...#...#...#...##.###.###.\n..#...#...#...#...#.##.###.###\n.#...#...#...#...#..###.###.##",
        options: { limits: { faceShare: 34 }, sett: { endsPerCm: 2, picksPerCm: 2 } },
      },
    ],
    fails: [
      {
        title: "a column of 50 mm that shows 33.3 percentage points more warp, where 33 are allowed",
        cloth:
          "#...#...#...#...#....###.###.#\n...#...#...#...#...##.###.###.\n..#...#...#...#...#.##.###.###\n.#...#...#...#...#..###.###.##",
        options: { limits: { faceShare: 33 }, sett: { endsPerCm: 2, picksPerCm: 2 } },
      },
    ],
  },
};

const say = /* @__PURE__ */ withPlace(({ system, measured, limit }: FaceShareFact) => {
  const [band, threads] = system === "weft" ? ["a band", "picks"] : ["a column", "ends"];
  const how = measured < 0 ? "less" : "more";
  return `${band} of ${threads} shows ${figureBeyond(Math.abs(measured), limit)} percentage points ${how} warp on the face than the whole cloth, where ${figure(limit)} are allowed`;
});

/** The sentence of what it finds, under its name. */
export const faceShareSentence = { "face-share": say };

/** A band across the cloth, or a column along it, that shows much more or much less warp than the rest. */
export const faceShare: Rule<"face-share", FaceShareFact> = {
  name: "face-share",
  severity: "warning",
  changes: ["draw", "leave"],
  mends: ["any squares"],
  of: anyCloth,
  *find(cloth) {
    const tolerance = cloth.options.limits?.faceShare ?? faceShareLimit.usual;
    for (const [system, passed] of [
      ["weft", "pick"],
      ["warp", "end"],
    ] as const) {
      const least = allowedLength(cloth.options, passed, { mm: BAND_MM }).threads;
      yield* factsOf(cloth, system, bands(cloth[system], least), tolerance);
    }
  },
  say,
  parts: inFigure,
};

/** A band of neighbouring threads, from 0 and with the last, and how far its share lies from the cloth's in points. */
interface Band {
  readonly first: number;
  readonly last: number;
  readonly points: number;
}

/** Cuts a system into bands of about equal size, none below the least. */
function bands({ count: threads, length, raised }: System, least: number): Band[] {
  const count = Math.max(1, Math.floor(threads / Math.max(1, least)));
  const all = raised.reduce((sum, one) => sum + one, 0) / (threads * length);
  return Array.from({ length: count }, (_, band) => {
    const first = Math.floor((band * threads) / count);
    const end = Math.floor(((band + 1) * threads) / count);
    const own = raised.subarray(first, end).reduce((sum, one) => sum + one, 0);
    return { first, last: end - 1, points: 100 * (own / ((end - first) * length) - all) };
  });
}

function* factsOf(
  cloth: Cloth,
  system: "warp" | "weft",
  all: readonly Band[],
  limit: number,
): Iterable<FaceShareFact> {
  for (const { first, last, points } of all) {
    // A share just at the limit passes, whatever the last binary digit says.
    if (!(Math.abs(points) > limit + 1e-9)) continue;
    const threads: Span = [first + 1, last + 1];
    const place = system === "warp" ? { ends: threads } : { picks: threads };
    yield {
      ...place,
      ...unitsAndRows(cloth, place.ends, place.picks),
      measured: points,
      limit,
      unit: "percentage points",
      system,
    };
  }
}
