import { listed } from "@drawcord/base";
import type { Block, Table, TableHead, Text } from "@drawcord/page";
import { heavyLift, liftCaution, liftWork, SHORT_LIFT_CAUTION } from "@drawcord/units";
import { toMetric } from "@drawcord/yarn";
import { letterOf, weftLetters } from "../card/letters.js";
import { type CardGroup, cardGroups } from "../card/lines.js";
import type { CardRow } from "../card/rows.js";
import { cardTable } from "../card/table.js";
import { handlesText } from "../numbers/handles.js";
import type { SheetPart } from "../part-names.js";
import type { Woven } from "../woven.js";
import type { Context } from "./context.js";
import { range, spacedCount } from "./number.js";

/** The lift card: what to draw and let go, row by row, upwards as the cloth grows. */
export function liftsPart(context: Context): SheetPart {
  const { rows, sections } = context;
  const groups = cardGroups(rows, sections);
  return {
    name: "lifts",
    title: "Lift card",
    blocks: [...intro(context), ...everyRow(context, groups), card(context, groups)],
  };
}

function intro(context: Context): Block[] {
  const { woven, recipe, rows } = context;
  const { patternShafts, singleUnit } = woven;
  const what = singleUnit ? "cord" : "handle";
  const pulls = rows.reduce((sum, { pulled }) => sum + pulled.length, 0);
  const { firstPickFrom: side, firstPickOf } = recipe.cloth;
  const from =
    firstPickOf !== undefined
      ? `First picks: ${listed(Object.entries(firstPickOf).map(([weft, of]) => `${weft} from the ${of}`))}${Object.keys(firstPickOf).length < woven.wefts.length ? `, others from the ${side ?? "left"}` : ""}.`
      : side === undefined
        ? "The recipe does not say from which side the first pick is thrown; the card begins at the left."
        : `The first pick of each weft is thrown from the ${side}.`;
  const letters = woven.wefts.length < 2 ? "" : ` Wefts: ${weftLetters(woven)}.`;
  return [
    {
      kind: "paragraph",
      tone: "lead",
      text: `${spacedCount(rows.length, "row")} on ${spacedCount(patternShafts, what)}, ${spacedCount(pulls, "pull")} in all. Read upwards: row 1 stands at the foot, as in the chart. A ${what} that is drawn stays drawn until it is let go. For each row let go, draw, look at what is then drawn, tread its picks, and tick its number. ${from}${letters}`,
    },
    ...cautionOf(context),
  ];
}

/**
 * The caution for whoever draws and lets go, by the weight of the heaviest lift: the whole of it where the card stands
 * without the part of the ground, which says it too. None where nothing is drawn.
 */
function cautionOf({ recipe: { loom }, withGround, woven: { draft } }: Context): Block[] {
  const lingoGrams = loom.lingoWeight && toMetric(loom.lingoWeight).value;
  const { heaviest } = liftWork(draft, lingoGrams === undefined ? {} : { lingoGrams });
  const inShort = [heavyLift(heaviest.grams), SHORT_LIFT_CAUTION].filter((text) => text !== "").join(" ");
  return heaviest.units === 0
    ? []
    : [{ kind: "paragraph", tone: "caution", text: withGround ? inShort : liftCaution(heaviest.grams) }];
}

/** What all rows have, told once. */
function everyRow({ woven, rows }: Context, groups: readonly CardGroup[]): Block[] {
  if (toldOf(rows, groups) !== "once") return [];
  const text = `Every row: ${treadText(rows[0]!, woven)}.`;
  return [{ kind: "paragraph", text: [{ text, strong: true }] }];
}

function card({ woven, rows }: Context, groups: readonly CardGroup[]): Table {
  const told = toldOf(rows, groups);
  const table: Text[][] = [];
  const heads: TableHead[] = [];
  for (const group of groups) {
    heads.push({ row: table.length, text: headText(group, woven, told) });
    for (const { rows: numbers, what } of group.lines) {
      table.push([
        numbers.map((row) => row ?? "·").join(" "),
        handles(what.pulled, woven.singleUnit, "–"),
        handles(what.released, woven.singleUnit, "–"),
        [{ text: handles(what.drawn, woven.singleUnit, "none"), strong: true }],
        ...(told === "by-row" ? [treadlesText(what.treadles), throwText(what, woven)] : []),
      ]);
    }
  }
  return {
    ...cardTable("row of the piece"),
    columns: [
      { title: "Row", kind: "boxes" },
      { title: "Draw" },
      { title: "Let go" },
      { title: "Then drawn" },
      ...(told === "by-row"
        ? [{ title: "Treadles" }, { title: woven.wefts.length > 1 ? "Wefts, and from where" : "Weft from" }]
        : []),
    ],
    rows: table,
    heads,
  };
}

/** Where picks, treadles and wefts are told: once where all rows have the same, under a heading, or row by row. */
type Told = "once" | "by-heading" | "by-row";

function toldOf(rows: readonly CardRow[], groups: readonly CardGroup[]): Told {
  const key = ({ treadles, wefts, sides }: CardRow) => `${treadles}|${wefts}|${sides}`;
  const alike = (list: readonly CardRow[]) => list.every((row) => key(row) === key(list[0]!));
  if (alike(rows)) return "once";
  return groups.every(({ lines }) => alike(lines.map(({ what }) => what))) ? "by-heading" : "by-row";
}

/** `moth, repeats 1–6 of 12: rows 10–183` */
function headText(group: CardGroup, woven: Woven, told: Told): string {
  const { section, from, to, lines } = group;
  const numbers = lines.flatMap(({ rows }) => rows.filter((row) => row !== undefined));
  const rows = `${numbers.length === 1 ? "row" : "rows"} ${range(Math.min(...numbers), Math.max(...numbers))}`;
  const times =
    section.times === 1
      ? ""
      : from === to
        ? `repeat ${from} of ${section.times}`
        : `repeats ${range(from, to)} of ${section.times}`;
  const named = [section.name, times].filter((word) => word !== undefined && word !== "").join(", ");
  const each = told === "by-heading" ? `. Each row: ${treadText(lines[0]!.what, woven)}` : "";
  return `${named === "" ? rows.charAt(0).toUpperCase() + rows.slice(1) : `${named}: ${rows}`}${each}`;
}

/** `treadles 1 2 3 4, weft from the left` */
function treadText(row: CardRow, woven: Woven): string {
  return `treadles ${treadlesText(row.treadles)}, ${weftWords(row, woven)}`;
}

function weftWords(row: CardRow, woven: Woven): string {
  return woven.wefts.length > 1
    ? `wefts ${throwText(row, woven)}`
    : `weft from the ${row.sides[0] ?? "left"}`;
}

/** `right`, or where there are several wefts `B A B A: A left, B right`. */
function throwText({ wefts, sides }: CardRow, woven: Woven): string {
  if (woven.wefts.length < 2) return sides[0] ?? "–";
  const thrown = sides.flatMap((side, weft) => (side === undefined ? [] : [{ side, weft }]));
  const from =
    thrown.length === 1
      ? thrown[0]!.side
      : thrown.map(({ side, weft }) => `${letterOf(weft)} ${side}`).join(", ");
  return `${again(wefts.map(letterOf))}: ${from}`;
}

/** The treadles of a row's picks in order; `–` where none is trodden and the figure alone has a say. */
function treadlesText(treadles: readonly number[]): string {
  return again(treadles.map((treadle) => (treadle === 0 ? "–" : `${treadle}`)));
}

/** `1 2 1 3 ×2` */
function again(words: readonly string[]): string {
  for (let period = 1; period <= words.length / 2; period++) {
    const times = words.length / period;
    if (!Number.isInteger(times) || !words.every((word, i) => word === words[i % period])) continue;
    return `${words.slice(0, period).join(" ")} ×${times}`;
  }
  return words.join(" ");
}

function handles(list: readonly number[], tens: boolean, none: string): string {
  return list.length === 0 ? none : handlesText(list, tens);
}
