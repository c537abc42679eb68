import type { Schema } from "../tree/json-schema.js";
import { stepsSchema } from "./ground.js";
import { limitsSchema } from "./limits.js";
import { liftsOfPieceSchema } from "./units.js";
import { weftSchema, weftsSchema } from "./wefts.js";

const { levels: _levels, ...ownLimits } = limitsSchema.properties!;

/** The section `colours`. */
export const coloursSchema: Schema = {
  title: "Colours",
  description: "Which yarn lies where, in all pieces that say nothing else.",
  examples: [{ warp: "indigo*12 warp*456 indigo*12", weft: "madder" }],
  type: "object",
  additionalProperties: false,
  minProperties: 1,
  properties: {
    warp: {
      description:
        "The yarn of each end, from end 1 on, in the notation of the threading; the order begins again where it ends.",
      examples: ["indigo*12 (warp*4 indigo*2)*20 indigo*12"],
      type: "string",
      pattern: "\\S",
    },
    weft: weftSchema,
    wefts: weftsSchema,
  },
};

/** The section `pieces`. */
export const piecesSchema: Schema = {
  title: "Pieces",
  description: "What is woven on the warp, one piece after another, the first first.",
  examples: [[{ name: "moths", count: 4, weft: "madder", lifts: { order: ["moth*3"] } }]],
  type: "array",
  minItems: 1,
  items: {
    description: "One design, and how many of it are woven.",
    examples: [{ name: "moths", count: 4, lifts: { order: ["hem", "moth*fill", "hem"] } }],
    type: "object",
    additionalProperties: false,
    required: ["name", "lifts"],
    properties: {
      name: { description: "What it is called.", examples: ["moths"], type: "string", pattern: "\\S" },
      count: {
        description: "How many are woven, one after another; one when left out.",
        examples: [4],
        type: "integer",
        minimum: 1,
        maximum: 10_000,
      },
      length: {
        description: "Its finished length, hems and fringe not counted; the project's when left out.",
        examples: ["43 cm"],
        type: "string",
        pattern: "\\S",
      },
      weft: weftSchema,
      wefts: weftsSchema,
      counterchange: {
        description:
          "Figure and ground exchanged in the whole piece: the pattern shafts on which drawn and undrawn change places.",
        examples: ["1-12"],
        type: ["string", "integer"],
      },
      lifts: liftsOfPieceSchema,
      ground: {
        description: "A treadling of its own over the ground threading of the warp.",
        examples: [{ steps: [{ raise: 1, sink: 4 }] }],
        type: "object",
        additionalProperties: false,
        required: ["steps"],
        properties: { steps: stepsSchema },
      },
      limits: {
        ...limitsSchema,
        description: "What is allowed of this piece; what is left out is allowed as of all.",
        properties: ownLimits,
      },
    },
  },
};
