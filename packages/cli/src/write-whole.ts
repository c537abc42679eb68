import { randomBytes } from "node:crypto";
import { closeSync, openSync, unlinkSync } from "node:fs";
import { access, constants, link, open, realpath, rename, stat } from "node:fs/promises";
import { basename, dirname, join, resolve } from "node:path";
import process from "node:process";
import { CliError } from "./error.js";
import { whyUnwritable } from "./why-unwritable.js";

/**
 * Writes a file whole or not at all: the text goes to a temporary file beside it, is flushed to the disk, and takes the
 * name at once. A device or a pipe is written straight.
 * @param name as the user gave it, from the folder `cwd`
 * @param options `force` replaces a file that is there; default false
 * @throws {CliError} `unwritable`; the file, if there was one, is as it was
 */
export async function writeWhole(
  name: string,
  cwd: string,
  chunks: Iterable<string | Uint8Array>,
  options: { readonly force?: boolean } = {},
): Promise<void> {
  const target = await realpath(resolve(cwd, name)).catch(() => resolve(cwd, name));
  const there = await stat(target).catch(() => undefined);
  if (there?.isDirectory()) throw unwritable(name, "this is a folder; name a file in it");
  if (there?.isFile() && !options.force) throw unwritable(name, TAKEN);
  const straight = there !== undefined && !there.isFile();
  const path = straight
    ? target
    : join(dirname(target), `.${basename(target).slice(0, 40)}.${randomBytes(6).toString("hex")}`);
  const drop = () => {
    try {
      if (!straight) unlinkSync(path);
    } catch {
      // It was never there, or has its name by now.
    }
  };
  // When the process is told to end meanwhile, nothing half-written stays behind.
  process.once("exit", drop);
  try {
    if (there?.isFile()) await access(target, constants.W_OK);
    // Made at once: a file still being made when the process ends would come into being after it was dropped.
    if (!straight) closeSync(openSync(path, "wx", there?.mode));
    const file = await open(path, straight ? "w" : "r+");
    try {
      // Who may read and write the file stays as it was, whatever new files are made with.
      if (there?.isFile()) await file.chmod(there.mode);
      for (const chunk of chunks) await file.writeFile(chunk);
      if (!straight) await file.sync();
    } finally {
      await file.close();
    }
    if (!straight) await (options.force ? rename(path, target) : takeFreeName(path, target));
  } catch (error) {
    drop();
    if (!(error instanceof Error && "syscall" in error)) throw error;
    const { code = "nothing" } = error as NodeJS.ErrnoException;
    throw straight
      ? new CliError("unwritable", `${name}: ${whyUnwritable(code)}`, { file: name, code })
      : unwritable(name, code === "EEXIST" ? TAKEN : whyUnwritable(code), code);
  } finally {
    process.off("exit", drop);
  }
}

const TAKEN = "there is a file of this name already; --force replaces it";

/** Renames a file, unless another has come to bear the name meanwhile. */
async function takeFreeName(path: string, target: string): Promise<void> {
  try {
    await link(path, target);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "EEXIST") throw error;
    // Some file systems have no second names.
    await rename(path, target);
    return;
  }
  unlinkSync(path);
}

function unwritable(name: string, reason: string, code = ""): CliError {
  return new CliError("unwritable", `${name}: ${reason}; nothing was written`, { file: name, code });
}
