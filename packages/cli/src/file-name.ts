/** Names that old systems keep for devices, whatever ending follows. */
const DEVICES = /^(?:con|prn|aux|nul|com\d|lpt\d)$/;

/** The most letters of a title that go into a name. */
const LONGEST = 60;

/**
 * The name of a recipe's file, from its title: its letters and digits, with dashes between the words. Nothing else goes
 * in, so that no title leads to another folder.
 * @example recipeFileName("Moth & lantern") // "moth-lantern.recipe.yaml"
 */
export function recipeFileName(title: string): string {
  const words = title
    .normalize("NFC")
    .toLowerCase()
    .match(/[\p{L}\p{M}\p{N}]+/gu);
  const name = Array.from((words ?? []).join("-"))
    .slice(0, LONGEST)
    .join("")
    .replace(/-$/, "");
  return `${name === "" || DEVICES.test(name) ? `recipe${name && `-${name}`}` : name}.recipe.yaml`;
}
