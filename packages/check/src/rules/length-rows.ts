import { many } from "@drawcord/base";
import { bodyLines } from "@drawcord/units";
import { toMetric } from "@drawcord/yarn";
import type { Calculated } from "../cloth.js";
import { off } from "../limits/off.js";
import { type Amount, amountInWords, amountOf } from "../numbers/amount.js";
import { likelyMistake, type NumberSlip, slipsOfInches } from "../numbers/likely-mistake.js";
import { because, type Mistake } from "../numbers/mistake.js";
import type { ProjectFacts } from "../numbers/project.js";
import { tenByTen } from "../numbers/ten-by-ten.js";
import type { WovenOrder } from "../put-together.js";
import type { Span } from "../report.js";
import { figure } from "../words.js";
import { calculated } from "./needs.js";
import type { Fact, Rule, RulePage } from "./rule.js";

/** What the rule finds. */
export interface LengthRowsFact extends Fact {
  /** Picks that the lift plan has. */
  readonly measured: number;
  /** Picks that the length takes. */
  readonly limit: number;
  /** Of `measured` and `limit`. */
  readonly unit: "picks";
  /** The finished length that is wanted. */
  readonly length: Amount;
  /** Rows that the lift plan has. */
  readonly rowsPlanned: number;
  /** The last rows, where they are too many. */
  readonly rows?: Span;
  /** Another number of repeats that makes the length, or comes nearest to it. */
  readonly blocks?: OtherRepeats;
  /** The mistake that would explain it exactly. */
  readonly likely?: Mistake;
}

/** A block, and how often it would be woven in place of as often as it is. */
interface OtherRepeats {
  /** Its name in the recipe. */
  readonly block: string;
  /** How often it is woven. */
  readonly times: number;
  /** How often it would be. */
  readonly other: number;
  /** Rows that are then over; below 0 those that are missing. */
  readonly off: number;
}

/** What the page of this rule says. */
export const lengthRowsPage: RulePage = /* @__PURE__ */ (() => ({
  summary: "the rows do not make the length of the piece",
  meaning:
    "The recipe gives the finished length of a piece, and the picks a cm; the picks that this takes are more or fewer than the lift plan has. Where the cloth repeats, any whole number of repeats is right. A difference of less than a row is never reported.",
  reason: "Warp and yarn are planned for one of the two, and the piece is woven by the other.",
  mend: "Add or leave out rows, best a whole block, or correct the length, the picks a cm or the shrinkage. Leave the length out, and it follows from the rows.",
  limit: "`off: 5 %` in `limits`: how far they may lie apart. Usual: 3 %.",
  source: "Drawcord's own",
  examples: {
    passes: [
      {
        title: "40 picks at 4 a cm for 10 cm",
        cloth: tenByTen,
        project: { length: "10 cm", pickSett: "4 per cm", shrinkage: "0 %" },
      },
      {
        title: "44 picks wanted and 40 in the plan, where 10 % are allowed",
        cloth: tenByTen,
        options: {
          limits: { off: 10 },
        },
        project: { length: "11 cm", pickSett: "4 per cm", shrinkage: "0 %" },
      },
      {
        title: "three repeats of 40 picks for 30 cm",
        cloth: tenByTen,
        options: {
          repeat: "picks",
        },
        project: { length: "30 cm", pickSett: "4 per cm", shrinkage: "0 %" },
      },
    ],
    fails: [
      {
        title: "40 picks at 4 a cm for 12 cm",
        cloth: tenByTen,
        project: { length: "12 cm", pickSett: "4 per cm", shrinkage: "0 %" },
      },
      {
        title: "40 picks for 4 in, written as 4 cm",
        cloth: tenByTen,
        project: { length: "10.16 cm", pickSett: "10 per cm", shrinkage: "0 %" },
      },
    ],
  },
}))();

/** What every check knows of the rule, whether numbers are looked at or not. */
export const lengthRowsEntry = {
  name: "length-rows",
  severity: "warning",
  changes: ["number", "insert-row", "remove-row"],
  ofNumbers: true,
} as const;

const say = ({ blocks, length, likely, limit, measured, rows: over, rowsPlanned }: LengthRowsFact) => {
  const apart = Math.abs(measured - limit);
  const rows = many(Math.round(apart / (measured / rowsPlanned)), "row");
  const how = measured < limit ? "fewer" : "more";
  const which =
    over !== undefined
      ? `rows ${over[0]}-${over[1]} are too many`
      : measured < limit
        ? `${rows} are missing after row ${rowsPlanned}`
        : rows;
  const mend = blocks === undefined ? "" : `; ${repeatsInWords(blocks)}`;
  return `a piece of ${amountInWords(length)} takes ${figure(limit)} picks, and the lift plan has ${measured}, ${figure(apart)} ${how}: ${which}${mend}${because(likely)}; the plan goes by the length`;
};

/** The sentence of what it finds, under its name. */
export const lengthRowsSentence = { "length-rows": say };

/** A length of the piece that the rows do not make. */
export const lengthRows: Rule<"length-rows", LengthRowsFact, Calculated> = /* @__PURE__ */ (() => ({
  ...lengthRowsEntry,
  of: calculated,
  *find({ options, layout, project, weft, worked }) {
    const { length, pickSett } = project;
    if (length === undefined || pickSett === undefined) return;
    const needed = worked.picks.value;
    const rows = layout.draft.lifts.length;
    const row = weft.count / Math.max(1, rows);
    const times = repeats(options.repeat) ? Math.max(1, Math.round(needed / weft.count)) : 1;
    const made = times * weft.count;
    const allowed = Math.max((needed * (options.limits?.off ?? off.usual)) / 100, row - 1);
    if (Math.abs(made - needed) <= allowed + 1e-9) return;
    const likely = likelyMistake(weft.count, slipsOf(project, needed, row), Math.max(1, row));
    const wanted = Math.round(needed / row);
    const blocks = repeats(options.repeat) ? undefined : otherRepeats(options.woven, rows, wanted);
    yield {
      measured: weft.count,
      limit: needed,
      unit: "picks",
      length: amountOf(length),
      rowsPlanned: rows,
      ...(wanted < rows && wanted > 0 && !repeats(options.repeat) && { rows: [wanted + 1, rows] as const }),
      ...(blocks !== undefined && { blocks }),
      ...(likely !== undefined && { likely }),
    };
  },
  say,
  parts: () => [["project", "length"], ["lifts"]],
}))();

/** What known mistakes would have made of the picks that a length takes. */
function slipsOf({ hems, length, pickSett }: ProjectFacts, needed: number, row: number): NumberSlip[] {
  const perMm = toMetric(pickSett!).value / 10;
  const finished = toMetric(length!).value;
  const hem = hems === undefined ? 0 : toMetric(hems).value;
  /** The picks for another length with other hems. */
  const picksFor = (other: number, hemmed: number) => (needed * (other + hemmed)) / (finished + hem);
  return [
    { value: finished * perMm, mistake: { mistake: "finished-length-for-woven" } },
    { value: (finished + hem) * perMm, mistake: { mistake: "wash-forgotten" } },
    ...(hem === 0
      ? []
      : ([
          { value: picksFor(finished, 0), mistake: { mistake: "hems-left-out" } },
          { value: picksFor(finished, 2 * hem), mistake: { mistake: "hems-twice" } },
        ] as const)),
    ...slipsOfInches((times) => picksFor(finished * times, hem)),
    ...slipsOfInches((times) => needed * times),
    { value: needed / row, mistake: { mistake: "picks-for-rows" } },
    { value: needed * row, mistake: { mistake: "rows-for-picks" } },
  ];
}

/** The change of one number of repeats that makes so many rows, or comes nearest; undefined where the lifts are of no blocks. */
function otherRepeats(woven: WovenOrder | undefined, rows: number, wanted: number): OtherRepeats | undefined {
  const order = woven?.order ?? [];
  const lines = bodyLines(order).flatMap((line) => {
    const { beside, block, changes } = order[line]!;
    const [only] = changes;
    const repeated = only?.change === "repeated" ? only.times : 1;
    const isPlain = beside === undefined && changes.length < 2 && (only === undefined || repeated > 1);
    return isPlain ? [{ block, times: repeated, long: woven!.blocks[block]?.length ?? 0 }] : [];
  });
  const [best] = lines
    .filter(({ long }) => long > 0)
    .map(({ block, long, times }) => {
      const other = Math.max(1, times + Math.round((wanted - rows) / long));
      return { block, times, other, off: rows + (other - times) * long - wanted };
    })
    .filter(({ other, times }) => other !== times)
    .sort((a, b) => Math.abs(a.off) - Math.abs(b.off));
  if (best === undefined || Math.abs(best.off) >= Math.abs(rows - wanted)) return undefined;
  return best;
}

function repeatsInWords({ block, off: left, other, times }: OtherRepeats): string {
  const makes =
    left === 0
      ? "makes it"
      : `comes nearest, ${many(Math.abs(left), "row")} too ${left < 0 ? "few" : "many"}`;
  return `${block}*${other} in place of ${block}*${times} ${makes}`;
}

function repeats(repeat: string | undefined): boolean {
  return repeat === "picks" || repeat === "both";
}
