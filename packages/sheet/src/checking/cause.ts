import { listed, many } from "@drawcord/base";
import type { Review } from "@drawcord/review";
import { sayEdit } from "@drawcord/units";

type Cause = Review["causes"][number];

/** Edits that would do as well are told up to so many. */
const MOST_RIVALS = 3;

/** A cause as `drawcord check` tells it: what was written and where, why it is taken for a slip, the mend, and what it accounts for. */
export function causeText(cause: Cause, { findings }: Pick<Review, "findings">): string {
  const { message, why, line, piece, sure, changes, rivals, explains, waived } = cause;
  const where = [
    ...(piece === undefined ? [] : [piece]),
    ...(line === undefined ? [] : [`line ${line} of the recipe`]),
  ];
  const place = where.length === 0 ? "" : ` (${where.join(", ")})`;
  const others = rivals.slice(0, MOST_RIVALS).map((rival) => `; or: ${sayEdit(rival)}`);
  const more = rivals.length - others.length;
  const unsaid = more > 0 ? `; or ${many(more, "other edit")}` : "";
  const sentences = [
    `${capital(message)}${place}; ${why}.`,
    `${sure ? "Mend" : "Perhaps"}: ${sayEdit(changes)}${others.join("")}${unsaid}.`,
    ...(explains.length === 0
      ? []
      : [`It accounts for ${explainedText(explains.map((i) => findings[i]!.rule))}.`]),
    ...(waived === undefined ? [] : [`Waived: ${waived}.`]),
  ];
  return sentences.join(" ");
}

/** `205 findings: 43 of float-length and 162 of open-cut` */
function explainedText(rules: readonly string[]): string {
  const times = new Map<string, number>();
  for (const rule of rules) times.set(rule, (times.get(rule) ?? 0) + 1);
  return `${many(rules.length, "finding")}: ${listed([...times].map(([rule, count]) => `${count} of ${rule}`))}`;
}

/** A clause as the beginning of a sentence. */
export function capital(clause: string): string {
  return clause === "" ? "" : `${clause.charAt(0).toUpperCase()}${clause.slice(1)}`;
}
