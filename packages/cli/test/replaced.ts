import type { Replacement } from "sarif";

/** A text with regions replaced, the plain way: the last first, so that lines stay where they are. */
export function replaced(text: string, replacements: readonly Replacement[]): string {
  const offset = (line = 1, column = 1) =>
    text
      .split("\n")
      .slice(0, line - 1)
      .reduce((sum, one) => sum + one.length + 1, column - 1);
  return replacements.toReversed().reduce((now, { deletedRegion: at, insertedContent }) => {
    const [start, end] = [offset(at.startLine, at.startColumn), offset(at.endLine, at.endColumn)];
    return now.slice(0, start) + (insertedContent?.text ?? "") + now.slice(end);
  }, text);
}
