export { type PlacedCause, writtenRows } from "./causes.js";
export { cautionOf } from "./caution.js";
export { checkRecipe, type Review, type ReviewOptions } from "./check-recipe.js";
export { editorSchema } from "./editor-schema.js";
export { statedValues } from "./fill-stated.js";
export { numberRules } from "./number-rules.js";
export { optionsOf } from "./options.js";
export type { PieceNumbers } from "./pieces.js";
export { placeInDraft } from "./place-in-draft.js";
