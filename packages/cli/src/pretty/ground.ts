import { many } from "@drawcord/base";
import { type BitGrid, tile, toText } from "@drawcord/grid";
import {
  type Arrangement,
  type BorderCut,
  type FloatLengths,
  type Ground,
  type GroundCut,
  type GroundPlan,
  isClean,
  type NoTieUp,
  type Properties,
  type ShaftSet,
  type TieUp,
} from "@drawcord/ground";
import { expand } from "@drawcord/units";
import type { Paint } from "../paint.js";
import { indent, rowsOf, sentences } from "./layout.js";
import { tiesPart } from "./ties.js";

/** One weave with all that was worked out of it. */
export interface StudiedGround {
  readonly weave: string;
  /** What the weave is called where it is found in a drawdown. */
  readonly name?: string;
  /** One repeat. */
  readonly drawdown: BitGrid;
  readonly properties: Properties;
  readonly plan: GroundPlan;
  readonly unitEnds: number;
  readonly picksPerRow: number;
  readonly ties?: TieUp | NoTieUp;
}

/** Threads that a small picture has at the most, unless one repeat has more. */
const PICTURE = 16;
/** What a page holds. */
const PAGE = { ends: 72, picks: 48 };
/** Rivals that are shown. */
const MOST_RIVALS = 4;

/** The weave, its properties, its plan and its ties, for a reader. */
export function groundPage(studied: StudiedGround, paint: Paint, width: number): string {
  const { weave, drawdown, plan, ties } = studied;
  const parts = [
    [paint.strong(weave), ...indent(picture(drawdown, width))],
    rowsOf([...otherName(studied), ...propertyRows(studied.properties)], width),
    [paint.strong(planHeading(studied)), ...rowsOf(planRows(plan), width), ...sentences(plan.reasons, width)],
    ...(plan.kind === "ground alone" ? [] : [meeting(studied, paint)]),
    ...rivals(plan, paint, width),
    ...(ties ? [tiesPart(ties, paint, width)] : []),
  ];
  const told = parts.filter((lines) => lines.length > 0);
  return `${told.map((lines) => lines.join("\n")).join("\n\n")}\n`;
}

/** A whole number of repeats, as many as a small picture holds; of a repeat larger than a page its first ends and picks. */
function picture(drawdown: BitGrid, width: number): string[] {
  const times = (repeat: number) => repeat * Math.max(1, Math.floor(PICTURE / repeat));
  const rows = Math.min(times(drawdown.rows), PAGE.picks);
  const columns = Math.min(times(drawdown.columns), Math.max(8, Math.min(PAGE.ends, width - 2)));
  const rest = [
    ...(columns < drawdown.columns ? [`${columns} of ${many(drawdown.columns, "end")}`] : []),
    ...(rows < drawdown.rows ? [`${rows} of ${many(drawdown.rows, "pick")}`] : []),
  ];
  return [
    ...toText(tile(drawdown, rows, columns)).split("\n"),
    ...(rest.length > 0 ? [`(${rest.join(", ")})`] : []),
  ];
}

function otherName({ weave, name, plan }: StudiedGround): [string, string][] {
  return name === undefined || name === weave || plan.kind === "pattern weft" ? [] : [["that is", name]];
}

function propertyRows({ repeat, shafts, treadles, floats, ...rest }: Properties): [string, string][] {
  const { intersections, line } = rest;
  return [
    [
      "repeat",
      `${many(repeat.ends, "end")} x ${many(repeat.picks, "pick")}, on ${many(shafts, "shaft")} and ${many(treadles, "treadle")}`,
    ],
    ["warp floats", `on the face ${floatsSaid(floats.warpFace)}; on the back ${floatsSaid(floats.warpBack)}`],
    ["weft floats", `on the face ${floatsSaid(floats.weftFace)}; on the back ${floatsSaid(floats.weftBack)}`],
    ["intersections", `${range(intersections.ends)} on an end, ${range(intersections.picks)} on a pick`],
    [
      "mean float",
      `${many(round(rest.meanFloat), "thread")}; ${many(round(rest.firmness.crossing), "crossing")} an interlacement`,
    ],
    ["balance", `warp on ${round(100 * rest.warpFaceShare)} % of the face`],
    ...(line
      ? [
          [
            "line",
            `${line.direction}, steps ${many(line.up, "pick")} up, ${many(Math.abs(line.out), "end")} across, at ${round(line.angle)} degrees`,
          ] as [string, string],
        ]
      : []),
    ["threads alike", rest.isonemal ? "yes, all of them (isonemal)" : "no"],
  ];
}

/** `up to 7, mean 4.5`; the mean of floats of one length goes without saying. */
function floatsSaid({ count: floats, longest, mean }: FloatLengths): string {
  if (floats === 0) return "none";
  return mean === longest ? `${longest}` : `up to ${longest}, mean ${round(mean)}`;
}

/** `2`, or `2 to 6`. */
function range(numbers: readonly number[]): string {
  const least = numbers.reduce((a, b) => Math.min(a, b));
  const most = numbers.reduce((a, b) => Math.max(a, b));
  return least === most ? `${least}` : `${least} to ${most}`;
}

function planHeading({ plan, unitEnds, picksPerRow }: StudiedGround): string {
  const size = `units of ${many(unitEnds, "end")} and rows of ${many(picksPerRow, "pick")}`;
  if (plan.kind === "ground alone") return "Raise and sink plan: the ground alone";
  return plan.kind === "pattern weft"
    ? `Raise and sink plan with a pattern weft, for ${size}`
    : `Raise and sink plan in two weaves, for ${size}`;
}

function planRows({ ground, cut, kind }: GroundPlan): [string, string][] {
  return [
    ["threading", ground.threading.join(" ")],
    ...orderRows(ground),
    ...(kind === "two weaves" ? cutRows(cut) : []),
  ];
}

/** What each pick raises and sinks, pick 1 first. */
function orderRows({ steps }: Ground): [string, string][] {
  const order = (sets: readonly ShaftSet[]) => sets.map((set) => set.join("+") || "-").join(" ");
  return [
    ["raise", order(steps.map(({ raise }) => raise))],
    ["sink", order(steps.map(({ sink }) => sink))],
  ];
}

function cutRows(cut: GroundCut): [string, string][] {
  const said = ({ cutting, open }: BorderCut) =>
    open === 0
      ? `clean, ${cutting} of ${cutting} pairs cut`
      : `${cutting} of ${cutting + open} pairs cut, ${open} open`;
  return [
    ["side edges", said(cut.sideways)],
    ["top and bottom", said(cut.lengthways)],
  ];
}

/** Two units by two rows, drawn corner to corner: every kind of border. */
function meeting({ plan, unitEnds, picksPerRow }: StudiedGround, paint: Paint): string[] {
  const { drawdown } = expand({
    ground: plan.ground,
    unitEnds,
    picksPerRow,
    threading: [[1], [2]],
    lifts: [[2], [1]],
  });
  if (drawdown.columns > PAGE.ends || drawdown.rows > PAGE.picks) return [];
  return [
    paint.strong("Two units and two rows, drawn corner to corner"),
    ...indent(toText(drawdown).split("\n")),
  ];
}

function rivals({ rivals: all, cleaner }: GroundPlan, paint: Paint, width: number): string[][] {
  const parts = all.slice(0, MOST_RIVALS).map(rivalLine);
  const price = cleaner?.price;
  return [
    ...(parts.length > 0
      ? [[paint.strong("Other starting points, best first"), ...parts.map((line) => `  ${line}`)]]
      : []),
    ...(cleaner && price && isClean(cleaner.cut)
      ? [
          [
            paint.strong("An irregular pair is clean all round"),
            ...rowsOf(orderRows(cleaner.ground), width),
            ...sentences(
              [
                `its price: ${price.touching.undrawn} touching binding points in a repeat of the ground and ${price.touching.drawn} in the figure; floats are up to ${price.longestFloat} and ${round(price.meanFloat)} on average`,
              ],
              width,
            ),
          ],
        ]
      : []),
  ];
}

function rivalLine({ ground, opposite, cut }: Arrangement): string {
  const [raise, sink] = orderRows(ground);
  const figures = `${cut.sideways.open} open at the sides, ${cut.lengthways.open} at top and bottom`;
  return `${figures}, ${opposite ? "opposite directions" : "one direction"}: raise ${raise![1]}, sink ${sink![1]}`;
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
