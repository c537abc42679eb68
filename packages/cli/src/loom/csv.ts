/** A line of CSV (RFC 4180), fields quoted where they must be. */
export function csvLine(fields: readonly (string | number | undefined)[]): string {
  return `${fields.map(field).join(",")}\r\n`;
}

function field(value: string | number | undefined): string {
  const text = value === undefined ? "" : String(value);
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
