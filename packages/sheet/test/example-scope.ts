import { makeSheet } from "../src/index.js";
import { bareRecipe, smallDraft } from "./recipes.js";

const recipe = bareRecipe(smallDraft);
const sheet = makeSheet(recipe);
const pictures = sheet.parts.flatMap(({ blocks }) =>
  blocks.flatMap((block) => (block.kind === "pictures" ? block.pictures : [])),
);

/** What docstring examples may name besides what is exported: a small recipe, its sheet, and a picture of it. */
export const scope = { recipe, sheet, picture: pictures[0] };
