import { CliError } from "./error.js";

/**
 * The file that a command must be told to write.
 * @param command the command's name
 * @param output the file that was named, if any
 * @param example a file that could be
 * @throws {CliError} `missing-value` where none was named
 */
export function namedOutput(command: string, output: string | undefined, example: string): string {
  if (output !== undefined) return output;
  throw new CliError("missing-value", `drawcord ${command}: name the file to write, as in -o ${example}`, {
    option: "output",
  });
}
