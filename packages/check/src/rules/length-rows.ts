import { many } from "@drawcord/base";
import { printQuantity, toMetric } from "@drawcord/yarn";
import type { Calculated } from "../cloth.js";
import { off } from "../limits/off.js";
import { because, likelyReason } from "../numbers/likely-reason.js";
import { tenByTen } from "../numbers/ten-by-ten.js";
import { figure } from "../words.js";
import { calculated } from "./needs.js";
import type { Fact, Rule, RulePage } from "./rule.js";

/** What the rule finds. */
export interface LengthRowsFact extends Fact {
  /** Picks that the lift plan has. */
  readonly measured: number;
  /** Picks that the length takes. */
  readonly limit: number;
  readonly unit: "picks";
  /** The slip that would explain it exactly. */
  readonly likely?: string;
}

/** What the page of this rule says. */
export const lengthRowsPage: RulePage = /* @__PURE__ */ (() => ({
  summary: "the rows do not make the length of the piece",
  meaning:
    "The recipe gives the finished length of a piece, and the picks a cm; the picks that this takes are more or fewer than the lift plan has. Where the cloth repeats, any whole number of repeats is right. Less than a row is never reported.",
  reason: "Warp and yarn are planned for one of the two, and the piece is woven by the other.",
  mend: "Add or leave out rows, best by a block more or less, or correct the length, the picks a cm or the shrinkage. Leave the length out, and it follows from the rows.",
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
        title: "44 picks wanted for 40, where 10 % are allowed",
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

/** A length of the piece that the rows do not make. */
export const lengthRows: Rule<"length-rows", LengthRowsFact, Calculated> = {
  name: "length-rows",
  severity: "warning",
  changes: ["number", "insert-row", "remove-row"],
  ofNumbers: true,
  of: calculated,
  *find({ options, layout, project, weft, worked }) {
    const { hems, length, pickSett } = project;
    if (length === undefined || pickSett === undefined) return;
    const needed = worked.picks.value;
    const rows = layout.draft.lifts.length;
    const row = weft.count / Math.max(1, rows);
    const times = repeats(options.repeat) ? Math.max(1, Math.round(needed / weft.count)) : 1;
    const made = times * weft.count;
    const allowed = Math.max((needed * (options.limits?.off ?? off.usual)) / 100, row - 1);
    if (Math.abs(made - needed) <= allowed + 1e-9) return;
    const perMm = toMetric(pickSett).value / 10;
    const plain = toMetric(length).value * perMm;
    const likely = likelyReason(
      weft.count,
      needed,
      [
        { value: plain, reason: "the finished length was taken for the woven one" },
        {
          value: plain + (hems === undefined ? 0 : toMetric(hems).value) * perMm,
          reason: "the wash was forgotten",
        },
        { value: needed / row, reason: "picks were taken for rows" },
        { value: needed * row, reason: "rows were taken for picks" },
      ],
      1,
    );
    yield { measured: weft.count, limit: needed, unit: "picks", ...(likely !== undefined && { likely }) };
  },
  say({ likely, limit, measured }, { layout, project, weft }) {
    const apart = Math.abs(measured - limit);
    const rows = Math.round(apart / (weft.count / layout.draft.lifts.length));
    const how = measured < limit ? "fewer" : "more";
    const length = project.length === undefined ? "" : printQuantity(project.length);
    return `a piece of ${length} takes ${figure(limit)} picks, and the lift plan has ${measured}, ${figure(apart)} ${how} (${many(rows, "row")})${because(likely)}`;
  },
  parts: () => [["project", "length"], ["lifts"]],
};

function repeats(repeat: string | undefined): boolean {
  return repeat === "picks" || repeat === "both";
}
