import { readArgs } from "./args.js";
import type { ExitStatus } from "./command.js";
import { complain } from "./complain.js";
import { didYouMean } from "./did-you-mean.js";
import { CliError } from "./error.js";
import { commandHelp, overview } from "./help.js";
import type { Io } from "./io.js";
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

async function run(argv: readonly string[], io: Io, commands: Registry): Promise<ExitStatus> {
  const [first, ...rest] = argv;
  if (first === undefined) {
    await io.stderr.write(overview(commands));
    return 2;
  }
  if (first === "--version") {
    const { version } = await import("./version.js");
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
  const { help, ...args } = await readArgs(name, argv, command);
  if (!help) return command.run(args, io);
  await io.stdout.write(commandHelp(name, command));
  return 0;
}
