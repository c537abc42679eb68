import { many } from "@drawcord/base";
import type { Block, Text } from "@drawcord/page";
import type { Review } from "@drawcord/review";
import { count } from "./number.js";

/** Faults that are told on the first page, at the most. */
const MOST_TOLD = 6;

/** In one line whether the recipe was checked, and with what result: what `drawcord check` says on its last line. */
export function checkedText({ findings, rules, waived }: Review): Text {
  const found = findings.length - waived;
  const all = rules.ran.length + rules.skipped.length;
  const result = found === 0 ? "nothing was found" : `${many(found, "finding")}`;
  return [
    { text: "Checked. ", strong: true },
    {
      text: `${result.charAt(0).toUpperCase()}${result.slice(1)}, ${waived} waived, ${rules.ran.length} of ${all} rules ran. The part "findings" has the detail.`,
    },
  ];
}

/**
 * What stands on the first page where the recipe has errors: what was written wrong before what follows from it, as
 * `drawcord check` tells it.
 */
export function errorBlocks({ findings, causes }: Review): Block[] {
  const errors = findings.filter(({ severity, waived }) => severity === "error" && waived === undefined);
  if (errors.length === 0) return [];
  const caution = (text: Text): Block => ({ kind: "paragraph", tone: "caution", text });
  const explained = new Set(causes.flatMap(({ explains }) => explains.map((i) => findings[i])));
  const others = errors.filter((error) => !explained.has(error));
  const told = [...causes.map(causeText), ...others.map(({ message }) => sentence(message))];
  const more = told.length - MOST_TOLD;
  return [
    caution([
      {
        text: `The recipe has ${many(errors.length, "error")}. Do not wind the warp until ${errors.length === 1 ? "it is" : "they are"} mended.`,
        strong: true,
      },
    ]),
    ...told.slice(0, MOST_TOLD).map(caution),
    ...(more <= 0 ? [] : [caution(`And ${count(more)} more: the part "findings" has them all.`)]),
  ];
}

/** A cause with its reason and what it accounts for; one that has rivals is told as what it is, a guess. */
export function causeText({ message, why, explains, sure }: Review["causes"][number]): string {
  const accounts = explains.length === 0 ? "" : ` It accounts for ${many(explains.length, "finding")}.`;
  return `${sentence(sure ? message : `perhaps ${message}`)} ${sentence(why)}${accounts}`;
}

function sentence(clause: string): string {
  return clause === "" ? "" : `${clause.charAt(0).toUpperCase()}${clause.slice(1)}.`;
}
