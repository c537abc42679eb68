import { CliError } from "./error.js";

/**
 * The value of an option as a whole number, undefined when it is not given.
 * @throws {CliError} `bad-number` for anything but digits, or a number out of bounds
 */
export function wholeNumber(
  option: string,
  value: string | undefined,
  least: number,
  most: number,
): number | undefined {
  if (value === undefined) return undefined;
  const number = /^\d{1,9}$/.test(value) ? Number(value) : Number.NaN;
  if (number >= least && number <= most) return number;
  throw new CliError(
    "bad-number",
    `${option} takes a whole number from ${least} to ${most}, not "${value}"`,
    {
      option,
      value,
    },
  );
}
