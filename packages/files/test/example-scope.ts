import { readRecipe, shaftDraftOf } from "../src/index.js";
import { leastRecipe } from "./samples.js";

const unitDraft = readRecipe(leastRecipe, "least").draft;

/** What the examples of the docstrings may name besides exports. */
export const scope = { text: leastRecipe, unitDraft, draft: shaftDraftOf(unitDraft) };
