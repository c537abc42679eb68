import { CliError } from "./error.js";

const NINE_DIGITS = 999_999_999;

/**
 * The whole number that an option was given.
 * @param most default: any of nine digits
 * @param least default 1
 * @throws {CliError} `bad-number`
 */
export function numberOption(
  command: string,
  option: string,
  value: string | undefined,
  most = NINE_DIGITS,
  least = 1,
): number | undefined {
  if (value === undefined) return undefined;
  const number = /^\d{1,9}$/.test(value) ? Number(value) : -1;
  if (number >= least && number <= most) return number;
  const bounds = most === NINE_DIGITS ? `of at least ${least}` : `from ${least} to ${most}`;
  const sentence = `drawcord ${command}: --${option} takes a whole number ${bounds}, not "${value}"`;
  throw new CliError("bad-number", sentence, { option, value });
}
