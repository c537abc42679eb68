import { type Limit, limits } from "@drawcord/check";
import type { Schema } from "../tree/json-schema.js";

/** The shape of one value of a limit. */
const shapes: Readonly<Record<Limit["kind"], Schema>> = {
  size: { type: ["integer", "string"], minimum: 1, maximum: 1_000_000, pattern: "\\S" },
  share: { type: "string", pattern: "\\S" },
  percent: { type: "string", pattern: "\\S" },
  count: { type: "integer", minimum: 1, maximum: 1_000_000 },
  times: { type: "number", minimum: 1, maximum: 1_000_000 },
};

/** The shape of a limit: one value for all, or one for each of its parts. */
function limitSchema({ apart, byWeft, description, examples, kind }: Limit): Schema {
  const value = shapes[kind];
  if (apart === undefined) return { description, examples, ...value };
  const part = (key: string): Schema => ({
    description: `The limit for ${key} alone.`,
    examples: examples.slice(0, 2),
    ...value,
  });
  return {
    description,
    examples,
    ...value,
    type: ["integer", "string", "object"],
    minProperties: 1,
    properties: Object.fromEntries(Object.keys(apart).map((key) => [key, part(key)])),
    additionalProperties: byWeft === undefined ? false : part("one weft, by its name,"),
  };
}

/** The section `limits`. */
export const limitsSchema: Schema = /* @__PURE__ */ (() => ({
  title: "Limits",
  description: "What the weaver allows; what is left out keeps the checker's own limit.",
  examples: [{ float: "6 mm", "open-cuts": "2 %" }],
  type: "object",
  additionalProperties: false,
  properties: {
    ...Object.fromEntries((limits as readonly Limit[]).map((limit) => [limit.key, limitSchema(limit)])),
    levels: {
      description: "The level of a rule's findings, by the rule's name.",
      examples: [{ "idle-shaft": "off", "open-cut": "error" }],
      type: "object",
      minProperties: 1,
      additionalProperties: {
        description: "An error, a warning or a note; off leaves the rule out.",
        examples: ["off"],
        type: "string",
        enum: ["error", "warning", "note", "off"],
      },
    },
  },
}))();

const span = (what: string): Schema => ({
  description: `The ${what} it covers: one, or the first and the last; all when left out.`,
  examples: [7, "1-12"],
  type: ["integer", "string"],
  minimum: 1,
});

/** The section `waive`. */
export const waiveSchema: Schema = {
  title: "Waived findings",
  description: "Findings that the weaver accepts, each with her reason.",
  examples: [[{ rule: "open-cut", rows: "3-9", reason: "the ground shows through on purpose" }]],
  type: "array",
  items: {
    type: "object",
    additionalProperties: false,
    required: ["rule", "reason"],
    properties: {
      rule: { description: "The rule's name.", examples: ["open-cut"], type: "string", pattern: "\\S" },
      reason: {
        description: "Why it is accepted.",
        examples: ["the ground shows through on purpose"],
        type: "string",
        pattern: "\\S",
      },
      ends: span("ends"),
      picks: span("picks"),
      units: span("units"),
      rows: span("rows"),
    },
  },
};
