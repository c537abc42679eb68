import { rules } from "@drawcord/check";
import type { Schema } from "../tree/json-schema.js";

const ruleNames = /* @__PURE__ */ rules.map(({ name }) => name);

const limit: Schema = {
  description: "The longest float allowed, in threads or as a length at the cloth's sett.",
  examples: [9, "6 mm"],
  type: ["integer", "string"],
  minimum: 1,
  maximum: 1_000_000,
  pattern: "\\S",
};

const share = (description: string, example: string): Schema => ({
  description,
  examples: [example],
  type: "string",
  pattern: "\\S",
});

const area = (description: string): Schema => ({
  ...limit,
  description: `${description}: in squares (units x rows), or its longer side.`,
  examples: [400, "12 cm"],
});

/** The section `limits`. */
export const limitsSchema: Schema = {
  title: "Limits",
  description: "What the weaver allows; what is left out keeps the checker's own limit.",
  examples: [{ float: "6 mm", "open-cuts": "2 %" }],
  type: "object",
  additionalProperties: false,
  properties: {
    float: {
      ...limit,
      description:
        "The longest float allowed, in threads or as a length: for all, or apart for `warp`, `weft` and any weft by its name.",
      examples: ["6 mm", 9, { warp: 7, weft: "6 mm", pattern: 11 }],
      type: ["integer", "string", "object"],
      minProperties: 1,
      properties: { warp: limit, weft: limit },
      additionalProperties: limit,
    },
    "open-cuts": share(
      "Share of the threads along a border of the figure that may slip, because they do not cut.",
      "2 %",
    ),
    "take-up": share(
      "How far the intersections of a thread may lie from the mean of its system, or of its weft.",
      "15 %",
    ),
    stretch: {
      ...limit,
      description: "How long a unit may stay drawn, or undrawn: in picks or as a length.",
      examples: [200, "20 cm"],
    },
    area: {
      ...area("How large an area of one drawn state may be"),
      examples: [400, "12 cm", { drawn: "12 cm", undrawn: 900 }],
      type: ["integer", "string", "object"],
      minProperties: 1,
      properties: {
        drawn: area("How large a drawn area may be"),
        undrawn: area("How large an undrawn area may be"),
      },
      additionalProperties: false,
    },
    "face-share": share(
      "How far the share of warp on the face of a band may lie from the whole cloth's, in percentage points.",
      "30 %",
    ),
    "thin-area": {
      description:
        "Up to how many squares an area is told of that stands alone, one unit wide or one row high; usually 3.",
      examples: [1],
      type: "integer",
      minimum: 1,
      maximum: 1_000_000,
    },
    "unlike-sides": {
      description:
        "How many times as long as on the other side of the cloth the longest float may be; usually 2.",
      examples: [4],
      type: "number",
      minimum: 1,
      maximum: 1_000_000,
    },
    levels: {
      description: "The weight of a rule's findings, by the rule's name.",
      examples: [{ "idle-shaft": "off", "open-cut": "error" }],
      type: "object",
      minProperties: 1,
      propertyNames: { enum: ruleNames },
      additionalProperties: {
        description: "How much the rule's findings weigh; off leaves it out.",
        examples: ["off"],
        type: "string",
        enum: ["error", "warning", "note", "off"],
      },
    },
  },
};

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
      rule: { description: "The rule's name.", examples: ["open-cut"], type: "string", enum: ruleNames },
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
