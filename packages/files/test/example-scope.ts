import { shaftDraftOf, soundRecipe } from "../src/index.js";
import { leastRecipe } from "./samples.js";

const unitDraft = soundRecipe(leastRecipe, "least").draft;

/** The least recipe of two pieces. */
const pair = `recipe: 1
ground: { weave: plain }
units: { ends: 2, threading: 1 2 }
pieces: [{ name: a, lifts: { picks: 2, rows: [1] } }, { name: b, lifts: { picks: 2, rows: [2] } }]
`;

/** What the examples of the docstrings may name besides exports. */
export const scope = { text: leastRecipe, pair, unitDraft, draft: shaftDraftOf(unitDraft) };
