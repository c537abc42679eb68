/** The sections of a recipe as stretches of its text. */
import { carryComments } from "./carry-comments.js";

/** A recipe with one of its sections as it stands in another, its comments carried over. */
export function withSection(text: string, name: string, from: string): string {
  const [start, end] = sectionAt(text, name);
  const [otherStart, otherEnd] = sectionAt(from, name);
  if (start < 0) return from;
  const section = carryComments(text.slice(start, end).trimEnd(), from.slice(otherStart, otherEnd).trimEnd());
  const rest = text.slice(end);
  return `${text.slice(0, start)}${section}\n${rest === "" ? "" : "\n"}${rest}`;
}

/** Where a section begins and ends in a recipe whose sections begin at the edge; comments before the next are the next's. */
function sectionAt(text: string, name: string): readonly [start: number, end: number] {
  const start = text.search(new RegExp(`^["']?${name}["']?[ \\t]*:`, "m"));
  if (start < 0) return [-1, -1];
  const line = text.indexOf("\n", start);
  if (line < 0) return [start, text.length];
  const next = text.slice(line).search(/\n(?:(?:#[^\n]*|[ \t]*)\r?\n)*(?=[^\s#\]}])/);
  const rest = text.slice(line);
  if (next < 0) return [start, text.length];
  const gap = /^\n(?:[ \t]*\r?\n)*/.exec(rest.slice(next))![0];
  return [start, line + next + gap.length];
}

/** The text without a section, where it has it. */
export function withoutSection(text: string, name: string): string {
  const [start, end] = sectionAt(text, name);
  return start < 0 ? text : text.slice(0, start) + text.slice(end);
}
