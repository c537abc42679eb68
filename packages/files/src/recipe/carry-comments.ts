/** Carries the comments of a section over to the same section written anew. */
import { Lexer } from "yaml";

/** A comment of a section. */
interface Comment {
  readonly text: string;
  /** What stands on its line before it; where it has a line to itself, what stands on the next line that says anything; empty at the end. */
  readonly beside: string;
  /** Whether it has a line to itself. */
  readonly alone: boolean;
}

/**
 * The new text of a section with all comments of the old one. A comment stays with the line that it stood beside or above,
 * where there is such a line still (or one with its key); what stood below all lines does so again; and any other goes
 * above the section, in its order.
 * @example carryComments("units:\n  ends: 4 # four", "units:\n  ends: 5") // "units:\n  ends: 5 # four"
 */
export function carryComments(before: string, after: string): string {
  const lines = after.split("\n");
  const above: string[] = [];
  const below: string[] = [];
  const placed = lines.map((line) => ({ line, above: [] as string[], beside: "" }));
  let from = 0;
  for (const { alone, beside, text } of commentsOf(before)) {
    if (beside === "") {
      below.push(text);
      continue;
    }
    const at = placed.findIndex(({ line }, i) => i >= from && line.trim() === beside);
    const found = at >= 0 ? at : placed.findIndex(({ line }) => sameKey(line, beside));
    const place = placed[found];
    if (place === undefined || (!alone && place.beside !== "")) above.push(text);
    else if (alone) place.above.push(text);
    else place.beside = ` ${text}`;
    if (at >= 0) from = at;
  }
  return [
    ...above,
    ...placed.flatMap(({ above: comments, beside, line }) => {
      const indent = /^ */.exec(line)![0];
      return [...comments.map((comment) => indent + comment), line + beside];
    }),
    ...below,
  ].join("\n");
}

/** Whether two lines give the value of one key. */
function sameKey(line: string, other: string): boolean {
  const key = /^[\w-]+:/.exec(other)?.[0];
  return key !== undefined && line.trim().startsWith(key);
}

/** The comments of a YAML text in their order. */
function commentsOf(text: string): Comment[] {
  const starts = commentStarts(text);
  let from = 0;
  const lines = text.split("\n").map((line) => {
    const start = starts.find((at) => at >= from && at <= from + line.length) ?? from + line.length;
    const code = line.slice(0, start - from).trim();
    const comment = line.slice(start - from).trim();
    from += line.length + 1;
    return { code, comment };
  });
  return lines.flatMap(({ code, comment }, i): Comment[] => {
    if (comment === "") return [];
    const next = lines.slice(i + 1).find((line) => line.code !== "")?.code ?? "";
    return [{ text: comment, beside: code === "" ? next : code, alone: code === "" }];
  });
}

/** Where the comments of a YAML text begin; the signs of a picture, or in quotes, are none. */
function commentStarts(text: string): number[] {
  const starts: number[] = [];
  let from = 0;
  let inScalar = false;
  for (const lexeme of new Lexer().lex(text)) {
    // The lexer puts marks of its own between what is in the text: before a value, a document, and at the end of brackets.
    const isMark = ["\u001f", "\u0002", "\u0018"].includes(lexeme);
    if (!isMark && !inScalar && lexeme.startsWith("#")) starts.push(from);
    inScalar = lexeme === "\u001f";
    if (!isMark) from += lexeme.length;
  }
  return starts;
}
