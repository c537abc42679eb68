import { listed, many } from "@drawcord/base";
import {
  assumptions,
  metric,
  type Plan,
  type PlanPurchase,
  type PlanReed,
  type PlanSample,
  type PlanYarn,
  printQuantity,
  printReed,
  printSley,
  type Quantity,
  type SampleNumber,
  WASHING_CAUTION,
} from "@drawcord/yarn";
import type { Paint } from "../paint.js";
import { oneLine } from "../printable.js";
import { wrapText } from "../text.js";
import { both } from "./measures.js";
import { windingLines, windingOf } from "./winding.js";

/** A heading and its lines; a heading without lines is not printed. */
type Section = readonly [heading: string, lines: readonly string[]];

/** A plan as a weaver reads it, in lines of at most `width` characters where words allow. */
export function planText(plan: Plan, width: number, paint: Paint): string {
  const sections: readonly Section[] = [
    ["threads", [threads(plan)]],
    ["sett", settLines(plan)],
    ["reed", plan.reed === undefined ? [] : reedLines(plan.reed)],
    [
      "width",
      named(plan, { widthInReed: "in the reed", clothWidth: "on the loom", finishedWidth: "finished" }),
    ],
    ["length", lengths(plan)],
    [
      "warp",
      named(plan, {
        ...(isOfOne(plan) && { warpOfPiece: "a piece" }),
        warpLength: "in all",
        leftOver: "left over",
      }),
    ],
    ["winding", windingText(plan)],
    ["pieces", piecesLines(plan)],
    ["yarn", [...plan.warpYarns, ...plan.weftYarn].map(yarnLine)],
    ["buy", plan.buy.map(purchaseLine)],
    ["cloth", plan.clothWeight === undefined ? [] : [both(plan.clothWeight)]],
    ["own", (plan.own ?? []).map(({ title, value }) => `${title}: ${both(value)}`)],
    ["sample", plan.sample === undefined ? [] : plan.sample.numbers.map(sampleLine)],
    ["moved", plan.sample === undefined ? [] : movedLines(plan.sample)],
    [
      "assumed",
      assumptions(plan).map(({ meaning, value, why }) => `${meaning}: ${printQuantity(value)} (${why})`),
    ],
    ["goes by", plan.goesBy],
    ["missing", plan.missing],
    ["note", plan.notes],
    ["wash", plan.finishedWidth === undefined && plan.sample === undefined ? [] : [WASHING_CAUTION]],
  ];
  return sections
    .filter(([, lines]) => lines.length > 0)
    .map(([heading, lines]) => section(heading, lines, width, paint))
    .join("");
}

const INDENT = 10;

function section(heading: string, lines: readonly string[], width: number, paint: Paint): string {
  const wrapped = lines.flatMap((line) =>
    wrapText(oneLine(line), Math.max(20, width - INDENT - 2)).map((part, i) =>
      i === 0 ? part : `  ${part}`,
    ),
  );
  return wrapped
    .map(
      (line, i) =>
        `${i === 0 ? `${paint.strong(heading)}${" ".repeat(INDENT - heading.length)}` : " ".repeat(INDENT)}${line}\n`,
    )
    .join("");
}

function threads(plan: Plan): string {
  const { ends, lingos, picks, units } = plan;
  const counted = [ends, units, lingos].flatMap((one) => (one === undefined ? [] : [printQuantity(one)]));
  return counted.join(", ") + (isOfOne(plan) ? `; ${metric(picks).value} picks in a piece` : "");
}

type Measured =
  | "widthInReed"
  | "clothWidth"
  | "finishedWidth"
  | "warpOfPiece"
  | "warpLength"
  | "leftOver"
  | "clothLength"
  | "finishedLength";

function named(plan: Plan, names: Readonly<Partial<Record<Measured, string>>>): string[] {
  return (Object.keys(names) as Measured[]).flatMap((name) => {
    const found = plan[name];
    return found === undefined ? [] : [`${both(found)} ${names[name]}`];
  });
}

/** Whether one design is woven; of several each has its own numbers among the pieces. */
function isOfOne({ woven }: Plan): boolean {
  return woven.length < 2;
}

function lengths(plan: Plan): string[] {
  if (!isOfOne(plan)) return [];
  return named(plan, { clothLength: "woven for a piece", finishedLength: "finished" });
}

function windingText(plan: Plan): string[] {
  const winding = windingOf(plan);
  return winding === undefined ? [] : windingLines(winding);
}

function settLines({ firmness, sett }: Plan): string[] {
  if (sett === undefined) return [];
  const ends = `${both(sett)} ends`;
  if (firmness === undefined) return [ends];
  const share = printQuantity(metric(firmness.share));
  const { weft } = firmness;
  const picks = weft === undefined ? "" : `, the picks ${printQuantity(metric(weft.share))} of theirs`;
  return [`${ends}, ${share} of the closest in the ground weave${picks}: ${firmness.words}`];
}

function reedLines({
  dents,
  dentsUsed,
  error,
  others,
  printed,
  reed,
  sett,
  sley,
  width,
}: PlanReed): string[] {
  const off = error === undefined || Math.abs(error) < 0.005 ? "" : `, ${signed(error)} of the sett`;
  return [
    `${printReed(reed)}: ${both(dents)} dents`,
    `sleyed ${printSley(sley)}: ${both(sett)} ends${off}`,
    `${dentsUsed} dents, ${both(width)}: ${printed}`,
    ...others.map(
      (other) => `or ${printSley(other.sley)}: ${both(other.sett)} ends, ${signed(other.error)} of the sett`,
    ),
  ];
}

function signed(error: number): string {
  return `${Math.abs(error).toFixed(1)} % ${error > 0 ? "above that" : "below that"}`;
}

/** How many pieces, and of several designs how many of each; what is left would still give some. */
function piecesLines({ leftOver, pieces, woven }: Plan): string[] {
  const more = woven.filter((piece) => (piece.more?.value ?? 0) > 0);
  const still =
    leftOver === undefined || more.length === 0
      ? []
      : [
          `${both(leftOver)} left: ${listed(
            more.map(
              ({ more: some, name }) =>
                `${some!.value} more${name === "" || woven.length === 1 ? "" : ` of ${name}`}`,
            ),
            "or",
          )}`,
        ];
  const each =
    woven.length < 2
      ? []
      : woven.map(({ clothLength, count, finishedLength, name, over, picks }) =>
          [
            `${count.value} of ${name}: ${metric(picks).value} picks`,
            ...(clothLength === undefined ? [] : [`${both(clothLength)} woven`]),
            ...(finishedLength === undefined ? [] : [`${both(finishedLength)} finished`]),
            ...overText(over),
          ].join(", "),
        );
  const only = woven.length < 2 ? overText(woven[0]?.over) : [];
  return [`${pieces.value}`, ...only, ...each, ...still];
}

/** What whole repeats leave of a piece's length. */
function overText(over: number | undefined): string[] {
  return over === undefined ? [] : [`${many(over, "row")} of the length left over after whole repeats`];
}

/** One yarn to buy: what it is for, how much is needed, what to buy beside the stock, in packages. */
function purchaseLine({
  colour,
  count,
  need,
  package: one,
  packages,
  stock,
  toBuy,
  yarns,
}: PlanPurchase): string {
  const own = listed(yarns);
  const what = [count, colour].filter((word) => word !== undefined && word !== own).join(" ");
  const buy =
    stock === undefined
      ? []
      : [
          toBuy.value === 0
            ? `the stock of ${both(stock)} is enough`
            : `${both(toBuy)} beside the stock of ${both(stock)}`,
        ];
  const packed =
    packages === undefined || packages.value === 0
      ? []
      : [`${many(packages.value, "package")} of ${printQuantity(one!)}`];
  return `${own}${what === "" ? "" : ` (${what})`}: ${[`${both(need)} needed`, ...buy, ...packed].join(", ")}`;
}

/** One number that the sample tells, and what it stands for. */
function sampleLine({ instead, title, value }: SampleNumber): string {
  const how =
    instead === undefined
      ? ""
      : `, in place of ${both(instead)}${instead.assumed === undefined ? "" : ` (${instead.assumed})`}`;
  return `${title} ${both(value)}${how}`;
}

/** What the sample moves, and by how much. */
function movedLines({ moved }: PlanSample): string[] {
  const lines = moved.map(
    ({ after, before, by, title }) =>
      `${title}: ${both(after)} and not ${both(before)}, ${apart(by)} ${by.value < 0 ? "less" : "more"}`,
  );
  return lines.length === 0 ? ["no number of the plan"] : lines;
}

/** How far two numbers lie apart; shares in points, of which a percent would be taken for a share of a share. */
function apart({ kind, unit, value }: Quantity): string {
  const far = printQuantity({ kind, unit, value: Math.abs(value) });
  return kind === "share" ? far.replace("%", "points") : far;
}

function yarnLine({ colour, length, mass, name, picks, samples }: PlanYarn): string {
  const parts = [
    ...(picks === undefined ? [] : [`${metric(picks).value} picks a piece`]),
    both(length),
    ...(mass === undefined ? [] : [both(mass)]),
    ...(samples === undefined ? [] : [`${both(samples)} of it in samples`]),
  ];
  // The wefts of a shaft draft are named by their colours.
  const shown = colour === undefined || colour === name ? "" : ` (${colour})`;
  return `${name}${shown}: ${parts.join(", ")}`;
}
