import { many } from "@drawcord/base";
import type { Block, Text } from "@drawcord/page";
import type { Review } from "@drawcord/review";
import { capital, causeText } from "../checking/cause.js";
import { resultText } from "../checking/result.js";
import { spacedNumber } from "./number.js";

/** Faults that are told on the first page, at the most. */
const MOST_TOLD = 6;

/** In one line whether the recipe was checked, and with what result: what `drawcord check` says on its last line. */
export function checkedText(review: Review): Text {
  return [
    { text: "Checked. ", strong: true },
    { text: `${capital(resultText(review))}. The part "findings" has the detail.` },
  ];
}

/**
 * What stands on the first page where the recipe has errors: what was written wrong before what follows from it, as
 * `drawcord check` tells it.
 */
export function errorBlocks(review: Review): Block[] {
  const { findings, causes } = review;
  const errors = findings.filter(({ severity, waived }) => severity === "error" && waived === undefined);
  if (errors.length === 0) return [];
  const caution = (text: Text): Block => ({ kind: "paragraph", tone: "caution", text });
  const explained = new Set(causes.flatMap(({ explains }) => explains.map((i) => findings[i])));
  const others = errors.filter((error) => !explained.has(error));
  const told = [
    ...causes.filter(({ waived }) => waived === undefined).map((cause) => causeText(cause, review)),
    ...others.map(({ message }) => `${capital(message)}.`),
  ];
  const more = told.length - MOST_TOLD;
  return [
    caution([
      {
        text: `The recipe has ${many(errors.length, "error")}. Do not wind the warp until ${errors.length === 1 ? "it is" : "they are"} mended.`,
        strong: true,
      },
    ]),
    ...told.slice(0, MOST_TOLD).map(caution),
    ...(more <= 0 ? [] : [caution(`And ${spacedNumber(more)} more: the part "findings" has them all.`)]),
  ];
}
