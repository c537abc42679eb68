import {
  assumptions,
  countIn,
  fibres,
  type Given,
  parseCountSystem,
  parseYarn,
  printQuantity,
  type Result,
  type YarnCard,
  yarnCard,
} from "@drawcord/yarn";
import { defineCommand } from "../command.js";
import { both, measure } from "../plan/measures.js";
import { workingJson, workingText } from "../plan/working.js";
import { toJson } from "../printable.js";
import { textOrJson } from "../shared-options.js";
import { table } from "../text.js";

export const command = defineCommand({
  operands: "YARN",
  help: `Prints a yarn in every system of the trade, with its diameter by each rule and its setts in the usual weaves: the closest, and the 80 % of it that most cloth is woven at.

YARN is written as its trade writes it: 20/2 Ne, Nm 28/2, 2/20 worsted, 20 tex x 2, R 40 tex / 2, 60/2 spun silk, 8400 yd/lb, 340 m/100 g. Put it between quotes.`,
  examples: [
    ['drawcord yarn "20/2 Ne"', "prints the yarn in every system"],
    ['drawcord yarn "20/2 Ne" --to tex', "prints one number"],
    ['drawcord yarn "2/20 worsted" --fibre worsted --explain', "shows how each number was found"],
  ],
  options: {
    to: {
      type: "string",
      value: "SYSTEM",
      help: "print its count in this system alone, such as tex, Ne or Nm",
    },
    fibre: { type: "string", value: "FIBRE", help: "what it is made of, such as cotton, linen or wool" },
    format: textOrJson("how to print the yarn"),
    explain: { type: "boolean", help: "add the working of each number: formula, values, result, source" },
  },
  async run({ operands, options }, io) {
    const yarn = parseYarn(operands[0]!);
    const json = options.format === "json";
    if (options.to !== undefined) {
      const count = countIn(yarn, parseCountSystem(options.to));
      const one = json ? toJson(figure(count.value)) : `${figure(count.value)}`;
      await io.stdout.write(`${one}\n${options.explain && !json ? `\n${workingText([count])}` : ""}`);
      return 0;
    }
    const { fibre } = options;
    const card = yarnCard(yarn, fibre === undefined ? {} : { fibre });
    const numbers = numbersOf(card);
    if (json) {
      const assumed = assumptions(numbers).map(({ meaning, value, why }) => ({
        meaning,
        ...measure(value),
        why,
      }));
      const whole = {
        ...cardJson(card),
        assumed,
        ...(options.explain ? { working: workingJson(numbers) } : {}),
      };
      await io.stdout.write(`${toJson(whole, 2)}\n`);
    } else {
      await io.stdout.write(`${cardText(card)}${assumedText(numbers)}`);
      if (options.explain) await io.stdout.write(`\n${workingText(numbers)}`);
    }
    return 0;
  },
});

/** Six figures, as much as a count is ever known to. */
function figure(value: number): number {
  return Number(value.toPrecision(6));
}

function numbersOf({ counts, diameters, setts }: YarnCard) {
  const { packing, peirce, root } = diameters;
  return [
    ...counts.map(({ count }) => count),
    root,
    peirce,
    ...(packing === undefined ? [] : [packing]),
    ...setts.map(({ working }) => working),
  ];
}

function cardText(card: YarnCard): string {
  const { counts, diameters, setts, yarn } = card;
  const { packing, peirce, root, sideBySide } = diameters;
  const rows = (list: readonly (readonly [string, string])[]): string => `${table(list, 100)}\n`;
  return [
    `${yarn}\n\n`,
    rows(counts.map(({ count, title }) => [title, `${figure(count.value)}`])),
    "\ndiameter\n",
    rows([
      ["by the root rule", `${both(root)}, ${both(sideBySide)} side by side`],
      ["by Peirce, as cotton", both(peirce)],
      ...(packing === undefined ? [] : ([["by fibre and packing", both(packing)]] as const)),
    ]),
    "\nsett, the closest and to weave at\n",
    rows(setts.map(({ closest, weave, working }) => [weave, `${both(closest)}, ${both(working)}`])),
    constantText(card),
  ].join("");
}

/** With what fibre constant the setts were found: with another, the same yarn has other setts. */
function constantText(card: YarnCard): string {
  const k = constantOf(card);
  const constants = Object.values(fibres).map((one) => one.k);
  if (k.assumed !== undefined) {
    return `with a fibre constant of ${k.value}, ${k.assumed}; a fibre named with --fibre has its own, ${Math.min(...constants)} to ${Math.max(...constants)}, and all setts rise and fall with it\n`;
  }
  const firmYarn = constantOf(yarnCard(card.yarn)).value;
  const off = 100 * (k.value / firmYarn - 1);
  const apart =
    Math.abs(off) < 0.05
      ? "the same"
      : `so these setts are ${Math.abs(off).toFixed(1)} % ${off > 0 ? "closer" : "more open"}`;
  return `with the fibre's own constant, ${k.value}; without --fibre it is ${firmYarn}, that of a firm yarn, ${apart}\n`;
}

/** The constant of the root rule, as it was given or assumed. */
function constantOf({ diameters }: YarnCard): Given {
  return diameters.sideBySide.given["k"] as Given;
}

/** What was taken because nothing was given. */
function assumedText(numbers: readonly Result[]): string {
  const rows = assumptions(numbers).map(
    ({ meaning, value, why }) => [meaning, `${printQuantity(value)} (${why})`] as const,
  );
  return rows.length === 0 ? "" : `\nassumed\n${table(rows, 100)}\n`;
}

function cardJson({ counts, diameters, setts, yarn }: YarnCard) {
  const { packing, peirce, root, sideBySide } = diameters;
  return {
    yarn,
    counts: Object.fromEntries(counts.map(({ count, system }) => [system, figure(count.value)])),
    diameters: {
      sideBySide: measure(sideBySide),
      root: measure(root),
      peirce: measure(peirce),
      ...(packing === undefined ? {} : { packing: measure(packing) }),
    },
    setts: setts.map(({ closest, weave, working }) => ({
      weave,
      closest: measure(closest),
      working: measure(working),
    })),
  };
}
