import type { Schema } from "../tree/json-schema.js";

/** Shafts of the ground harness named in the row notation. */
const shafts = (description: string, examples: readonly unknown[]): Schema => ({
  description,
  examples,
  type: ["string", "integer"],
});

const endsOfSelvedge = (side: string): Schema =>
  shafts(`The ground shaft of each end of the ${side} selvedge, from left to right.`, ["1 2 1 2", "(1 2)*4"]);

/** The steps of a treadling. */
export const stepsSchema: Schema = {
  description: "What each pick does to the ground shafts, first pick first; repeats over the picks.",
  examples: [
    [
      { raise: 1, sink: 2 },
      { raise: 2, sink: 1 },
    ],
  ],
  type: "array",
  minItems: 1,
  items: {
    description: "The ground shafts raised and sunk on one pick, and its weft.",
    examples: [{ raise: 4, sink: 1 }],
    type: "object",
    additionalProperties: false,
    minProperties: 1,
    properties: {
      raise: shafts("The shafts raised on this pick; none when left out.", ["4", "1 3", "none"]),
      sink: shafts("The shafts sunk on this pick; none when left out.", ["1", "2 4", "none"]),
      weft: {
        description: "The weft of this pick, by its name under `yarns`; the ground weft when left out.",
        examples: ["pattern"],
        type: "string",
        pattern: "\\S",
      },
    },
  },
};

/** The section `ground`. */
export const groundSchema: Schema = {
  title: "Ground",
  description: "What the ground harness weaves: a named weave, or the shafts raised and sunk on each pick.",
  examples: [
    { weave: "broken twill", ends: 4 },
    {
      shafts: 2,
      threading: "1 2",
      steps: [
        { raise: 1, sink: 2 },
        { raise: 2, sink: 1 },
      ],
    },
  ],
  type: "object",
  additionalProperties: false,
  oneOf: [{ required: ["weave"] }, { required: ["steps"] }],
  dependentRequired: { steps: ["shafts", "threading"] },
  properties: {
    weave: {
      description: "A ground weave by its name; the raise and sink plan that cuts cleanest is worked out.",
      examples: ["broken twill", "plain", "twill 1/3", "satin 8 step 3"],
      type: "string",
      pattern: "\\S",
    },
    ends: {
      description: "Ends in one repeat of the weave, where its name leaves that open.",
      examples: [4, 8],
      type: "integer",
      minimum: 1,
      maximum: 1024,
    },
    shafts: {
      description: "How many shafts the ground harness has.",
      examples: [4],
      type: "integer",
      minimum: 1,
      maximum: 1024,
    },
    threading: shafts("The ground shaft of each end, from the first end of unit 1; repeats over the ends.", [
      "1 2 3 4",
      "1-8",
    ]),
    steps: stepsSchema,
    selvedge: {
      description:
        "Ends outside the units, which the pattern harness never draws: on ground shafts named end by end, or in a weave of their own.",
      examples: [
        { left: "1 2 1 2", right: "3 4 3 4" },
        { weave: "plain", ends: 6 },
      ],
      type: "object",
      additionalProperties: false,
      minProperties: 1,
      dependentRequired: { ends: ["weave"] },
      properties: {
        left: endsOfSelvedge("left"),
        right: endsOfSelvedge("right"),
        weave: {
          description: "The weave of both selvedges, on ground shafts of its own, added behind the ground's.",
          examples: ["plain", "hopsack 2/2"],
          type: "string",
          pattern: "\\S",
        },
        ends: {
          description: "Ends in each selvedge; 4 when left out.",
          examples: [6],
          type: "integer",
          minimum: 1,
          maximum: 1024,
        },
      },
    },
  },
};
