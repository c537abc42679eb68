import { createHash, randomBytes } from "node:crypto";
import { mkdir, readFile, rename, unlink, writeFile } from "node:fs/promises";
import { join, resolve } from "node:path";
import { rules } from "@drawcord/check";
import { CliError } from "../error.js";
import { version } from "../version.js";
import type { KeptCheck } from "./kept.js";

/** Where reports are kept between runs, and what besides a file's content they depend on. Plain data. */
export interface CachePlace {
  readonly folder: string;
  readonly seed: string;
}

/**
 * The cache in a folder, which is made when it is not there.
 * @param asked the rules asked for, and what else was
 * @throws {CliError} `unwritable` when there can be no such folder
 */
export async function openCache(name: string, cwd: string, asked: readonly string[]): Promise<CachePlace> {
  const folder = resolve(cwd, name);
  try {
    await mkdir(folder, { recursive: true });
  } catch (error) {
    const { code = "unknown" } = error as NodeJS.ErrnoException;
    const why =
      code === "EEXIST" || code === "ENOTDIR"
        ? "this is a file, not a folder"
        : `no folder can be made here (${code})`;
    throw new CliError("unwritable", `--cache ${name}: ${why}`, { folder: name, code });
  }
  return { folder, seed: JSON.stringify([await version(), rules.map(({ name }) => name), asked]) };
}

/**
 * What is kept of a file with this content, or what `make` makes of it, kept from then on. A folder shared by many
 * processes is safe: a report is written aside and takes its name at once, and one that cannot be read is made anew.
 */
export async function kept(
  { folder, seed }: CachePlace,
  content: Uint8Array,
  make: () => Promise<KeptCheck>,
): Promise<KeptCheck> {
  const key = createHash("sha256").update(seed).update("\0").update(content).digest("hex");
  const path = join(folder, `${key}.json`);
  const found = await readFile(path, "utf8").then(
    (text) => parsed(text, key),
    () => undefined,
  );
  if (found !== undefined) return found;
  const made = await make();
  const aside = join(folder, `.${key}.${randomBytes(6).toString("hex")}`);
  try {
    await writeFile(aside, JSON.stringify({ key, ...made }), { flag: "wx" });
    await rename(aside, path);
  } catch {
    // A cache that is full or gone costs time, and never the report.
    await unlink(aside).catch(() => undefined);
  }
  return made;
}

function parsed(text: string, key: string): KeptCheck | undefined {
  try {
    const { key: found, ...rest } = JSON.parse(text) as KeptCheck & { readonly key: string };
    return found === key ? rest : undefined;
  } catch {
    return undefined;
  }
}
