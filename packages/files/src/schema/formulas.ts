import type { Schema } from "../tree/json-schema.js";

const words = (description: string, ...examples: readonly string[]): Schema => ({
  description,
  examples,
  type: "string",
  pattern: "\\S",
});

/** A symbol of a formula. */
const symbol: Schema = {
  description: "What a symbol of the formula stands for: a value of its own, or a number of the plan.",
  examples: [{ meaning: "price of 1 g", value: 0.04 }],
  type: "object",
  additionalProperties: false,
  required: ["meaning"],
  oneOf: [{ required: ["value"] }, { required: ["plan"] }],
  properties: {
    meaning: words("What it stands for, in words.", "weight of the warp yarn"),
    value: {
      description: "Its value, with its unit where it has one.",
      examples: [0.04, "50 %", "12 mm"],
      type: ["number", "string"],
      pattern: "\\S",
    },
    plan: words(
      "The number of the plan that it stands for, by its name in `drawcord plan --format json --explain`, or a formula before it by its title.",
      "warp-yarn-mass",
      "width-in-reed",
    ),
    in: words(
      "The unit in which the formula takes the bare number; left out, it takes the number with its unit.",
      "g",
    ),
  },
};

/** The section `formulas`. */
export const formulasSchema: Schema = {
  title: "Formulas of one's own",
  description:
    "Formulas of the weaver's or the teacher's own, worked out with the numbers of the plan and printed with their working like those of Drawcord.",
  examples: [
    [
      {
        title: "price of the warp",
        formula: "m c",
        symbols: {
          m: { meaning: "weight of the warp yarn", plan: "warp-yarn-mass", in: "g" },
          c: { meaning: "price of 1 g", value: 0.04 },
        },
      },
    ],
  ],
  type: "array",
  minItems: 1,
  items: {
    description: "One formula.",
    type: "object",
    additionalProperties: false,
    required: ["title", "formula", "symbols"],
    properties: {
      title: words("What it gives; no two formulas have the same.", "price of the warp"),
      formula: words(
        "Numbers, symbols, `+ - * / ^`, brackets, `pi`, `sqrt`, `round`, `floor`, `ceil`, and `max` and `min` of two; two symbols side by side are multiplied (before a bracket write `*`), a share stands for a fraction of 1.",
        "m c",
        "N * (b + 2 h) / (1 - s)",
      ),
      symbols: {
        description: "Every symbol of the formula, by its name.",
        examples: [{ c: { meaning: "price of 1 g", value: 0.04 } }],
        type: "object",
        minProperties: 1,
        additionalProperties: symbol,
      },
      symbol: words("The letter of the result; `x` when left out.", "P"),
      unit: words("The unit of the result; a bare number when left out.", "m", "g"),
      decimals: {
        description: "Decimals to which the result is rounded where it is printed; 2 when left out.",
        examples: [2],
        type: "integer",
        minimum: 0,
        maximum: 12,
      },
      source: words("Where the formula is from.", "course notes, lesson 4"),
    },
  },
};
