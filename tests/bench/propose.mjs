/** What it costs to propose mends, beside the check that finds what is to be mended. */
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const bin = fileURLToPath(new URL("../../packages/cli/bin/drawcord.js", import.meta.url));

/** A plan of so many rows, of which one draws a handle that no unit hangs on. */
function slipped(rows) {
  const lifts = Array.from({ length: rows }, (_, row) => {
    const shafts = Array.from({ length: 8 }, (_, i) => i + 1);
    const drawn = shafts.filter((shaft) => Math.abs(((row + 3 * shaft) % 29) - 14) < 9);
    return (row === Math.floor(rows * 0.6) ? [...drawn, 9] : drawn).join(" ") || "none";
  });
  return `recipe: 1
title: A long runner
ground: { weave: broken twill }
units: { ends: 4, threading: X (1-8 7-2)*8 1-8 X }
lifts:
  picks: 4
  rows:
${lifts.map((row) => `    - ${row}`).join("\n")}
`;
}

/**
 * The time of a check with mends proposed over that of the check alone, in whole processes turn about: the middle of some runs.
 * @param {number} rows
 * @param {number} runs
 */
export function proposing(rows, runs) {
  const folder = mkdtempSync(join(tmpdir(), "drawcord-bench-"));
  try {
    const file = join(folder, "long.recipe.yaml");
    writeFileSync(file, slipped(rows));
    const timed = (...args) => {
      const start = performance.now();
      const { status, stderr, stdout } = spawnSync(
        process.execPath,
        [bin, "check", file, "--format", "json", ...args],
        {
          encoding: "utf8",
          maxBuffer: 2 ** 28,
        },
      );
      if (status === 2) throw new Error(stderr);
      return { ms: performance.now() - start, mends: JSON.parse(stdout).mends?.length };
    };
    const ratios = Array.from({ length: runs }, () => {
      const check = timed();
      const propose = timed("--propose");
      if (!(propose.mends > 0)) throw new Error("no mend was proposed");
      return { ratio: propose.ms / check.ms, check: check.ms, propose: propose.ms };
    }).sort((a, b) => a.ratio - b.ratio);
    return ratios[Math.floor(runs / 2)];
  } finally {
    rmSync(folder, { recursive: true });
  }
}
