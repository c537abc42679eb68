import { cpSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

/** Whether the reference is to stand beside the site: it takes as long to make as the site, so that tests leave it out. */
export const whole = process.argv.includes("--whole");

/**
 * Puts the reference beside a built site. It is not kept for use without a network: it is larger than all the rest.
 * @param folder the built site
 */
export function referenceBeside(folder: string): void {
  cpSync(fileURLToPath(new URL("../reference", import.meta.url)), join(folder, "reference"), {
    recursive: true,
  });
}
