import type { Schema } from "../tree/json-schema.js";
import { weftSchema, weftsSchema } from "./wefts.js";

/** A number for all, or one each as a list or in words: `4*10 6`. */
const counts = (description: string, examples: readonly unknown[]): Schema => ({
  description,
  examples,
  type: ["integer", "string", "array"],
  minimum: 1,
  maximum: 1_000_000,
  minItems: 1,
  items: {
    description: "The number of one of them.",
    examples: [4],
    type: "integer",
    minimum: 1,
    maximum: 1_000_000,
  },
});

/** The section `units`. */
export const unitsSchema: Schema = {
  title: "Units",
  description: "The ends that rise together on one leash, and the pattern shafts they hang on.",
  examples: [{ ends: 4, threading: "X*2 9 (1-8 7-2)*4 1 9 X*2" }],
  type: "object",
  additionalProperties: false,
  required: ["ends", "threading"],
  properties: {
    ends: counts("Ends in each unit: one number for all, or one for each.", [4, "4*40 6", [4, 4, 6]]),
    threading: {
      description:
        "The pattern shaft of each unit, unit 1 first: `7`, `X` for a static unit, `1-8` up, `7-2` down, `3+9` on both, `5*4` four times, `(1-4)*3` the group three times.",
      examples: ["X*2 9 (1-8 7-2)*4 1 9 X*2", "1-10"],
      type: ["string", "integer"],
    },
    static: {
      description: "The shaft number that stands for static units in diagrams; no lift may draw it.",
      examples: [10],
      type: "integer",
      minimum: 1,
      maximum: 100_000,
    },
  },
};

const row: Schema = {
  description: "The pattern shafts drawn in one row, or in several alike.",
  examples: [9, "1 3-5 9", "none", "2 4 *3"],
  type: ["string", "integer"],
};

const rows: Schema = {
  description: "The rows, row 1 (woven first) first: a list, or a text with a line a row.",
  examples: [[9, "1 3-5 9", "none"]],
  type: ["array", "string", "integer"],
  minItems: 1,
  items: row,
};

const picture: Schema = {
  description:
    "The rows as a picture, the last row on top and row 1 at the bottom: `#` drawn, `.` not, a column for each pattern shaft.",
  examples: ["..#..\n.###.\n#####"],
  type: "string",
  pattern: "\\S",
};

const picks = counts("Picks for which each row is held: one number for all, or one for each.", [4, "4*30 8"]);

const blocks: Schema = {
  description:
    "Parts of the lift plan by name, to be put together under `order`; with `pieces`, for all of them.",
  examples: [{ moth: { rows: [9, "1 3-5 9"] } }],
  type: "object",
  minProperties: 1,
  additionalProperties: {
    description: "One block: rows or a picture, and the yarn of its wefts where it is not the piece's.",
    examples: [{ rows: [9, "1 3-5 9"] }],
    type: "object",
    additionalProperties: false,
    oneOf: [{ required: ["rows"] }, { required: ["picture"] }],
    properties: { rows, picture, weft: weftSchema, wefts: weftsSchema },
  },
};

const order: Schema = {
  description:
    "The blocks in weaving order, the first woven first, each with what is done to it: `*3`, `on 9-16`, `upside-down`, `mirrored on 1-8`, `turned on 1-8`, `exchanged on 1-8`, `*4 every-other turned on 1-8`, `half-drop on 1-4 beside 5-8`, `brick on 1-8`, `framed 2 rows of 1-9 beside 9`, `framed in vine mitred on 1-8 beside 9-10` (a border of the block `vine` that turns its corners; or `meeting`), `fitted to 60 rows`, `*fill` to the length of the piece; `moth with edge` draws both in the same rows.",
  examples: [["border", "moth *3 with edge", "moth upside-down", "border exchanged on 1-8"]],
  type: "array",
  minItems: 1,
  items: {
    description: "A block, and what is done to it.",
    examples: ["moth *2 upside-down"],
    type: "string",
    pattern: "\\S",
  },
};

/** The section `lifts`. */
export const liftsSchema: Schema = {
  title: "Lifts",
  description:
    "The pattern shafts drawn in each row: as rows, as a picture, or as named blocks in weaving order; with `pieces`, the blocks and the picks that they share.",
  examples: [{ picks: 4, rows: [9, "1 3-5 9", "none"] }],
  type: "object",
  additionalProperties: false,
  required: ["picks"],
  oneOf: [
    { required: ["rows"] },
    { required: ["picture"] },
    { required: ["order"] },
    { required: ["blocks"], not: { required: ["order"] } },
  ],
  dependentRequired: { order: ["blocks"] },
  properties: { picks, rows, picture, blocks, order },
};

/** The lifts of one of the `pieces`. */
export const liftsOfPieceSchema: Schema = {
  description:
    "The lifts of the piece: rows, a picture, or blocks in weaving order, its own and those that all share.",
  examples: [{ order: ["hem", "moth *fill", "hem"] }],
  type: "object",
  additionalProperties: false,
  oneOf: [{ required: ["rows"] }, { required: ["picture"] }, { required: ["order"] }],
  dependentRequired: { blocks: ["order"] },
  properties: {
    picks: { ...picks, description: "Picks for which each row is held; those of all pieces when left out." },
    rows,
    picture,
    blocks: { ...blocks, description: "Blocks of this piece alone." },
    order,
  },
};
