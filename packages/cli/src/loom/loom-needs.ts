import { many } from "@drawcord/base";
import type { Recipe, RecipeLoom, RecipePiece } from "@drawcord/files";
import {
  type LiftWork,
  type LoomNeeds,
  liftCaution,
  liftWork,
  loomNeeds,
  type ShaftLoad,
  type UnitDraft,
} from "@drawcord/units";
import { toMetric } from "@drawcord/yarn";
import { oneLine } from "../printable.js";
import { wrapText } from "../text.js";
import { weight } from "./weight.js";

/** What a recipe asks of the loom, and what the loom has. */
export interface LoomPlan {
  /** Of all pieces; treadles and ties those of the piece that takes most, as treadles are tied anew between pieces. */
  readonly needs: LoomNeeds;
  /** What each piece asks of the weaver, in weaving order; one or more. */
  readonly pieces: readonly PieceWork[];
  readonly loom: RecipeLoom;
}

/** What the lifts of one of the pieces on a warp ask. */
interface PieceWork {
  readonly name: string;
  readonly count: number;
  readonly work: LiftWork;
}

/** What the pieces of a recipe ask of the loom. */
export function loomPlanOf({ draft, loom, pieces }: Recipe): LoomPlan {
  const lingoGrams = loom.lingoWeight && toMetric(loom.lingoWeight).value;
  const options = lingoGrams === undefined ? {} : { lingoGrams };
  const works = pieces.map(({ count, draft: own, name }) => ({ name, count, work: liftWork(own, options) }));
  const needs =
    pieces.length === 1
      ? loomNeeds(draft)
      : { ...loomNeeds(draftOfAll(pieces)), picks: inAll(works, ({ picks }) => picks) };
  return { needs, pieces: works, loom };
}

/** A draft that draws all that the pieces do, on the treadles of the piece that takes most: one row tells as much as many. */
function draftOfAll(pieces: readonly RecipePiece[]): UnitDraft {
  const drafts = pieces.map(({ draft }) => draft);
  const drawn = new Set<number>();
  for (const { lifts } of drafts) for (const lift of lifts) for (const shaft of lift) drawn.add(shaft);
  const most = drafts.reduce((one, other) =>
    loomNeeds(other).treadles > loomNeeds(one).treadles ? other : one,
  );
  return { ...most, lifts: [[...drawn].sort((a, b) => a - b)], picksPerRow: 1 };
}

/** The sum over every piece, as often as it is woven. */
function inAll(pieces: readonly PieceWork[], of: (work: LiftWork) => number): number {
  return pieces.reduce((sum, { count, work }) => sum + count * of(work), 0);
}

/** The rows, pulls, changes and picks of every piece together, as often as it is woven. */
function sumOf(pieces: readonly PieceWork[]) {
  return {
    rows: inAll(pieces, ({ rows }) => rows.length),
    picks: inAll(pieces, ({ picks }) => picks),
    pulls: inAll(pieces, ({ pulls }) => pulls),
    changes: inAll(pieces, ({ changes }) => changes),
  };
}

/** The first of the pieces whose heaviest row draws most units. */
function heaviestOf(pieces: readonly PieceWork[]): PieceWork {
  return pieces.reduce((most, piece) =>
    piece.work.heaviest.units > most.work.heaviest.units ? piece : most,
  );
}

const INDENT = 10;

/** The needs for people, a line each; what the loom lacks is said. */
export function loomText({ needs, pieces, loom }: LoomPlan, width: number): string {
  const { name: heaviestPiece, work } = heaviestOf(pieces);
  const { heaviest } = work;
  const isOnly = pieces.length === 1;
  const grams = heaviest.grams === undefined ? "" : `, ${weight(heaviest.grams)} of lingos`;
  const pulleys = needs.tiesWithPulleys === undefined ? "" : `; ${needs.tiesWithPulleys} with damask pulleys`;
  const facts: readonly (readonly [name: string, text: string])[] = [
    ["lingos", against(needs.lingos, loom.lingos)],
    ["pattern", patternText(needs, loom)],
    ["leashes", needs.singleUnitDraw ? "one on each cord" : loads(needs.leashes)],
    [
      "ground",
      `${shafts(needs.groundShafts, "ground shaft", loom.groundShafts)}, heddles ${loads(needs.heddles)}`,
    ],
    ["treadles", `${against(needs.treadles, loom.treadles)}, ${many(needs.ties, "tie")}${pulleys}`],
    ...liftFacts(pieces, needs.singleUnitDraw ? "cord change" : "handle change"),
    [
      "heaviest",
      `row ${heaviest.row + 1}${isOnly ? "" : ` of ${oneLine(heaviestPiece)}`}, ${many(heaviest.units, "unit")}${grams}`,
    ],
  ];
  const line = Math.min(width, 100) - INDENT;
  const lines = facts.map(
    ([name, text]) => `${name.padEnd(INDENT)}${wrapText(text, line).join(`\n${" ".repeat(INDENT)}`)}`,
  );
  return `${lines.join("\n")}\n\n${wrapText(liftCaution(heaviest.grams), Math.min(width, 80)).join("\n")}\n`;
}

/** What the lifts ask: of the one piece; or of each by its name, and of all. */
function liftFacts(
  pieces: readonly PieceWork[],
  change: string,
): readonly (readonly [name: string, text: string])[] {
  const told = ({ changes, picks, pulls, rows }: ReturnType<typeof sumOf>) =>
    `${many(rows, "row")}, ${many(pulls, "pull")}, ${many(changes, change)}, ${many(picks, "pick")}`;
  const toldOf = ({ work }: PieceWork) => told({ ...work, rows: work.rows.length });
  if (pieces.length === 1) return [["lifts", toldOf(pieces[0]!)]];
  const lines = pieces.map((piece) => `a piece of ${oneLine(piece.name)}: ${toldOf(piece)}`);
  const count = pieces.reduce((sum, piece) => sum + piece.count, 0);
  return [...lines, `all ${count} pieces: ${told(sumOf(pieces))}`].map((line, i) => [
    i === 0 ? "lifts" : "",
    line,
  ]);
}

/** The needs for a script; rows count from 1. */
export function loomJson({ needs, pieces, loom }: LoomPlan): object {
  const most = heaviestOf(pieces);
  const [only] = pieces;
  const lifts =
    pieces.length === 1
      ? liftsJson(only!.work)
      : {
          ...sumOf(pieces),
          heaviest: { piece: most.name, ...heaviestJson(most.work) },
          pieces: pieces.map(({ count, name, work }) => ({ name, count, ...liftsJson(work) })),
        };
  return { needs, has: loom, lifts, caution: liftCaution(most.work.heaviest.grams) };
}

function liftsJson(work: LiftWork) {
  const { changes, picks, pulls, rows } = work;
  return { rows: rows.length, picks, pulls, changes, heaviest: heaviestJson(work) };
}

function heaviestJson({ heaviest: { grams, row, units } }: LiftWork) {
  return { row: row + 1, units, grams };
}

function patternText(needs: LoomNeeds, loom: RecipeLoom): string {
  const { staticUnits, singleUnitDraw, cords, patternShafts } = needs;
  const still = staticUnits === 0 ? "" : `, ${many(staticUnits, "unit")} static`;
  if (singleUnitDraw) return `${shafts(cords, "cord", loom.patternShafts)}, one a unit${still}`;
  return `${shafts(patternShafts, "pattern shaft", loom.patternShafts)}, ${many(cords, "cord")}${still}`;
}

function shafts(needed: number, thing: string, has: number | undefined): string {
  return `${many(needed, thing)}${lack(needed, has)}`;
}

function against(needed: number, has: number | undefined): string {
  return `${needed}${lack(needed, has)}`;
}

function lack(needed: number, has: number | undefined): string {
  if (has === undefined) return "";
  return needed > has ? ` (the loom has only ${has})` : ` of ${has}`;
}

/** The load of each shaft; shafts that follow each other with the same load are one part. */
function loads(all: readonly ShaftLoad[]): string {
  if (all.length === 0) return "none";
  const parts: { first: number; last: number; count: number }[] = [];
  for (const { shaft, count: load } of all) {
    const before = parts.at(-1);
    if (before !== undefined && before.count === load && before.last === shaft - 1) before.last = shaft;
    else parts.push({ first: shaft, last: shaft, count: load });
  }
  return parts
    .map(({ first, last, count: load }) =>
      first === last ? `${load} on shaft ${first}` : `${load} on each of shafts ${first}-${last}`,
    )
    .join(", ");
}
