import { fileURLToPath } from "node:url";
import { errorCodes } from "./error-codes.js";

/** The page of the codes that errors bear, each with an anchor of its own name. */
export function codesPage(): string {
  const codes = errorCodes(fileURLToPath(new URL("../..", import.meta.url)));
  return [
    "# Codes of errors",
    "Every error has a code, which stays the same though its sentence changes, and says in one sentence where, what was found, and what was expected. A cloth that is wrong is no error but a finding: those stand under [rules](./rules/).",
    ...codes.map(({ code, meanings, packages }) =>
      [
        `## ${code} {#${code}}`,
        ...meanings,
        `From ${packages.map((name) => `\`${name}\``).join(", ")}.`,
      ].join("\n\n"),
    ),
  ].join("\n\n");
}
