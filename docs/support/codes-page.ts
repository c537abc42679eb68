import { fileURLToPath } from "node:url";
import { errorCodes } from "./error-codes.js";
import { isWhole } from "./whole.js";

/** The page of the codes that errors bear, each with an anchor of its own name. */
export function codesPage(): string {
  const codes = errorCodes(fileURLToPath(new URL("../..", import.meta.url)));
  return [
    "# Codes of errors",
    "Every error has a code, which stays the same though its sentence changes, and says in one sentence where, what was found, and what was expected. A cloth that is wrong is no error but a finding: those stand under [rules](./rules/).",
    ...codes.map(({ code, from, meanings }) =>
      [
        `## ${code} {#${code}}`,
        ...meanings,
        `From ${from.map(({ error, folder }) => sourceOf(folder, error)).join(", ")}.`,
      ].join("\n\n"),
    ),
  ].join("\n\n");
}

/** The class of an error, which leads to its place in the reference where there is one. */
function sourceOf(folder: string, error: string): string {
  if (folder === "cli") return "the command `drawcord`";
  const name = `\`${error}\` of \`@drawcord/${folder}\``;
  return isWhole ? `[${name}](./reference/${folder}#${error})` : name;
}
