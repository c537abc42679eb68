import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll } from "vitest";

const made: string[] = [];

/** An empty folder, gone when the tests of the file are over. */
export function folder(): string {
  const path = mkdtempSync(join(tmpdir(), "drawcord-"));
  made.push(path);
  return path;
}

afterAll(() => {
  for (const path of made) rmSync(path, { recursive: true, force: true });
});
