export type { PictureOptions } from "./charts/colours.js";
export { type PbmOptions, readPbm, writePbm } from "./charts/pbm.js";
export { type InkOptions, readInkedPng } from "./charts/png/ink.js";
export { readPng } from "./charts/png/read.js";
export { type ClothPictureOptions, writePng } from "./charts/png/write.js";
export { readTextChart, writeTextChart } from "./charts/text.js";
export { coloursOfRecipe, draftOfRecipe, drawdownOfRecipe, type RecipeColours } from "./draft/from-recipe.js";
export { type ShaftDraftOptions, shaftDraftOf, shaftDraftOfCloth } from "./draft/from-units.js";
export { withShedding } from "./draft/shedding.js";
export { recipeOfDraft } from "./draft/to-recipe.js";
export { FileError, type FileErrorCode, type Problem } from "./error.js";
export { firstPickSide } from "./first-pick.js";
export { coloursIn, drawdownIn, titleIn } from "./in-reading.js";
export type { Place } from "./place.js";
export { printable } from "./printable.js";
export { projectOf } from "./project.js";
export { projectOfDraft } from "./project-draft.js";
export { type FileKind, kindOf, type Reading, read } from "./read.js";
export { formatRecipe } from "./recipe/format.js";
export { groundStartOf } from "./recipe/ground-start.js";
export { needRecipe } from "./recipe/need-recipe.js";
export { ownNumbers } from "./recipe/own-numbers.js";
export { blocksOfPiece, type PieceBlock } from "./recipe/pieces/blocks.js";
export { recipeOfPiece } from "./recipe/pieces/of-piece.js";
export { placesOf, type RecipePlaces } from "./recipe/places.js";
export { type RecipeReading, readRecipe, soundRecipe } from "./recipe/read.js";
export { type RecipeValue, type RevisedText, type Revision, reviseRecipe, valueIn } from "./recipe/revise.js";
export { type RevisedRecipe, reviseDraft } from "./recipe/revise-draft.js";
export { revisePieces } from "./recipe/revise-pieces.js";
export { starterRecipe } from "./recipe/starter.js";
export type { TextEdit } from "./recipe/text-edits.js";
export { composedEdits } from "./recipe/text-edits.js";
export type {
  Placed,
  Recipe,
  RecipeCloth,
  RecipeFormula,
  RecipeLoom,
  RecipePiece,
  RecipeProject,
  RecipeSymbol,
  RecipeYarn,
  Stated,
  StatedName,
} from "./recipe/types.js";
export { type RecipeData, writeRecipe } from "./recipe/write.js";
export { recipeSchema } from "./schema/recipe.js";
export { recipeVersion } from "./schema/version.js";
export { largestFile } from "./text.js";
export type { Schema } from "./tree/json-schema.js";
export type { Path } from "./tree/spot.js";
export { type DraftPlaces, draftPlaces } from "./wif/places.js";
export { readWif, type SoundWif, soundWif, type WifReading } from "./wif/read.js";
export { writeWif } from "./wif/write.js";
