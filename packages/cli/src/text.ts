/** Two columns, the second wrapped beside the first, in lines of at most `width` characters where words allow. */
export function table(rows: readonly (readonly [left: string, right: string])[], width: number): string {
  const left = Math.max(...rows.map(([name]) => name.length)) + 2;
  const beside = `\n${" ".repeat(left + 2)}`;
  return rows
    .map(([name, text]) => `  ${name.padEnd(left)}${wrapText(text, width - left - 2).join(beside)}`)
    .join("\n");
}

/** Lines of whole words, at most `width` characters each unless one word is longer. */
export function wrapText(text: string, width: number): readonly string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(/\s+/)) {
    if (line !== "" && line.length + 1 + word.length > width) {
      lines.push(line);
      line = word;
    } else {
      line = line === "" ? word : `${line} ${word}`;
    }
  }
  return [...lines, line];
}
