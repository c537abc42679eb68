import { relative } from "node:path";
import { expect, it } from "vitest";
import { undescribed } from "./support/described.js";
import { libraries, root } from "./support/packages.js";

it.each(libraries)("$specifier says of everything it exports what it is", (library) => {
  const missing = undescribed(library).map(
    ({ file, kind, path }) => `${relative(root, file)}: ${kind} ${path}`,
  );
  expect(missing).toEqual([]);
});
