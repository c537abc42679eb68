import type { Answer } from "../task.js";

/** An answer as the page can judge it. */
export interface Judged {
  /** What counts, written plainly; one of them. */
  readonly counts: readonly string[];
  /** How far a number may be off; nothing where it may not. */
  readonly within?: number;
}

/** What the page needs to judge an answer; nothing for one in words of one's own. */
export function judgedOf({ also = [], answer, own, within }: Answer): Judged | undefined {
  if (own) return undefined;
  const far = within === undefined ? undefined : Number.parseFloat(within);
  return { counts: [answer, ...also], ...(far === undefined ? {} : { within: far }) };
}

/**
 * Whether what was written counts: the same number, with a unit or without, as far off as is allowed, or the same words
 * whatever blanks and commas stand between them.
 * @example isRight({ counts: ["24.5 cm"], within: 0.1 }, "24,6") // true
 */
export function isRight({ counts, within }: Judged, written: string): boolean {
  const plain = (text: string) =>
    text
      .trim()
      .toLowerCase()
      .split(/[\s;]+|,\s+/)
      .filter((word) => word !== "")
      .join(" ");
  const said = plain(written);
  if (said === "") return false;
  const number = Number.parseFloat(said.replace(",", "."));
  return counts.some((count) => {
    if (within !== undefined) return Math.abs(number - Number.parseFloat(count)) <= within + 1e-9;
    if (plain(count) === said) return true;
    const [first = "", ...unit] = plain(count).split(" ");
    return (
      unit.length > 0 &&
      unit.every((word) => /^[a-z]+$/.test(word)) &&
      /^\d+(\.\d+)?$/.test(first) &&
      first === said
    );
  });
}
