import { readFile } from "node:fs/promises";

/** The version of this package. */
export async function version(): Promise<string> {
  const text = await readFile(new URL("../package.json", import.meta.url), "utf8");
  return (JSON.parse(text) as { readonly version: string }).version;
}
