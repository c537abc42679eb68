import { listed, type Sentence } from "@drawcord/base";
import { CheckError } from "./error.js";
import type { Finding, RuleName } from "./finding.js";
import type { FindingBy } from "./findings-of.js";
import { carriedWeftSentence } from "./rules/carried-weft.js";
import { closeSettSentence } from "./rules/close-sett.js";
import { cutStripeSentence } from "./rules/cut-stripe.js";
import { edgeFloatSentence } from "./rules/edge-float.js";
import { endWithoutShaftSentence } from "./rules/end-without-shaft.js";
import { faceShareSentence } from "./rules/face-share.js";
import { floatLengthSentence } from "./rules/float-length.js";
import { groundStartSentence } from "./rules/ground-start.js";
import { idleShaftSentence } from "./rules/idle-shaft.js";
import { impossibleNumberSentence } from "./rules/impossible-number.js";
import { largeAreaSentence } from "./rules/large-area.js";
import { layersSentence } from "./rules/layers.js";
import { lengthRowsSentence } from "./rules/length-rows.js";
import { longStretchSentence } from "./rules/long-stretch.js";
import { loomCapacitySentence } from "./rules/loom-capacity.js";
import { looseThreadSentence } from "./rules/loose-thread.js";
import { openCutSentence } from "./rules/open-cut.js";
import { openSettSentence } from "./rules/open-sett.js";
import { pickWithoutShedSentence } from "./rules/pick-without-shed.js";
import { reedWidthSentence } from "./rules/reed-width.js";
import { rowsOverSentence } from "./rules/rows-over.js";
import { scrambledBorderSentence } from "./rules/scrambled-border.js";
import { shortStockSentence } from "./rules/short-stock.js";
import { shortWarpSentence } from "./rules/short-warp.js";
import { sleySettSentence } from "./rules/sley-sett.js";
import { statedNumberSentence } from "./rules/stated-number.js";
import { staticDrawnSentence } from "./rules/static-drawn.js";
import { thinAreaSentence } from "./rules/thin-area.js";
import { treadleWithoutTieSentence } from "./rules/treadle-without-tie.js";
import { unevenTakeUpSentence } from "./rules/uneven-take-up.js";
import { unknownShaftSentence } from "./rules/unknown-shaft.js";
import { unlikeSidesSentence } from "./rules/unlike-sides.js";
import { unusedWaiverSentence } from "./rules/unused-waiver.js";
import { unusualNumberSentence } from "./rules/unusual-number.js";
import { widthUnitsSentence } from "./rules/width-units.js";

/**
 * A sentence for every rule, made of nothing but a finding of it. A table in another language is of this type: one that
 * lacks a rule, or has one that there is none of, does not compile.
 */
export type FindingSentences = {
  readonly [Name in RuleName]: Sentence<FindingBy<Name>>;
} & {
  /**
   * The pieces that a finding is in, to stand before its sentence.
   * @param names their names
   */
  readonly pieces: (names: readonly string[]) => string;
};

/** The sentences of findings in English, by the name of the rule, each with the place where it names one. */
export const findingSentences: FindingSentences = /* @__PURE__ */ (() => ({
  ...endWithoutShaftSentence,
  ...pickWithoutShedSentence,
  ...treadleWithoutTieSentence,
  ...layersSentence,
  ...looseThreadSentence,
  ...floatLengthSentence,
  ...edgeFloatSentence,
  ...openCutSentence,
  ...unknownShaftSentence,
  ...staticDrawnSentence,
  ...idleShaftSentence,
  ...loomCapacitySentence,
  ...groundStartSentence,
  ...statedNumberSentence,
  ...impossibleNumberSentence,
  ...unusualNumberSentence,
  ...lengthRowsSentence,
  ...rowsOverSentence,
  ...widthUnitsSentence,
  ...closeSettSentence,
  ...openSettSentence,
  ...sleySettSentence,
  ...reedWidthSentence,
  ...shortWarpSentence,
  ...shortStockSentence,
  ...scrambledBorderSentence,
  ...unevenTakeUpSentence,
  ...faceShareSentence,
  ...longStretchSentence,
  ...largeAreaSentence,
  ...thinAreaSentence,
  ...unlikeSidesSentence,
  ...carriedWeftSentence,
  ...cutStripeSentence,
  ...unusedWaiverSentence,
  pieces: (names) => listed(names),
}))();

/**
 * The sentence of a finding from its data alone, so that a finding which came through JSON or from a worker is said again,
 * in other words or in another language. Its pieces stand before it, where not all have it.
 * @param finding a finding as a report has it
 * @param sentences a sentence for every rule; default: English
 * @throws {CheckError} `unknown-rule` for a finding of a rule that the table does not know
 * @example sayFinding({ rule: "unknown-shaft", severity: "error", message: "", harness: "pattern", shaft: 3, rows: [2, 2] }) // "a lift draws pattern shaft 3, on which no unit hangs: row 2"
 */
export function sayFinding(finding: Finding, sentences: FindingSentences = findingSentences): string {
  const { piece, pieces = piece === undefined ? [] : [piece], rule } = finding;
  if (!Object.hasOwn(sentences, rule))
    throw new CheckError("unknown-rule", `no sentence is known for the rule "${rule}"`, { rule });
  // Each sentence is asked for a finding of its own rule, which the type of the table cannot follow.
  const said = (sentences[rule] as (of: Finding) => string)(finding);
  return pieces.length === 0 ? said : `${sentences.pieces(pieces)}: ${said}`;
}
