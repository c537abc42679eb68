import { many } from "@drawcord/base";
import { NOT_ASKED_FOR } from "@drawcord/check";
import { LEVELS, type Tally } from "../checking/tally.js";
import { oneLine } from "../printable.js";

/**
 * What came of a run: findings, files that could not be used, what was waived, which rules ran, and which did not and
 * why: `3 findings (1 error, 2 warnings), 1 waived (open-cut), 6 of 7 rules ran; not layers: it is switched off`. A rule
 * ran when it looked at every file.
 */
export function lastLine(tally: Tally): string {
  const { failures, files, ran, skipped, summary, waived } = tally;
  const total = summary.error + summary.warning + summary.note;
  const kinds = LEVELS.flatMap((level) => (summary[level] === 0 ? [] : [many(summary[level], level)]));
  const split = total === 0 ? "" : ` (${kinds.join(", ")})`;
  const where = files === 1 && failures.length === 0 ? "" : ` in ${many(files, "file")}`;
  const asked = [...skipped].filter(([reason]) => reason !== NOT_ASKED_FOR);
  const out = new Set(asked.flatMap(([, byRule]) => [...byRule.keys()]));
  const all = new Set([...ran, ...out]);
  const parts = [
    `${many(total, "finding")}${split}${where}`,
    ...(failures.length === 0 ? [] : [`${many(failures.length, "file")} not usable`]),
    ...(waived.size === 0 ? [] : [waivedText(waived)]),
    `${all.size - out.size} of ${all.size} rules${skipped.has(NOT_ASKED_FOR) ? " asked for" : ""} ran`,
  ];
  const reasons = asked.map(([reason, byRule]) => `; not ${rulesOut(byRule, files)}: ${oneLine(reason)}`);
  return parts.join(", ") + reasons.join("");
}

/** `3 waived (2 of open-cut, 1 of layers)`. */
function waivedText(waived: ReadonlyMap<string, number>): string {
  const total = [...waived.values()].reduce((sum, number) => sum + number, 0);
  return `${total} waived (${[...waived].map(([rule, number]) => `${number} of ${rule}`).join(", ")})`;
}

/** The rules that did not look at every file; with the number of files where they looked at some. */
function rulesOut(byRule: ReadonlyMap<string, number>, files: number): string {
  return [...byRule]
    .map(([rule, number]) => (number === files ? rule : `${rule} at ${many(number, "file")}`))
    .join(", ");
}
