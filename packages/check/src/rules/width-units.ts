import { many } from "@drawcord/base";
import { convert, type Quantity, toMetric } from "@drawcord/yarn";
import type { Calculated } from "../cloth.js";
import { off } from "../limits/off.js";
import { type Amount, amountInWords, amountOf } from "../numbers/amount.js";
import { likelyMistake, type NumberSlip, slipsOfInches } from "../numbers/likely-mistake.js";
import { because, type Mistake } from "../numbers/mistake.js";
import { tenByTen } from "../numbers/ten-by-ten.js";
import { withPlace } from "../words.js";
import { calculated } from "./needs.js";
import type { Fact, Rule, RulePage } from "./rule.js";

/** What the rule finds. */
export interface WidthUnitsFact extends Fact {
  /** Ends that the cloth has. */
  readonly measured: number;
  /** Ends that the width takes. */
  readonly limit: number;
  /** Of `measured` and `limit`. */
  readonly unit: "ends";
  /** The finished width that is wanted. */
  readonly width: Amount;
  /** Units that the cloth has. */
  readonly unitsPlanned: number;
  /** The width that its ends finish, in the unit of `width`; left out where it cannot be worked out. */
  readonly finishes?: Amount;
  /** The mistake that would explain it exactly. */
  readonly likely?: Mistake;
}

/** What the page of this rule says. */
export const widthUnitsPage: RulePage = /* @__PURE__ */ (() => ({
  summary: "the units do not make the finished width",
  meaning:
    "The recipe gives the finished width and the sett; the ends that this takes, with draw-in and shrinkage, are more or fewer than the units and selvedges have. A difference of less than a unit is never reported. Where the cloth repeats over the ends, any whole number of repeats is right.",
  reason:
    "The cloth comes off the loom narrower or wider than promised, by the units that are missing or too many.",
  mend: "Add or leave out units, as a rule in both borders, or correct the width, the sett, the draw-in or the shrinkage. Leave the width out, and it follows from the units.",
  limit: "`off: 5 %` in `limits`: how far they may lie apart. Usual: 3 %.",
  source: "Drawcord's own",
  examples: {
    passes: [
      {
        title: "40 ends at 4 a cm for 10 cm",
        cloth: tenByTen,
        project: { width: "10 cm", sett: "4 per cm", drawIn: "0 %", shrinkage: "0 %" },
      },
    ],
    fails: [
      {
        title: "40 ends at 4 a cm for 12 cm",
        cloth: tenByTen,
        project: { width: "12 cm", sett: "4 per cm", drawIn: "0 %", shrinkage: "0 %" },
      },
      {
        title: "40 ends at 4 a cm, 10 cm in the reed, promised as 10 cm finished",
        cloth: tenByTen,
        project: { width: "10 cm", sett: "4 per cm", drawIn: "6 %", shrinkage: "10 %" },
      },
    ],
  },
}))();

/** What every check knows of the rule, whether numbers are looked at or not. */
export const widthUnitsEntry = {
  name: "width-units",
  severity: "warning",
  changes: ["number", "insert-unit", "remove-unit"],
  ofNumbers: true,
} as const;

const say = /* @__PURE__ */ withPlace(
  ({ finishes, likely, limit, measured, unitsPlanned, width }: WidthUnitsFact) => {
    const apart = Math.abs(measured - limit);
    const units = Math.round(apart / (measured / unitsPlanned));
    const how = measured < limit ? "fewer" : "more";
    const comes = finishes === undefined ? "" : `, which finish ${amountInWords(finishes, 1)} wide`;
    return `a width of ${amountInWords(width)} takes ${limit} ends, and there are ${measured}${comes}: ${apart} ${how} (${many(units, "unit")})${because(likely)}; the plan goes by the units`;
  },
);

/** The sentence of what it finds, under its name. */
export const widthUnitsSentence = { "width-units": say };

/** A width that the units do not make. */
export const widthUnits: Rule<"width-units", WidthUnitsFact, Calculated> = /* @__PURE__ */ (() => ({
  ...widthUnitsEntry,
  of: calculated,
  *find({ endsOfWidth, options, layout, project, warp, worked }) {
    const { width } = project;
    const { clothWidth, sett, widthInReed } = worked;
    const needed = endsOfWidth;
    if (width === undefined || needed === undefined) return;
    if (sett === undefined || clothWidth === undefined || widthInReed === undefined) return;
    const repeated = options.repeat === "ends" || options.repeat === "both";
    const made = (repeated ? Math.max(1, Math.round(needed / warp.count)) : 1) * warp.count;
    const unit = warp.count / Math.max(1, layout.draft.threading.length);
    const allowed = Math.max((needed * (options.limits?.off ?? off.usual)) / 100, unit - 1);
    if (Math.abs(made - needed) <= allowed + 1e-9) return;
    const likely = likelyMistake(
      warp.count,
      slipsOf({ width, sett, needed, unit, drawn: clothWidth.value / widthInReed.value, layout }),
      Math.max(1, unit),
    );
    const { finishedWidth } = worked;
    yield {
      measured: warp.count,
      limit: needed,
      unit: "ends",
      width: amountOf(width),
      unitsPlanned: layout.draft.threading.length,
      ...(finishedWidth !== undefined && { finishes: amountOf(convert(finishedWidth, width.unit)) }),
      ...(likely !== undefined && { likely }),
    };
  },
  say,
  parts: () => [
    ["project", "width"],
    ["units", "threading"],
  ],
}))();

/** What known mistakes would have made of the ends that a width takes. */
function slipsOf({
  drawn,
  layout,
  needed,
  sett,
  unit,
  width,
}: {
  readonly width: Quantity;
  readonly sett: Quantity;
  readonly needed: number;
  /** Ends in a unit. */
  readonly unit: number;
  /** What the draw-in leaves of a width. */
  readonly drawn: number;
  readonly layout: Calculated["layout"];
}): NumberSlip[] {
  const finished = (toMetric(width).value * toMetric(sett).value) / 10;
  const { left = [], right = [] } = layout.draft.selvedge ?? {};
  const selvedges = left.length + right.length;
  return [
    ...(selvedges === 0
      ? []
      : ([
          { value: needed + selvedges, mistake: { mistake: "selvedges-left-out" } },
          { value: needed - selvedges, mistake: { mistake: "selvedges-twice" } },
        ] as const)),
    { value: finished, mistake: { mistake: "finished-width-for-reed" } },
    { value: finished / drawn, mistake: { mistake: "wash-forgotten" } },
    { value: needed * drawn, mistake: { mistake: "draw-in-forgotten" } },
    { value: needed / drawn, mistake: { mistake: "draw-in-twice" } },
    ...slipsOfInches((times) => needed * times),
    { value: needed / unit, mistake: { mistake: "units-for-ends" } },
  ];
}
