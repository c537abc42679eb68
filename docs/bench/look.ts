import { listed, many } from "@drawcord/base";
import { checkGrid, checkShaftDraft, type Finding, type Report, reportNumbers } from "@drawcord/check";
import { draftPlaces, type Reading } from "@drawcord/files";
import { checkRecipe, placeInDraft } from "@drawcord/review";
import type { Stretch } from "./edits.js";
import { rowsOf } from "./list.js";
import type { Looked, Mark } from "./messages.js";
import { numbersOf } from "./numbers.js";
import { type BenchReading, pieceOf, sentenceOf } from "./reading.js";

/** So many findings are marked and drawn; the verdict counts them all. */
const MOST_MARKS = 300;

/**
 * Checks a text as far as it was read: all there is to say of it but its causes.
 * @param text on the bench
 * @param bench what was read of it
 * @param piece which piece of a recipe with several is shown, from 0
 */
export function look(text: string, bench: BenchReading, piece: number): Looked {
  const problems = bench.problems.map(
    (problem): Mark => ({
      ...stretchOf(problem),
      level: "problem",
      name: problem.code,
      sentence: problem.sentence,
    }),
  );
  const blank = { kind: bench.kind, numbers: [], report: [], rows: [], caution: "" };
  const { reading } = bench;
  if (reading === undefined) {
    const verdict = `${many(problems.length, "problem")}; nothing was checked`;
    return { ...blank, marks: problems, found: problems.length, verdict, isSound: false };
  }
  try {
    const { marks, report, verdict } = checked(text, reading, piece);
    const all = [...problems, ...marks];
    return {
      ...blank,
      marks: all.slice(0, MOST_MARKS),
      found: all.length,
      verdict: problems.length > 0 ? `${many(problems.length, "problem")}; ${verdict}` : verdict,
      isSound: problems.length === 0,
      report: [...reportNumbers(report), ...notLooked(report)],
      ...(reading.kind === "recipe" && {
        numbers: numbersOf(reading.recipe),
        ...rowsOf(reading.recipe, piece),
      }),
    };
  } catch (error) {
    const sentence = sentenceOf(error);
    const marks: readonly Mark[] = [
      ...problems,
      { from: 0, to: 0, level: "problem", name: "too-large", sentence },
    ];
    return { ...blank, marks, found: marks.length, verdict: sentence, isSound: false };
  }
}

/** What is said of a text that was checked. */
interface Checked {
  readonly marks: readonly Mark[];
  readonly verdict: string;
  /** Of the piece that is shown. */
  readonly report: Report;
}

function checked(text: string, reading: Reading, piece: number): Checked {
  if (reading.kind === "draft") {
    const report = checkShaftDraft(reading.draft);
    const places = draftPlaces(text, "");
    const marks = report.findings.map((finding) => markOf(finding, placeInDraft(finding, places), ""));
    return { marks, report, verdict: verdictOf(report) };
  }
  if (reading.kind === "chart") {
    const report = checkGrid(reading.chart);
    return {
      marks: report.findings.map((finding) => markOf(finding, undefined, "")),
      report,
      verdict: verdictOf(report),
    };
  }
  const { recipe } = reading;
  const review = checkRecipe(recipe, { causes: false });
  const { name } = pieceOf(recipe, piece);
  const marks = review.findings.flatMap((finding, i) =>
    finding.waived === undefined ? [markOf(finding, review.places[i] as Placed | null, name)] : [],
  );
  const findings = review.findings.filter(({ piece: of }) => of === undefined || of === name);
  return {
    marks,
    report: { ...review, ...review.pieces?.find((one) => one.name === name), findings },
    verdict: verdictOf(review),
  };
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

/** The rules that did not look, a line for each reason. */
function notLooked({ rules: { skipped } }: Report): readonly (readonly [name: string, text: string])[] {
  const reasons = [...new Set(skipped.map(({ reason }) => reason))];
  return reasons.map((reason, i) => {
    const rules = skipped.filter((one) => one.reason === reason).map(({ rule }) => rule);
    return [i === 0 ? "not looked" : "", `${listed(rules)}: ${reason}`];
  });
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
