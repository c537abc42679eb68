import { CliError } from "./error.js";

/**
 * The whole number that an option was given, 1 or more.
 * @throws {CliError} `bad-number`
 */
export function wholeNumber(command: string, option: string, value: string | undefined): number | undefined {
  if (value === undefined) return undefined;
  if (!/^\d{1,9}$/.test(value) || Number(value) === 0) {
    const sentence = `drawcord ${command}: --${option} takes a whole number of at least 1, not "${value}"`;
    throw new CliError("bad-number", sentence, { option, value });
  }
  return Number(value);
}
