import { type ShaftDraft, settOf, shaftsMoved, type ThreadUnit } from "@drawcord/check";
import { nearestColourName } from "@drawcord/draw";
import type { GroundStep, ShaftSet } from "@drawcord/ground";
import { sized } from "@drawcord/units";
import { type Quantity, quantity } from "@drawcord/yarn";
import { FileError } from "../error.js";
import { top } from "../place.js";
import { schemaLine } from "../recipe/schema-line.js";
import type { RecipeYarn } from "../recipe/types.js";
import { writeRecipe } from "../recipe/write.js";
import { shortestRepeat } from "./shortest-repeat.js";
import { singleShafts } from "./single-shafts.js";

/** The most ground shafts of a recipe. */
const MOST_SHAFTS = 1024;

/**
 * The text of a recipe that weaves a shaft draft: its threading, its tie-up and treadling or lift plan, its setts, and the
 * colours of its threads as yarns and orders. A draft knows one harness, so all of its shafts are ground shafts and the one
 * unit, of all ends, is static. Comments say what a draft does not tell.
 * @param draft a draft as `soundWif` gives it
 * @param schema where an editor finds the schema of recipes; by default in the command's package, installed beside the recipe
 * @throws {FileError} `too-many-shafts` where it takes more than 1024
 * @example soundRecipe(recipeOfDraft(draft), "made").draft.ground.threading // [1, 2]
 */
export function recipeOfDraft(draft: ShaftDraft, schema?: string): string {
  const { author, notes = [], title, warp, weft } = draft;
  const { shafts, several, threading } = singleShafts(draft);
  if (shafts > MOST_SHAFTS) {
    const sentence = `the draft takes ${shafts} shafts, each end on one; the ground harness of a recipe has up to ${MOST_SHAFTS}`;
    throw new FileError("too-many-shafts", sentence, title ?? "the draft", top);
  }
  const moved = shaftsMoved(draft);
  const ends = draft.threading.length;
  const picks = moved.length;
  const yarns = yarnsOf(warp.colours?.slice(0, ends), weft.colours?.slice(0, picks));
  const unitDraft = sized({
    ground: { shafts, threading: shortestRepeat(threading), steps: stepsOf(draft, shafts, several, moved) },
    unitEnds: ends,
    threading: [[]],
    lifts: moved.map((): ShaftSet => []),
    picksPerRow: 1,
  });
  const { endsPerCm, picksPerCm } = settOf(draft);
  const told = [...notes, ...(author === undefined ? [] : [`By ${author}.`])].join("\n").trim();
  const text = writeRecipe({
    ...(title === undefined ? {} : { title }),
    ...(told === "" ? {} : { notes: told }),
    draft: unitDraft,
    warp: yarns.ends,
    pieces: [
      {
        name: title ?? "",
        count: 1,
        draft: unitDraft,
        limits: {},
        wefts: yarns.picks,
        yarnOrders: [],
        over: 0,
        path: [],
      },
    ],
    yarns: yarns.yarns,
    cloth: {
      ...(endsPerCm === undefined ? {} : { sett: perLength(endsPerCm, warp.unit) }),
      ...(picksPerCm === undefined ? {} : { picks: perLength(picksPerCm, weft.unit) }),
    },
    project: {},
    loom: {},
    limits: {},
    levels: {},
    waive: [],
    stated: [],
  });
  return headed(schema) + withComments(withTreadles(text, draft), commentsOf(draft, several.size > 0));
}

function headed(schema: string | undefined): string {
  return `# Made of a weaving draft (WIF): its threading, how its shafts are moved, and its colours, thread by thread the same cloth.
${schemaLine(schema)}
#
# What a draft does not say is not here, and is yours to add: the count and fibre of the yarns, the reed, width and length
# of the piece and how many are woven, what is lost on the loom and in the wash, the loom itself, and what floats you allow.

`;
}

/** What is said above the sections, by their keys. */
function commentsOf(draft: ShaftDraft, hasSeveral: boolean): Readonly<Record<string, readonly string[]>> {
  const { colours: warp } = draft.warp;
  const { colours: weft } = draft.weft;
  const colours =
    warp === undefined && weft === undefined
      ? []
      : [
          "The colours are the draft's; which yarn has them it does not say, nor whether ends and picks of one colour are one yarn.",
        ];
  return {
    ground: [
      "A draft knows one harness: all of its shafts are ground shafts here. A step is a pick: what rises, and what stays down.",
      ...(draft.shedding.kind === "tie-up"
        ? [
            "A recipe has no treadles of its own: the shafts that they move stand at each pick, and their numbers beside it.",
          ]
        : ["It has a lift plan: how the shafts are tied to treadles it does not say."]),
      ...(draft.rising ? [] : ["Its treadles sink the shafts; here stands what is then left up."]),
      ...(hasSeveral
        ? [
            "Ends on several shafts of the draft, or on none, have shafts of their own here, after its others.",
          ]
        : []),
    ],
    units: [
      "One static unit of all ends: which of them a pattern harness would draw is not to be seen in a draft.",
    ],
    ...(colours.length === 0 ? {} : { yarns: colours }),
  };
}

/** The treadles of each step beside it, where each stands on a line of its own. */
function withTreadles(text: string, { shedding }: ShaftDraft): string {
  if (shedding.kind !== "tie-up") return text;
  let step = 0;
  return text.replace(/^ {4}- \{ raise: .*\}$/gm, (line) => {
    const treadles = shedding.treadling[step++] ?? [];
    return treadles.length === 0
      ? line
      : `${line} # ${treadles.length === 1 ? "treadle" : "treadles"} ${treadles.join(" ")}`;
  });
}

/** A recipe with comments above its sections. */
function withComments(text: string, comments: Readonly<Record<string, readonly string[]>>): string {
  return Object.entries(comments).reduce(
    (all, [key, lines]) =>
      all.replace(new RegExp(`^${key}:`, "m"), (found) =>
        [...lines.map((line) => `# ${line}`), found].join("\n"),
      ),
    text,
  );
}

/** What each pick raises, all other shafts sunk, in the least order that repeats. */
function stepsOf(
  { rising, shafts: own }: ShaftDraft,
  shafts: number,
  several: ReadonlyMap<number, ShaftSet>,
  moved: readonly ShaftSet[],
): readonly GroundStep[] {
  const known = new Map<string, GroundStep>();
  const steps = moved.map((set) => {
    const key = set.join(" ");
    const step = known.get(key) ?? stepOf(new Set(set));
    known.set(key, step);
    return step;
  });
  return shortestRepeat(steps);

  function stepOf(set: ReadonlySet<number>): GroundStep {
    const [raise, sink]: [number[], number[]] = [[], []];
    for (let shaft = 1; shaft <= shafts; shaft++) {
      const on = shaft <= own ? [shaft] : several.get(shaft)!;
      (on.some((one) => set.has(one)) === rising ? raise : sink).push(shaft);
    }
    return { raise, sink };
  }
}

/** Threads in the length that the draft counts in. */
function perLength(perCm: number, unit: ThreadUnit | undefined): Quantity {
  const [count, per] =
    unit === "inches" ? ([perCm * 2.54, "per inch"] as const) : ([perCm, "per cm"] as const);
  return quantity(Number(count.toPrecision(6)), per);
}

interface Yarns {
  readonly yarns: readonly RecipeYarn[];
  readonly ends: readonly string[];
  readonly picks: readonly string[];
}

/** A yarn for each colour: the commonest of the ends is the warp, that of the picks the weft, others are named by their colour. */
function yarnsOf(
  ends: readonly `#${string}`[] | undefined,
  picks: readonly `#${string}`[] | undefined,
): Yarns {
  const yarns = new Map<string, RecipeYarn>();
  const others = new Map<string, string>();
  const named = (name: string, colour: string) => {
    yarns.set(name, { name, colour });
    return name;
  };
  const orderOf = (system: "warp" | "weft", colours: readonly string[] | undefined) => {
    const common = colours && commonest(colours);
    if (colours === undefined || common === undefined) return [system];
    named(system, common);
    const names = colours.map((colour) => {
      if (colour === common) return system;
      const name = others.get(colour) ?? named(freeName(nearestColourName(colour), yarns), colour);
      others.set(colour, name);
      return name;
    });
    return shortestRepeat(names);
  };
  return { ends: orderOf("warp", ends), picks: orderOf("weft", picks), yarns: [...yarns.values()] };
}

function freeName(name: string, taken: ReadonlyMap<string, unknown>): string {
  if (!taken.has(name)) return name;
  let number = 2;
  while (taken.has(`${name}-${number}`)) number++;
  return `${name}-${number}`;
}

function commonest(colours: readonly string[]): string | undefined {
  const counts = new Map<string, number>();
  for (const colour of colours) counts.set(colour, (counts.get(colour) ?? 0) + 1);
  return [...counts].sort((a, b) => b[1] - a[1])[0]?.[0];
}
