import { parseArgs } from "node:util";
import type { Args, CommandOptions, Flag, Setting } from "./command.js";
import { didYouMean } from "./did-you-mean.js";
import { CliError } from "./error.js";

/** What every command takes besides its own. */
export const HELP: Flag = { type: "boolean", short: "h", help: "print this" };

/**
 * Reads the words after a command's name.
 * @param operands as in `Command`
 * @throws {CliError} `unknown-option`, `unknown-choice`, `missing-value`, `unwanted-value`, `missing-operand`,
 * `unwanted-operand`
 */
export async function readArgs<O extends CommandOptions>(
  name: string,
  argv: readonly string[],
  command: { readonly operands: string; readonly options: O },
): Promise<Args<O> & { readonly help: boolean }> {
  const known: CommandOptions = { ...command.options, help: HELP };
  const { tokens } = parseArgs({
    args: [...argv],
    options: known as Record<string, Flag | Pick<Setting, "type">>,
    strict: false,
    allowPositionals: true,
    tokens: true,
  });
  const values = new Map<string, string | boolean | string[]>();
  const operands: string[] = [];
  let below = -1;
  let joined = -1;
  for (const [place, token] of tokens.entries()) {
    if (place === joined) continue;
    if (token.kind === "positional") operands.push(token.value);
    if (token.kind !== "option") continue;
    // No option begins with a digit: what does is a number below zero, whose own sentence says more. It is one word, which
    // the parser takes for a group of options.
    const word = argv[token.index] ?? "";
    if (/^-\.?\d/.test(word)) {
      if (token.index !== below) operands.push(word);
      below = token.index;
      continue;
    }
    const option = Object.hasOwn(known, token.name) ? known[token.name] : undefined;
    if (option === undefined) throw await unknownOption(name, token.rawName, token.name, known);
    if (option.type === "boolean") {
      if (token.value !== undefined) {
        throw new CliError("unwanted-value", `drawcord ${name}: ${token.rawName} takes no value`, {
          option: token.name,
        });
      }
      values.set(token.name, true);
    } else {
      let value = await settingValue(name, token.rawName, token.value, option);
      const next = tokens[place + 1];
      if (next?.kind === "positional" && option.joins?.(value, next.value)) {
        value = `${value} ${next.value}`;
        joined = place + 1;
      }
      const before = values.get(token.name);
      values.set(token.name, option.multiple ? [...(Array.isArray(before) ? before : []), value] : value);
    }
  }
  const help = values.get("help") === true;
  if (!help) checkOperands(name, command.operands, operands);
  const options: Record<string, unknown> = {};
  for (const [key, option] of Object.entries(command.options))
    options[key] = values.get(key) ?? unset(option);
  return { operands, options: options as Args<O>["options"], help };
}

function unset(option: Flag | Setting): unknown {
  if (option.type === "boolean") return false;
  return option.default ?? (option.multiple ? [] : undefined);
}

async function settingValue(
  command: string,
  rawName: string,
  value: string | undefined,
  option: Setting,
): Promise<string> {
  const { choices } = option;
  const wanted = choices === undefined ? `a value, ${option.value}` : `one of ${choices.join(", ")}`;
  if (value === undefined || value === "") {
    throw new CliError("missing-value", `drawcord ${command}: ${rawName} needs ${wanted}`, {
      option: rawName,
    });
  }
  if (choices !== undefined && !choices.includes(value)) {
    const meant = didYouMean(value, choices);
    throw new CliError(
      "unknown-choice",
      `drawcord ${command}: ${rawName} takes ${wanted}, not "${value}"${meant}`,
      {
        option: rawName,
        value,
      },
    );
  }
  return value;
}

async function unknownOption(
  command: string,
  rawName: string,
  name: string,
  known: CommandOptions,
): Promise<CliError> {
  const meant = didYouMean(name, Object.keys(known), "--");
  const hint = meant || `; "drawcord ${command} --help" lists its options`;
  return new CliError("unknown-option", `drawcord ${command} has no option ${rawName}${hint}`, {
    option: rawName,
  });
}

function checkOperands(command: string, grammar: string, operands: readonly string[]): void {
  const kinds = grammar.split(" ").filter((kind) => kind !== "");
  const needed = kinds.filter((kind) => !kind.startsWith("["));
  const lacking = needed[operands.length];
  if (lacking !== undefined) {
    const what = lacking.replace("...", "");
    const sentence = `drawcord ${command} needs a ${what}: drawcord ${command} ${grammar}`;
    throw new CliError("missing-operand", sentence, { operand: what });
  }
  const extra = operands[kinds.length];
  if (extra !== undefined && !grammar.includes("...")) {
    const taken = kinds.length === 0 ? "nothing besides its options" : kinds.join(" ");
    const sentence = `drawcord ${command} takes ${taken}; "${extra}" is one too many`;
    throw new CliError("unwanted-operand", sentence, { operand: extra });
  }
}
