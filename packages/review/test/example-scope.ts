import { soundRecipe } from "@drawcord/files";
import { leastRecipe } from "../../files/test/samples.js";

/** What the examples of the docstrings may name besides exports. */
export const scope = { recipe: soundRecipe(leastRecipe, "least") };
