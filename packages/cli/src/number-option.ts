import { CliError } from "./error.js";

/**
 * The whole number that an option was given, 1 or more, and at the most `most`; default: any of nine digits.
 * @throws {CliError} `bad-number`
 */
export function wholeNumber(
  command: string,
  option: string,
  value: string | undefined,
  most = 999_999_999,
): number | undefined {
  if (value === undefined) return undefined;
  const number = /^\d{1,9}$/.test(value) ? Number(value) : 0;
  if (number >= 1 && number <= most) return number;
  const bounds = most === 999_999_999 ? "of at least 1" : `from 1 to ${most}`;
  const sentence = `drawcord ${command}: --${option} takes a whole number ${bounds}, not "${value}"`;
  throw new CliError("bad-number", sentence, { option, value });
}
