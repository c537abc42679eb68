import { createReadStream } from "node:fs";
import { readdir, stat } from "node:fs/promises";
import { basename, dirname, join, resolve } from "node:path";
import { largestFile } from "@drawcord/files";
import { didYouMean } from "./did-you-mean.js";
import { CliError } from "./error.js";
import type { Io } from "./io.js";

/** The name of what is piped in, in reports and errors. */
const STANDARD_INPUT = "standard input";

/** A file named on the command line, to be read when its turn comes. */
export interface InputFile {
  /** As it was named, or found by a pattern; `standard input` for `-`. */
  readonly name: string;
  /** Whether anyone who knows the name can read it. */
  readonly onDisk?: boolean;
  /**
   * Its bytes.
   * @throws {CliError} `unreadable`; `too-large` over 16 MiB, found without reading on; `nothing-matches` for a pattern or
   * a folder without a recipe
   */
  read(): Promise<Uint8Array>;
}

/**
 * The files that the words on the command line stand for: names as they are, patterns such as `*.recipe.yaml` and the
 * recipes and drafts in a folder filled in and sorted, `-` for standard input. What stands for no file fails when it is read, so that
 * the others have their turn.
 */
export async function inputs(operands: readonly string[], io: Io): Promise<readonly InputFile[]> {
  const named = await Promise.all(operands.map((operand) => inputsOf(operand, io)));
  return named.flat();
}

/** One file, as above; neither a pattern nor a folder is filled in. */
export function input(operand: string, io: Io): InputFile {
  if (operand !== "-") return fileInput(operand, io.cwd);
  return { name: STANDARD_INPUT, read: () => readAll(io.stdin, STANDARD_INPUT) };
}

/** A file on the disk. */
export function fileInput(name: string, cwd: string): InputFile {
  return { name, onDisk: true, read: () => readFile(name, cwd) };
}

async function inputsOf(operand: string, io: Io): Promise<readonly InputFile[]> {
  if (operand === "-") return [input(operand, io)];
  const there = await stat(resolve(io.cwd, operand)).catch(() => undefined);
  if (there?.isDirectory()) {
    const found = await filesLike(RECIPES, resolve(io.cwd, operand));
    if (found.length === 0)
      return [nothing(operand, `no recipe or draft (${RECIPES.join(", ")}) in this folder`)];
    return found.map((name) => fileInput(join(operand, name), io.cwd));
  }
  if (there !== undefined || !/[*?[{(!]/.test(operand)) return [input(operand, io)];
  const found = await filesLike([operand], io.cwd);
  if (found.length === 0) return [nothing(operand, "no file has a name like this")];
  return found.map((name) => fileInput(name, io.cwd));
}

/** What recipes and drafts in a folder are called, at any depth. */
const RECIPES = ["**/*.recipe.yaml", "**/*.recipe.yml", "**/*.wif"];

async function filesLike(patterns: readonly string[], cwd: string): Promise<readonly string[]> {
  // Loaded only when there is something to look for.
  const { glob } = await import("tinyglobby");
  return (await glob([...patterns], { cwd, expandDirectories: false })).sort();
}

function nothing(operand: string, why: string): InputFile {
  const error = new CliError("nothing-matches", `${operand}: ${why}`, { pattern: operand });
  return { name: operand, read: () => Promise.reject(error) };
}

function readFile(name: string, cwd: string): Promise<Uint8Array> {
  const path = resolve(cwd, name);
  return readAll(createReadStream(path), name, path);
}

async function readAll(stream: AsyncIterable<Uint8Array>, name: string, path = ""): Promise<Uint8Array> {
  try {
    return await collect(stream, name);
  } catch (error) {
    if (error instanceof CliError) throw error;
    const { code = "unknown" } = error as NodeJS.ErrnoException;
    const why = await whyUnreadable(code, path);
    throw new CliError("unreadable", `${name}: ${why}`, { file: name, code });
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

async function whyUnreadable(code: string, path: string): Promise<string> {
  switch (code) {
    case "ENOENT": {
      const beside = await readdir(dirname(path)).catch(() => []);
      return `there is no such file${didYouMean(basename(path), beside)}`;
    }
    case "EISDIR":
      return "this is a folder; name a file in it";
    case "EACCES":
    case "EPERM":
      return "you may not read this file";
    case "ENOTDIR":
      return "a part of this path is a file, not a folder";
    default:
      return `this file cannot be read (${code})`;
  }
}
