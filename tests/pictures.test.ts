import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { drawcord } from "./support/built.js";
import { folder } from "./support/folder.js";
import { root } from "./support/packages.js";

const runner = join(root, "shared/recipes/runner.recipe.yaml");

it.each([
  ["runner.png", ["expand", runner, "--format", "png"]],
  ["crossing.svg", ["why", runner, "--end", "41", "--pick", "77"]],
])("the picture %s of the README is what the command draws", async (name, args) => {
  const made = join(folder(), name);
  const { status } = await drawcord([...args, "-o", made]);
  expect(status).toBe(0);
  expect(readFileSync(made).equals(readFileSync(join(root, "docs/pictures", name)))).toBe(true);
});
