import type { Io } from "./io.js";

/**
 * 0 nothing that fails, 1 findings that fail, 2 a file or an option that cannot be used, 141 the reader of the output
 * went away before all was checked (128 and the number of SIGPIPE, as of any program in a pipe).
 */
export type ExitStatus = 0 | 1 | 2 | 141;

/** An option that is given or not. */
export interface Flag {
  readonly type: "boolean";
  /** One letter, without its dash. */
  readonly short?: string;
  readonly help: string;
}

/** An option with a value. */
export interface Setting {
  readonly type: "string";
  /** One letter, without its dash. */
  readonly short?: string;
  /** What stands for the value in the help, such as `FILE`. */
  readonly value: string;
  /** The only values it takes; any when left out. */
  readonly choices?: readonly string[];
  /** Its value when it is not given. */
  readonly default?: string;
  /** Whether the word that stands next belongs to the value too, as in `--at row 143`; by default it does not. */
  readonly joins?: (value: string, next: string) => boolean;
  /** May be given several times; its value is then a list. Otherwise the last one counts. */
  readonly multiple?: boolean;
  readonly help: string;
}

/** Options by long name, without the dashes. Every command has `help` besides. */
export type CommandOptions = Readonly<Record<string, Flag | Setting>>;

type Word<O> = O extends { readonly choices: readonly (infer Choice)[] } ? Choice : string;

type Value<O> = O extends { readonly type: "boolean" }
  ? boolean
  : O extends { readonly multiple: true }
    ? readonly Word<O>[]
    : O extends { readonly default: string }
      ? Word<O>
      : Word<O> | undefined;

/** A command line, read. */
export interface Args<O extends CommandOptions> {
  /** What is named without an option, in order: files, mostly. As many as `operands` allows. */
  readonly operands: readonly string[];
  readonly options: { readonly [Name in keyof O]: Value<O[Name]> };
}

/** One command: its module in `commands/` exports it as `command`, and the registry names it in one line. */
export interface Command<O extends CommandOptions = CommandOptions> {
  /** What follows the name: `FILE...` one or more, `FILE` just one, `[RULE]` one or none, `[FILE...]` any number, `` none. */
  readonly operands: string;
  /** A paragraph or two for a weaver: what it does, what it prints, when it fails. */
  readonly help: string;
  /** Command lines to copy, each with what it does. */
  readonly examples: readonly (readonly [line: string, what: string])[];
  readonly options: O;
  /** @throws an `Error` whose message is one sentence: it is printed, and the exit status is 2 */
  run(args: Args<O>, io: Io): Promise<ExitStatus>;
}

/** Gives a command the types of its options. */
export function defineCommand<const O extends CommandOptions>(command: Command<O>): Command<O> {
  return command;
}
