import { applyTogether } from "@drawcord/causes";
import { FileError, reviseDraft, soundRecipe } from "@drawcord/files";
import type { Change } from "@drawcord/units";
import { type Edit, editsBetween } from "./edits.js";

/** What makes changes of a recipe's draft in its text; none where they cannot be written there. */
export function editsOf(source: Uint8Array, file: string, changes: readonly Change[]): readonly Edit[] {
  const { draft } = soundRecipe(source, file);
  try {
    const before = reviseDraft(source, file, draft).text;
    return editsBetween(before, reviseDraft(source, file, applyTogether(draft, changes)).text);
  } catch (error) {
    if (error instanceof FileError) return [];
    throw error;
  }
}
