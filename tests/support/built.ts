import { execFile } from "node:child_process";
import { existsSync } from "node:fs";
import { join } from "node:path";
import { root } from "./packages.js";

if (!existsSync(join(root, "packages/cli/dist/bin.js"))) {
  throw new Error("these tests run the built command: npm run build");
}

/** The built command. */
export const bin = join(root, "packages/cli/bin/drawcord.js");

/** What a process did. */
export interface Outcome {
  readonly status: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

/** Runs a program to its end, with nothing or `input` on its standard input. */
export function runProgram(
  program: string,
  args: readonly string[],
  { cwd, env, input = "" }: { cwd?: string; env?: NodeJS.ProcessEnv; input?: string | Uint8Array } = {},
): Promise<Outcome> {
  return new Promise((resolve, reject) => {
    const options = { cwd, env: { ...process.env, ...env }, maxBuffer: 2 ** 26 };
    const child = execFile(program, [...args], options, (error, stdout, stderr) => {
      if (error !== null && typeof error.code !== "number") reject(error);
      else resolve({ status: child.exitCode, stdout, stderr });
    });
    child.stdin?.on("error", () => {});
    child.stdin?.end(input);
  });
}

/** Runs the built `drawcord`. */
export function drawcord(
  args: readonly string[],
  options: Parameters<typeof runProgram>[2] = {},
): Promise<Outcome> {
  return runProgram(process.execPath, [bin, ...args], options);
}
