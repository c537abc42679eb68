import { shaftDraftOf, soundRecipe } from "../src/index.js";
import { leastRecipe } from "./samples.js";

const unitDraft = soundRecipe(leastRecipe, "least").draft;

/** What the examples of the docstrings may name besides exports. */
export const scope = { text: leastRecipe, unitDraft, draft: shaftDraftOf(unitDraft) };
