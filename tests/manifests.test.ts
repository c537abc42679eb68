import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { expect, it } from "vitest";
import { packageFiles } from "./scripts/manifests.mjs";
import { packages, root } from "./support/packages.js";

it("every package says where the project lives and what it needs of others, as the workspace does", async () => {
  const files = packageFiles();
  expect(files.size).toBe(3 * packages.length - 2);
  for (const [file, text] of files) {
    expect(await readFile(join(root, file), "utf8"), `npm run manifests writes ${file} anew`).toBe(text);
  }
});

it.each(packages)("$specifier is fit to be published with its provenance", async ({ name }) => {
  const manifest = JSON.parse(await readFile(join(root, "packages", name, "package.json"), "utf8")) as object;
  expect(manifest).toMatchObject({
    homepage: expect.stringMatching(/^https:/),
    repository: { type: "git", url: expect.stringMatching(/^git\+https:/), directory: `packages/${name}` },
    bugs: { url: expect.stringMatching(/^https:/) },
    license: "MIT",
    publishConfig: { access: "public", provenance: true },
  });
});

it("every change that is noted names packages that there are", async () => {
  const notes = join(root, ".changeset");
  const specifiers = packages.map(({ specifier }) => specifier);
  const named = await Promise.all(
    (await readdir(notes))
      .filter((name) => name.endsWith(".md") && name !== "README.md")
      .map(async (name) => {
        const [, head = ""] = (await readFile(join(notes, name), "utf8")).split("---");
        return [...head.matchAll(/"([^"]+)":/g)].map(([, one]) => one!);
      }),
  );
  expect(named.flat().length).toBeGreaterThan(100);
  expect([...new Set(named.flat())].filter((one) => !specifiers.includes(one))).toEqual([]);
});
