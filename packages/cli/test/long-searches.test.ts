import { readFileSync } from "node:fs";
import { afterEach, describe, expect, it, vi } from "vitest";
import type { Output } from "../src/io.js";
import { progressFor } from "../src/progress.js";
import { run } from "./run.js";

const faulty = readFileSync(
  new URL("../../../shared/recipes/faulty-runner.recipe.yaml", import.meta.url),
  "utf8",
);

afterEach(() => void vi.restoreAllMocks());

/** A terminal that keeps what is written to it. */
function terminal(): { readonly written: string[]; readonly stderr: Output } {
  const written: string[] = [];
  const write = async (chunk: string | Uint8Array) => void written.push(String(chunk));
  return { written, stderr: { closed: false, write } };
}

describe("a search in one file", () => {
  it("is shown once it has taken two seconds, every now and then, and taken away again", async () => {
    const now = vi.spyOn(performance, "now").mockReturnValue(0);
    const { stderr, written } = terminal();
    const progress = progressFor({ stderr, stderrIsTerminal: true, env: {} }, 1);
    for (const [at, tried] of [
      [1900, 1],
      [2000, 2],
      [2040, 3],
      [2100, 4],
    ] as const) {
      now.mockReturnValue(at);
      progress.search(tried, 8);
    }
    await progress.clear();
    expect(written).toEqual([
      "\r\u001b[K[######..................] 2 of 8 edits tried",
      "\r\u001b[K[############............] 4 of 8 edits tried",
      "\r\u001b[K",
    ]);
  });

  it("is not shown beside other files, nor where nobody looks", () => {
    const now = vi.spyOn(performance, "now").mockReturnValue(0);
    const { stderr, written } = terminal();
    const bars = [
      progressFor({ stderr, stderrIsTerminal: true, env: {} }, 2),
      progressFor({ stderr, stderrIsTerminal: false, env: {} }, 1),
    ];
    now.mockReturnValue(9000);
    for (const { search } of bars) search(1, 2);
    expect(written).toEqual([]);
  });

  it("tells what it did not try when its time is over", async () => {
    let now = 0;
    // Every look at the clock takes a second.
    vi.spyOn(Date, "now").mockImplementation(() => {
      now += 1000;
      return now;
    });
    const { stdout } = await run(["check", "-", "--propose", "--seconds", "3", "--format", "json"], {
      stdin: faulty,
    });
    const { untried } = JSON.parse(stdout) as { readonly untried: readonly string[] };
    expect(untried.length).toBeGreaterThan(1);
    for (const clause of untried) expect(clause).toMatch(/: the time was over$/);
    expect(untried.at(-1)).toBe("further mends: the time was over");
  });
});
