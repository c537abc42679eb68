/** The sections of a recipe as stretches of its text. */
import { carryComments } from "./carry-comments.js";
import type { Splice } from "./text-edits.js";

/** What writes one of the sections of a recipe as it stands in another, its comments carried over. */
export function sectionAnew(text: string, name: string, from: string): Splice {
  const [start, end] = sectionAt(text, name);
  const [otherStart, otherEnd] = sectionAt(from, name);
  if (start < 0) return { from: 0, to: text.length, by: from };
  const section = carryComments(text.slice(start, end).trimEnd(), from.slice(otherStart, otherEnd).trimEnd());
  return { from: start, to: end, by: `${section}\n${end === text.length ? "" : "\n"}` };
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
