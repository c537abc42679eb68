import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { drawcord } from "./support/built.js";
import { folder } from "./support/folder.js";
import { root } from "./support/packages.js";
import { followPicture } from "./support/pictures/follow-row.js";
import { packagePicture, packagePictures } from "./support/pictures/of-packages.js";
import { slipPicture } from "./support/pictures/slip.js";

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

it.each([
  ["a slip with its cause and its mend", "docs/pictures/slip.svg", slipPicture],
  ["a row of the page for the loom", "docs/pictures/follow-row.svg", followPicture],
])("%s is drawn from what the command writes", async (_, path, picture) => {
  await expect(await picture()).toMatchFileSnapshot(join(root, path));
});

it.each(packagePictures)(
  "%s is what the command draws, and its README shows it",
  async (path, args, made) => {
    await expect(await packagePicture(args, made)).toMatchFileSnapshot(join(root, path));
    const [, name] = path.split("/pictures/");
    expect(readFileSync(join(root, path, "../../README.md"), "utf8")).toContain(`pictures/${name}`);
  },
);
