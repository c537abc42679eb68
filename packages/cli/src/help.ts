import { listed } from "@drawcord/base";
import { HELP } from "./args.js";
import type { Command, CommandOptions, Flag, Setting } from "./command.js";
import type { Registry } from "./registry.js";
import { table, wrapText } from "./text.js";

const WIDTH = 80;

/** What `drawcord --help` prints. */
export function overview(commands: Registry): string {
  const lines = Object.entries(commands).map(([name, entry]) => [name, entry.summary] as const);
  return `drawcord COMMAND [options]

${wrapText("Drawcord reads a weaving recipe (the ground, the units, the threading and the lifts of a drawloom) and tells you, before you wind the warp, what cloth it makes and whether that cloth holds.", WIDTH).join("\n")}

Commands
${table(lines, WIDTH)}

Options
${table(
  [
    ["-h, --help", "print this; after a command, say more about that command"],
    ["    --version", "print the version"],
  ],
  WIDTH,
)}

Exit status: 0 all is well, 1 something was found that would spoil the cloth,
2 a file or an option could not be used.
`;
}

/** What `drawcord NAME --help` prints. */
export function commandHelp<O extends CommandOptions>(name: string, command: Command<O>): string {
  const options = Object.entries({ ...command.options, help: HELP } as CommandOptions);
  const paragraphs = command.help.split("\n\n").map((text) => wrapText(text, WIDTH).join("\n"));
  const examples = command.examples.map(([line, what]) => `  ${line}\n      ${what}`).join("\n");
  return `${["drawcord", name, command.operands, "[options]"].filter((word) => word !== "").join(" ")}

${paragraphs.join("\n\n")}

Options
${table(
  options.map(([long, option]) => [optionName(long, option), optionHelp(option)]),
  WIDTH,
)}

Examples
${examples}
`;
}

function optionName(long: string, option: Flag | Setting): string {
  const short = option.short === undefined ? "    " : `-${option.short}, `;
  return `${short}--${long}${option.type === "string" ? ` ${option.value}` : ""}`;
}

function optionHelp(option: Flag | Setting): string {
  if (option.type === "boolean") return option.help;
  const choices = option.choices === undefined ? "" : `: ${listed(option.choices, "or")}`;
  const unset = option.default === undefined ? "" : ` (${option.default} when not given)`;
  return `${option.help}${choices}${unset}`;
}
