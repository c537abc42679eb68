import { readFile } from "node:fs/promises";
import { readArgs } from "./args.js";
import type { ExitStatus } from "./command.js";
import { CliError } from "./error.js";
import { commandHelp, overview } from "./help.js";
import type { Io } from "./io.js";
import { didYouMean } from "./nearest.js";
import { printable } from "./printable.js";
import { type Registry, registry } from "./registry.js";

/**
 * The whole command: reads the words after `drawcord`, runs what they ask for, and gives the exit status. Whatever goes
 * wrong is told in one sentence on `stderr`.
 */
export async function main(
  argv: readonly string[],
  io: Io,
  commands: Registry = registry,
): Promise<ExitStatus> {
  try {
    return await run(argv, io, commands);
  } catch (error) {
    await complain(io, error);
    return 2;
  }
}

/** Prints what went wrong as one line. */
export async function complain(io: Io, error: unknown): Promise<void> {
  const sentence = error instanceof Error ? error.message : String(error);
  await io.stderr.write(`${printable(sentence)}\n`);
}

async function run(argv: readonly string[], io: Io, commands: Registry): Promise<ExitStatus> {
  const [first, ...rest] = argv;
  if (first === undefined) {
    await io.stderr.write(overview(commands));
    return 2;
  }
  if (first === "--version") {
    await io.stdout.write(`${await version()}\n`);
    return 0;
  }
  if (first === "--help" || first === "-h" || first === "help") {
    const [topic] = rest;
    if (topic !== undefined) return runCommand(topic, ["--help"], io, commands);
    await io.stdout.write(overview(commands));
    return 0;
  }
  if (first.startsWith("-") && first !== "-") {
    const hint = didYouMean(first.replace(/^-+/, ""), ["help", "version"], "--");
    const sentence = `drawcord has no option ${first}${hint || "; a command comes first, as in: drawcord check FILE"}`;
    throw new CliError("unknown-option", sentence, { option: first });
  }
  return runCommand(first, rest, io, commands);
}

async function runCommand(
  name: string,
  argv: readonly string[],
  io: Io,
  commands: Registry,
): Promise<ExitStatus> {
  const entry = Object.hasOwn(commands, name) ? commands[name] : undefined;
  if (entry === undefined) {
    const known = Object.keys(commands);
    const hint = didYouMean(name, known) || `; there are ${known.join(", ")}`;
    throw new CliError("unknown-command", `drawcord has no command "${name}"${hint}`, { command: name });
  }
  const { command } = await entry.load();
  const { help, ...args } = readArgs(name, argv, command);
  if (!help) return command.run(args, io);
  await io.stdout.write(commandHelp(name, command));
  return 0;
}

async function version(): Promise<string> {
  const text = await readFile(new URL("../package.json", import.meta.url), "utf8");
  return (JSON.parse(text) as { readonly version: string }).version;
}
