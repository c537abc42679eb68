import { many } from "@drawcord/base";
import type { Report } from "@drawcord/check";
import type { Block, Text } from "@drawcord/page";
import { answer } from "./answer.js";
import { count } from "./number.js";

/** Faults that are told on the first page, at the most. */
const MOST_TOLD = 6;

/** In one line whether the recipe was checked, and with what result: what `drawcord check` says on its last line. */
export function checkedText({ findings, rules, waived }: Report): Text {
  const found = findings.length - waived;
  const all = rules.ran.length + rules.skipped.length;
  const result = found === 0 ? "nothing was found" : `${many(found, "finding")}`;
  return [
    { text: "Checked. ", strong: true },
    ...answer(
      `${result.charAt(0).toUpperCase()}${result.slice(1)}, ${waived} waived, ${rules.ran.length} of ${all} rules ran. The part "findings" has the detail.`,
    ),
  ];
}

/** What stands on the first page where the recipe has errors. */
export function errorBlocks(report: Report): Block[] {
  const errors = report.findings.filter(
    ({ severity, waived }) => severity === "error" && waived === undefined,
  );
  if (errors.length === 0) return [];
  const caution = (text: Text): Block => ({ kind: "paragraph", tone: "caution", text });
  const told = errors.slice(0, MOST_TOLD);
  const more = errors.length - told.length;
  return [
    caution([
      {
        text: `The recipe has ${many(errors.length, "error")}. Do not wind the warp until ${errors.length === 1 ? "it is" : "they are"} mended.`,
        strong: true,
      },
    ]),
    ...told.map(({ message }) => caution(`${message.charAt(0).toUpperCase()}${message.slice(1)}.`)),
    ...(more === 0 ? [] : [caution(`And ${count(more)} more: \`drawcord check\` names them all.`)]),
  ];
}
