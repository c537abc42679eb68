// The main job on an example recipe: is this cloth going to hold, and what does it look like?
import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("../..", import.meta.url));
const recipe = "shared/recipes/runner.recipe.yaml";
const picks = 48;

function drawcord(...args) {
  const { stdout, stderr, status } = spawnSync(process.execPath, ["packages/cli/bin/drawcord.js", ...args], {
    cwd: root,
    encoding: "utf8",
    maxBuffer: 2 ** 28,
  });
  if (status === 2) {
    process.stderr.write(stderr);
    process.exit(2);
  }
  return stdout;
}

const width = Math.min(process.stdout.columns ?? 100, 100);
const rows = drawcord("expand", recipe).trimEnd().split("\n");
const first = rows.slice(-picks).map((row) => (row.length > width ? `${row.slice(0, width - 1)}>` : row));

console.log(`$ npx drawcord check ${recipe}\n`);
console.log(drawcord("check", recipe));
console.log(
  `$ npx drawcord expand ${recipe}      (the first ${picks} of ${rows.length} picks; pick 1, woven first, is the lowest)\n`,
);
console.log(first.join("\n"));
console.log(`
Next, from this folder:
  npx drawcord check shared/recipes/faulty-runner.recipe.yaml   a recipe with slips in it, each drawn and explained
  npx drawcord rules open-cut                                   what a finding means, and how to mend it
  npx drawcord --help                                           everything else
Then copy ${recipe}, change a lift, and check it again.`);
