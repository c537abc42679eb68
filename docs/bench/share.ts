/**
 * A recipe in the fragment of a link, compressed: what stands behind `#` in an address is never sent to a server.
 */
import { strFromU8, strToU8, unzlibSync, zlibSync } from "fflate";

const MARK = "#recipe=";

/**
 * The fragment that holds a recipe.
 * @param text the recipe
 */
export function fragmentOf(text: string): string {
  const bytes = zlibSync(strToU8(text), { level: 9 });
  let binary = "";
  for (const byte of bytes) binary += String.fromCharCode(byte);
  return MARK + btoa(binary).replace(/\+/g, "-").replace(/\//g, "_").replace(/=+$/, "");
}

/**
 * The recipe in a fragment; undefined where there is none, or none that can be read.
 * @param fragment with its `#`
 */
export function recipeIn(fragment: string): string | undefined {
  if (!fragment.startsWith(MARK)) return undefined;
  try {
    const binary = atob(fragment.slice(MARK.length).replace(/-/g, "+").replace(/_/g, "/"));
    return strFromU8(unzlibSync(Uint8Array.from(binary, (letter) => letter.charCodeAt(0))));
  } catch {
    return undefined;
  }
}
