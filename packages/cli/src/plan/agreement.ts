import type { Recipe } from "@drawcord/files";
import { checkRecipe, numberRules, type Review } from "@drawcord/review";
import { addTo, countsOf, emptyTally, exitStatus, type Strictness, type Tally } from "../checking/tally.js";
import { findingObjects } from "../formats/json.js";
import type { Paint } from "../paint.js";
import { lastLine } from "../pretty/last-line.js";
import { oneLine } from "../printable.js";
import { wrapText } from "../text.js";

/** Whether the numbers of a recipe agree: what the rules of numbers find, as `check` finds it. */
export interface Agreement {
  readonly review: Review;
  readonly tally: Tally;
}

/** Lets the rules of numbers look at a recipe. */
export function agreementOf(recipe: Recipe): Agreement {
  const review = checkRecipe(recipe, { rules: numberRules });
  const tally = emptyTally();
  addTo(tally, countsOf(review));
  return { review, tally };
}

/** The findings a paragraph each, and the last line that `check` has. */
export function agreementText({ review, tally }: Agreement, width: number, paint: Paint): string {
  const told = review.findings.map(({ message, rule, severity, waived }, i) => {
    if (waived !== undefined)
      return paint.faint(`waived  ${rule}: ${oneLine(waived)}\n  ${oneLine(message)}`);
    const place = review.places[i];
    const line = place === null || place === undefined ? "" : paint.faint(`  line ${place.line}`);
    const said = wrapText(oneLine(message), Math.max(20, width - 2)).map((part) => `  ${part}`);
    return [`${paint[severity](severity)}  ${rule}${line}`, ...said].join("\n");
  });
  return `${[...told, lastLine(tally)].join("\n\n")}\n`;
}

/** The findings for a script, as `check` gives them. */
export function agreementJson({ review }: Agreement): object {
  const { findings, ok, places, rules, summary, waived } = review;
  return { ok, summary, waived, rules, findings: findingObjects(findings, places) };
}

/** 1 where something is found that fails. */
export function agreementStatus({ tally }: Agreement, strictness: Strictness): 0 | 1 {
  return exitStatus(tally, strictness) === 0 ? 0 : 1;
}
