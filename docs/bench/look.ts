import { listed, many } from "@drawcord/base";
import { checkGrid, checkShaftDraft, type Finding, type Report } from "@drawcord/check";
import { drawPixels } from "@drawcord/draw";
import {
  coloursIn,
  coloursOfRecipe,
  draftPlaces,
  drawdownIn,
  type Reading,
  type Recipe,
  titleIn,
} from "@drawcord/files";
import { type BitGrid, complement, mirror } from "@drawcord/grid";
import { checkRecipe, placeInDraft } from "@drawcord/review";
import { expand } from "@drawcord/units";
import { toMetric } from "@drawcord/yarn";
import type { Stretch } from "./edits.js";
import { rowsOf } from "./list.js";
import type { ClothPicture, Harness, Looked, Mark } from "./messages.js";
import { numbersOf } from "./numbers.js";
import { type BenchReading, pieceOf, readBench, sentenceOf } from "./reading.js";

/** So many findings are marked and drawn; the verdict counts them all. */
const MOST_MARKS = 300;

/** What a page shows of a text, and what it keeps to answer further questions from. */
export interface Looking {
  readonly looked: Looked;
  /** The picture goes to the page, which owns it from then on. */
  readonly transfer: readonly Transferable[];
  readonly bench: BenchReading;
  readonly drawdown?: BitGrid;
}

/**
 * Reads, checks and draws a text: all but its causes.
 * @param text of a recipe, a draft or a chart
 * @param piece which piece of a recipe with several is shown, from 0
 */
export async function look(text: string, piece: number): Promise<Looking> {
  const bench = readBench(text);
  const problems = bench.problems.map(
    (problem): Mark => ({
      ...stretchOf(problem),
      level: "problem",
      name: problem.code,
      sentence: problem.sentence,
    }),
  );
  const blank = { kind: bench.kind, title: "", pieces: [], numbers: [], rows: [], caution: "" };
  const { reading } = bench;
  if (reading === undefined) {
    const verdict = `${many(problems.length, "problem")}; nothing was checked`;
    return {
      looked: { ...blank, marks: problems, found: problems.length, verdict, isSound: false },
      transfer: [],
      bench,
    };
  }
  try {
    const drawdown = drawdownOf(reading, piece);
    const cloth = await pictureOf(reading, drawdown, piece);
    const { marks, verdict } = checked(text, reading, piece);
    const all = [...problems, ...marks];
    const recipe = reading.kind === "recipe" ? reading.recipe : undefined;
    const looked: Looked = {
      ...blank,
      title: titleIn(reading) ?? "",
      pieces: recipe === undefined ? [] : recipe.pieces.map(({ name }) => name),
      marks: all.slice(0, MOST_MARKS),
      found: all.length,
      verdict: problems.length > 0 ? `${many(problems.length, "problem")}; ${verdict}` : verdict,
      isSound: problems.length === 0,
      cloth,
      ...(recipe === undefined
        ? {}
        : { harness: harnessOf(recipe, piece), numbers: numbersOf(recipe), ...rowsOf(recipe, piece) }),
    };
    return { looked, transfer: [cloth.face, cloth.back], bench, drawdown };
  } catch (error) {
    const sentence = sentenceOf(error);
    const mark: Mark = { from: 0, to: 0, level: "problem", name: "recipe", sentence };
    const marks = [...problems, mark];
    return {
      looked: { ...blank, marks, found: marks.length, verdict: sentence, isSound: false },
      transfer: [],
      bench,
    };
  }
}

function drawdownOf(reading: Reading, piece: number): BitGrid {
  if (reading.kind !== "recipe") return drawdownIn(reading);
  return expand(pieceOf(reading.recipe, piece).draft).drawdown;
}

async function pictureOf(reading: Reading, drawdown: BitGrid, piece: number): Promise<ClothPicture> {
  const given = reading.kind === "recipe" ? coloursOfPiece(reading.recipe, piece) : coloursIn(reading);
  const { warp = ["#2c3a57"], weft = ["#efe6d2"] } = given;
  const { rows: picks, columns: ends } = drawdown;
  const each = (count: number, order: readonly `#${string}`[]) =>
    Array.from({ length: count }, (_, i) => order[i % order.length]!);
  const turned = { warp: each(ends, warp).toReversed(), weft: each(picks, weft) };
  const [face, back] = await Promise.all([
    bitmapOf(drawdown, { warp, weft }),
    bitmapOf(complement(mirror(drawdown)), turned),
  ]);
  return { ends, picks, face, back, pitch: pitchOf(reading) };
}

function coloursOfPiece(recipe: Recipe, piece: number) {
  return coloursOfRecipe({ ...recipe, pieces: [pieceOf(recipe, piece)] });
}

function bitmapOf(grid: BitGrid, colours: Parameters<typeof drawPixels>[1]): Promise<ImageBitmap> {
  const { data, width } = drawPixels(grid, colours);
  return createImageBitmap(new ImageData(data, width));
}

/** Threads are as wide as their setts say; where these are not known, as wide as high. */
function pitchOf(reading: Reading): readonly [number, number] {
  if (reading.kind !== "recipe") return [1, 1];
  const { picks, sett } = reading.recipe.cloth;
  if (sett === undefined || picks === undefined) return [1, 1];
  return [10 / toMetric(sett).value, 10 / toMetric(picks).value];
}

function harnessOf(recipe: Recipe, piece: number): Harness {
  const { ground, lifts, threading } = pieceOf(recipe, piece).draft;
  return {
    steps: ground.steps.map(({ raise, sink }) => ({ raise, sink })),
    handles: Math.max(0, ...threading.flat(), ...lifts.flat()),
  };
}

function checked(text: string, reading: Reading, piece: number): { marks: readonly Mark[]; verdict: string } {
  if (reading.kind === "draft") {
    const report = checkShaftDraft(reading.draft);
    const places = draftPlaces(text, "");
    const marks = report.findings.map((finding) => markOf(finding, placeInDraft(finding, places), ""));
    return { marks, verdict: verdictOf(report) };
  }
  if (reading.kind === "chart") {
    const report = checkGrid(reading.chart);
    return {
      marks: report.findings.map((finding) => markOf(finding, undefined, "")),
      verdict: verdictOf(report),
    };
  }
  const { recipe } = reading;
  const review = checkRecipe(recipe, { causes: false });
  const { name } = pieceOf(recipe, piece);
  const marks = review.findings.flatMap((finding, i) =>
    finding.waived === undefined ? [markOf(finding, review.places[i] as Placed | null, name)] : [],
  );
  return { marks, verdict: verdictOf(review) };
}

/** A place of a recipe in its text. */
interface Placed {
  readonly offset: number;
  readonly end: { readonly offset: number };
}

function stretchOf({ offset, end }: Placed): Stretch {
  return { from: offset, to: end.offset };
}

function markOf(finding: Finding, place: Placed | null | undefined, piece: string): Mark {
  const { ends, message, picks, rule, severity } = finding;
  const isShown = finding.piece === undefined || finding.piece === piece;
  return {
    ...(place == null ? { from: 0, to: 0 } : stretchOf(place)),
    level: severity,
    name: rule,
    sentence: message,
    ...(isShown && ends !== undefined && { ends }),
    ...(isShown && picks !== undefined && { picks }),
  };
}

/** What came of a check in one sentence: as the command's last line has it. */
function verdictOf({ rules: { ran, skipped }, summary, waived }: Report): string {
  const kinds = (["error", "warning", "note"] as const).flatMap((level) =>
    summary[level] === 0 ? [] : [many(summary[level], level)],
  );
  const looked = `${ran.length} of ${many(ran.length + skipped.length, "rule")} looked`;
  return [
    kinds.length === 0 ? "nothing found" : listed(kinds),
    ...(waived === 0 ? [] : [`${waived} waived`]),
    looked,
  ].join(", ");
}
