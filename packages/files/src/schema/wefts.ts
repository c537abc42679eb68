import type { Schema } from "../tree/json-schema.js";

/** An order of yarns over the picks of the ground weft. */
export const weftSchema: Schema = {
  description:
    "The yarn of the ground weft, by its name under `yarns`, or an order of yarns over its picks: `madder`, `madder*6 gold*2`.",
  examples: ["madder", "madder*6 gold*2"],
  type: "string",
  pattern: "\\S",
};

/** Orders of yarns for the wefts that the ground's steps name. */
export const weftsSchema: Schema = {
  description: "The yarns of further wefts, by the name that the ground's steps give them.",
  examples: [{ pattern: "gold rust" }],
  type: "object",
  minProperties: 1,
  additionalProperties: {
    ...weftSchema,
    description: "A yarn, or an order of yarns over the picks of this weft.",
  },
};
