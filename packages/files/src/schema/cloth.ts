import { ACTIONS } from "@drawcord/ground";
import type { Schema } from "../tree/json-schema.js";

/** A measure with its unit, as text. */
const measure = (description: string, ...examples: readonly string[]): Schema => ({
  description,
  examples,
  type: "string",
  pattern: "\\S",
});

const whole = (description: string, example: number, minimum = 1): Schema => ({
  description,
  examples: [example],
  type: "integer",
  minimum,
  maximum: 1_000_000_000,
});

/** One yarn of the section `yarns`. */
const yarn: Schema = {
  description: "One yarn.",
  examples: [{ count: "20/2 Ne", fibre: "cotton" }],
  type: "object",
  additionalProperties: false,
  minProperties: 1,
  properties: {
    count: measure(
      "The yarn's count in any system, plies with it; left out where it is not known, as of a draft.",
      "20/2 Ne",
      "Nm 28/2",
      "20 tex x 2",
    ),
    fibre: measure("What it is made of.", "cotton", "linen"),
    colour: measure("Its colour, by name or as red, green and blue (between quotes).", "#b8860b", "old gold"),
    package: measure("What one cone, skein or spool holds, by weight or by length.", "250 g", "8400 yd"),
    stock: measure("What there is of it, by weight or by length.", "1.2 kg"),
  },
};

/** The section `yarns`. */
export const yarnsSchema: Schema = {
  title: "Yarns",
  description: "The warp, the ground weft, and any further weft by the name that the ground's steps give it.",
  examples: [{ warp: { count: "20/2 Ne" }, weft: { count: "16/1 lea", fibre: "linen" } }],
  type: "object",
  minProperties: 1,
  additionalProperties: yarn,
  properties: { warp: yarn, weft: yarn },
};

/** The section `cloth`. */
export const clothSchema: Schema = {
  title: "Cloth",
  description: "How close the threads lie, and what the cloth loses on the loom and in the wash.",
  examples: [{ sett: "24 per inch", "draw-in": "6 %" }],
  type: "object",
  additionalProperties: false,
  properties: {
    sett: measure("Ends side by side in the reed.", "24 per inch", "10 per cm"),
    picks: measure("Picks woven.", "24 per inch", "9 per cm"),
    reed: {
      description: "The reed, in any reed count.",
      examples: ["12 per inch", "50 per 10 cm", "60 Stockport"],
      type: "string",
    },
    sley: {
      description: "Ends in the dents, over and over.",
      examples: [2, "1-2-2"],
      type: ["string", "integer"],
    },
    "reed-width": measure("How wide a warp the reed takes.", "70 cm"),
    "draw-in": measure("How much narrower the cloth is than its width in the reed.", "6 %"),
    "take-up": measure("How much longer the warp is than the cloth, on the cloth's length.", "10 %"),
    shrinkage: {
      description: "What is lost in the wash: one share for both ways, or each.",
      examples: ["8 %", { width: "6 %", length: "10 %" }],
      type: ["string", "object"],
      additionalProperties: false,
      minProperties: 1,
      properties: { width: measure("Across the cloth.", "6 %"), length: measure("Along the cloth.", "10 %") },
    },
    "first-pick-from": {
      description:
        "The side from which the first pick of each weft is thrown, left when left out: one for all, or each by the name of the yarn or of the weft.",
      examples: ["right", { madder: "left", gold: "right" }],
      type: ["string", "object"],
      pattern: "^(left|right)$",
      minProperties: 1,
      additionalProperties: {
        description: "The side of this yarn or weft.",
        examples: ["right"],
        type: "string",
        enum: ["left", "right"],
      },
    },
    repeat: {
      description: "Which ways the cloth goes on after its last thread with its first.",
      examples: ["picks"],
      type: "string",
      enum: ["none", "ends", "picks", "both"],
    },
  },
};

/** The section `project`. */
export const projectSchema: Schema = {
  title: "Project",
  description: "What is to be woven on this warp.",
  examples: [{ pieces: 4, length: "1.2 m", waste: "70 cm" }],
  type: "object",
  additionalProperties: false,
  properties: {
    pieces: whole("How many pieces.", 4),
    warp: measure(
      "Length of the warp, where it is wound already; the pieces are then counted.",
      "6 m",
      "8 yd",
    ),
    width: measure("Width of a finished piece.", "40 cm"),
    length: measure("Length of a finished piece, hems and fringe not counted.", "1.2 m"),
    hems: measure("Length turned in for the hems of a piece, both ends together.", "6 cm"),
    fringe: measure("Length of the fringes of a piece, both ends together.", "20 cm"),
    gaps: measure("Warp left unwoven between two pieces.", "3 cm"),
    sampling: measure("Warp for samples.", "30 cm"),
    waste: measure("Warp that the loom cannot weave.", "70 cm", "36 in"),
    spare: measure("Yarn beyond what is woven, for mistakes, knots and the weaver's hand.", "5 %", "0 %"),
  },
};

/** The section `measured`. */
export const measuredSchema: Schema = {
  title: "Measured",
  description:
    "What was measured on a sample. The losses, the picks and the weight that follow from it go before those in `cloth` and those assumed; two measures that belong together tell a loss.",
  examples: [{ "width-in-reed": "40 cm", width: "37.6 cm", "washed-width": "35 cm" }],
  type: "object",
  additionalProperties: false,
  minProperties: 1,
  properties: {
    "width-in-reed": measure("Width of the sample in the reed.", "40 cm"),
    width: measure("Width of the sample on the loom, beside the last picks but a few.", "37.6 cm"),
    "washed-width": measure("Width of the sample after the wash.", "35 cm"),
    warp: measure("Length of warp that the sample took, marked on the warp before it was woven.", "33 cm"),
    length: measure("Length of the sample on the loom, the tension let off.", "30 cm"),
    "washed-length": measure("Length of the sample after the wash.", "27.5 cm"),
    picks: whole("Picks counted in the sample.", 120),
    over: measure("The length on the loom over which the picks were counted.", "12 cm"),
    square: measure("Side of the washed square that was weighed; 10 cm when left out.", "10 cm"),
    "square-weight": measure("Weight of the washed square.", "1.9 g"),
  },
};

/** The section `loom`. */
export const loomSchema: Schema = {
  title: "Loom",
  description: "What the loom has; what is left out is not checked.",
  examples: [{ "pattern-shafts": 20, "ground-shafts": 4 }],
  type: "object",
  additionalProperties: false,
  properties: {
    "pattern-shafts": whole("Pattern shafts, or cords in a single-unit draw.", 20, 0),
    "ground-shafts": whole("Ground shafts.", 8),
    treadles: whole("Treadles.", 10),
    lingos: whole("Lingos at hand.", 150, 0),
    heddles: whole("Heddles on each ground shaft.", 200, 0),
    "lingo-weight": measure("Weight of one lingo.", "30 g"),
    "weaving-width": measure("How wide a warp the loom weaves.", "120 cm"),
    action: {
      description:
        "How the ground shafts are moved, by its name in `drawcord ground --action`; `list` is a dobby with its list of bars.",
      examples: ["countermarch"],
      type: "string",
      enum: ACTIONS,
    },
  },
};

/** The section `stated`: names as `drawcord plan` gives them. */
export const statedSchema: Schema = {
  title: "Stated numbers",
  description:
    "Numbers that a printed recipe claims; each is compared with the one worked out from the recipe.",
  examples: [{ ends: 480, "warp-length": "6.5 m" }],
  type: "object",
  additionalProperties: false,
  properties: {
    ends: whole("Ends, selvedges counted.", 480),
    picks: whole("Picks in one piece.", 960),
    units: whole("Units.", 120),
    rows: whole("Rows of the lift plan.", 240),
    lingos: whole("Lingos.", 120),
    pieces: whole("Pieces from the warp.", 4),
    "longest-float": whole("Threads passed by the longest float.", 7),
    "width-in-reed": measure("Width in the reed.", "45 cm"),
    "finished-width": measure("Width after the wash.", "40 cm"),
    "finished-length": measure("Length of a piece after the wash.", "1.2 m"),
    "warp-length": measure("Length of the warp.", "6.5 m"),
    "left-over": measure("Warp left when all pieces are woven.", "40 cm"),
    "warp-yarn": measure("Warp yarn, by length or weight.", "2900 m", "210 g"),
    "weft-yarn": measure("Weft yarn of all wefts, by length or weight.", "2400 m"),
    "cloth-weight": measure("Weight of the cloth.", "180 g/m2"),
  },
};
