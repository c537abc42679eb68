/** The command as a weaver calls it, in processes of its own. */
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const here = (path) => fileURLToPath(new URL(`../../${path}`, import.meta.url));
const bin = here("packages/cli/bin/drawcord.js");

/** A recipe of 400 x 400, unlike every other. */
function recipe(number) {
  const rows = Array.from({ length: 100 }, (_, row) => {
    const shafts = Array.from({ length: 20 }, (_, i) => i + 1);
    const drawn = shafts.filter(
      (shaft) => Math.sin(shaft / 3 + number) + Math.sin(row / 7 + number / 9) > 0.3,
    );
    return drawn.length === 0 ? "none" : drawn.join(" ");
  });
  return `recipe: 1
title: Cloth ${number}
ground:
  weave: broken twill
  ends: 4
units:
  ends: 4
  threading: (1-20)*5
lifts:
  picks: 4
  rows:
${rows.map((row) => `    - ${row}`).join("\n")}
`;
}

function withFolder(work) {
  const folder = mkdtempSync(join(tmpdir(), "drawcord-bench-"));
  try {
    return work(folder);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** Checks so many recipes at once, and says how long it took. */
export function command(files) {
  return withFolder((folder) => {
    for (let i = 0; i < files; i++) writeFileSync(join(folder, `cloth-${i}.recipe.yaml`), recipe(i));
    const start = performance.now();
    const { status, stderr } = spawnSync(process.execPath, [bin, "check", folder, "--format", "ndjson"], {
      maxBuffer: 2 ** 30,
    });
    if (status !== 0 && status !== 1) throw new Error(`the command failed: ${stderr}`);
    return { files, seconds: (performance.now() - start) / 1000 };
  });
}

/** Recipes of the examples; the last is faulty, and states numbers of its project, for which the formulas of yarn are loaded. */
const examples = ["band", "napkin", "runner", "faulty-runner"].map(
  (name) => `shared/recipes/${name}.recipe.yaml`,
);

/** How long a process takes from its start to its end, in ms. */
function timed(args) {
  const start = performance.now();
  spawnSync(process.execPath, args);
  return performance.now() - start;
}

/** How long the sheet of the runner takes in a format, in ms, and how many times as long as Node that does nothing. */
export function sheetTime(format, runs) {
  return withFolder((folder) => {
    const args = ["sheet", here("shared/recipes/runner.recipe.yaml"), "-o", join(folder, `sheet.${format}`)];
    const times = Array.from({ length: runs }, () => {
      const ms = timed([bin, ...args, "--force"]);
      return { ms, ratio: ms / timed(["-e", "0"]) };
    }).sort((a, b) => a.ms - b.ms);
    return times[Math.floor(runs / 2)];
  });
}

/**
 * How much longer checking some recipes takes than Node takes to start and do nothing, in ms: the median of some runs.
 * The first is small: the one that `init` writes.
 */
export function startUp(runs) {
  const measured = (file, path) => {
    const beyond = () => timed([bin, "check", path]) - timed(["-e", "0"]);
    const times = Array.from({ length: runs }, beyond).sort((a, b) => a - b);
    return { file, ms: times[Math.floor(runs / 2)] };
  };
  return withFolder((folder) => {
    const starter = "starter.recipe.yaml";
    const { status, stderr } = spawnSync(process.execPath, [bin, "init", starter], { cwd: folder });
    if (status !== 0) throw new Error(`no recipe to begin from was written: ${stderr}`);
    return [measured(starter, join(folder, starter)), ...examples.map((file) => measured(file, here(file)))];
  });
}
