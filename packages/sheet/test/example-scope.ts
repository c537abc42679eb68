import { shaftDraftOf } from "@drawcord/files";
import { bareRecipe, smallDraft } from "./recipes.js";

/** What docstring examples may name besides what is exported: a small recipe and a plain draft. */
export const scope = { recipe: bareRecipe(smallDraft), shaftDraft: shaftDraftOf(smallDraft) };
