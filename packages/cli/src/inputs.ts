import { createReadStream } from "node:fs";
import { readdir, stat } from "node:fs/promises";
import { basename, dirname, resolve } from "node:path";
import { largestFile } from "@drawcord/files";
import { didYouMean } from "./did-you-mean.js";
import { CliError } from "./error.js";
import type { Io } from "./io.js";

/** The name of what is piped in, in reports and errors. */
const STANDARD_INPUT = "standard input";

/** A file named on the command line, to be read when its turn comes. */
export interface Input {
  /** As it was named, or found by a pattern; `standard input` for `-`. */
  readonly name: string;
  /**
   * Its bytes.
   * @throws {CliError} `unreadable`; `too-large` over 16 MiB, found without reading on
   */
  read(): Promise<Uint8Array>;
}

/**
 * The files that the words on the command line stand for: names as they are, patterns such as `*.recipe.yaml` filled
 * in and sorted, `-` for standard input.
 * @throws {CliError} `nothing-matches` when a pattern fits no file
 */
export async function inputs(operands: readonly string[], io: Io): Promise<readonly Input[]> {
  const named = await Promise.all(operands.map((operand) => namesOf(operand, io.cwd)));
  return named.flat().map((name) => input(name, io));
}

/** One file, as above; a pattern is not filled in. */
export function input(operand: string, io: Io): Input {
  if (operand !== "-") return { name: operand, read: () => readFile(operand, io.cwd) };
  return { name: STANDARD_INPUT, read: () => collect(io.stdin, STANDARD_INPUT) };
}

async function namesOf(operand: string, cwd: string): Promise<readonly string[]> {
  if (!/[*?[{(!]/.test(operand) || (await exists(resolve(cwd, operand)))) return [operand];
  const { glob } = await import("tinyglobby");
  const found = await glob(operand, { cwd, expandDirectories: false });
  if (found.length === 0) {
    throw new CliError("nothing-matches", `${operand}: no file has a name like this`, { pattern: operand });
  }
  return found.sort();
}

async function exists(path: string): Promise<boolean> {
  return stat(path).then(
    () => true,
    () => false,
  );
}

async function readFile(name: string, cwd: string): Promise<Uint8Array> {
  const path = resolve(cwd, name);
  try {
    return await collect(createReadStream(path), name);
  } catch (error) {
    if (error instanceof CliError) throw error;
    const code = (error as NodeJS.ErrnoException).code ?? "unknown";
    throw new CliError("unreadable", `${name}: ${await whyUnreadable(code, path, name)}`, {
      file: name,
      code,
    });
  }
}

async function collect(stream: AsyncIterable<Uint8Array>, name: string): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  let length = 0;
  for await (const chunk of stream) {
    chunks.push(chunk);
    length += chunk.length;
    if (length > largestFile) {
      const sentence = `${name}: the file is larger than ${largestFile / 2 ** 20} MiB, the most that is read`;
      throw new CliError("too-large", sentence, { file: name });
    }
  }
  return Buffer.concat(chunks);
}

async function whyUnreadable(code: string, path: string, name: string): Promise<string> {
  switch (code) {
    case "ENOENT": {
      const beside = await readdir(dirname(path)).catch(() => []);
      return `there is no such file${await didYouMean(basename(path), beside)}`;
    }
    case "EISDIR":
      return `this is a folder; for every recipe in it: ${name.replace(/\/$/, "")}/*.recipe.yaml`;
    case "EACCES":
    case "EPERM":
      return "you may not read this file";
    case "ENOTDIR":
      return "a part of this path is a file, not a folder";
    default:
      return `this file cannot be read (${code})`;
  }
}
