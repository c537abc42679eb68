import type { Schema } from "../tree/json-schema.js";
import {
  clothSchema,
  loomSchema,
  measuredSchema,
  projectSchema,
  statedSchema,
  yarnsSchema,
} from "./cloth.js";
import { formulasSchema } from "./formulas.js";
import { groundSchema } from "./ground.js";
import { limitsSchema, waiveSchema } from "./limits.js";
import { coloursSchema, piecesSchema } from "./pieces.js";
import { liftsSchema, unitsSchema } from "./units.js";
import { recipeVersion } from "./version.js";

/**
 * The recipe file as JSON Schema (2020-12), for editors and other programs. The reader goes by it too, so that the two
 * agree; what a schema cannot say (notations, shafts that there are not) only the reader checks.
 */
export const recipeSchema: Schema = {
  $schema: "https://json-schema.org/draft/2020-12/schema",
  title: "Drawcord recipe",
  description: "A figured cloth: its ground, its units and how they are threaded, and the lifts.",
  type: "object",
  additionalProperties: false,
  required: ["recipe", "ground", "units"],
  anyOf: [{ required: ["lifts"] }, { required: ["pieces"] }],
  properties: {
    recipe: {
      description: "The version of this format.",
      examples: [recipeVersion],
      type: "integer",
      const: recipeVersion,
    },
    title: {
      description: "What the cloth is called.",
      examples: ["Moth and lantern runner"],
      type: ["string", "number"],
      pattern: "\\S",
    },
    ground: groundSchema,
    units: unitsSchema,
    lifts: liftsSchema,
    pieces: piecesSchema,
    colours: coloursSchema,
    yarns: yarnsSchema,
    cloth: clothSchema,
    project: projectSchema,
    measured: measuredSchema,
    loom: loomSchema,
    limits: limitsSchema,
    waive: waiveSchema,
    stated: statedSchema,
    formulas: formulasSchema,
    notes: { description: "Anything else.", examples: ["Weave the border first."], type: "string" },
  },
};
