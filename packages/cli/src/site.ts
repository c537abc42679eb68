import { readFileSync } from "node:fs";

/** The pages of the project's site that a report leads to. */
export interface Site {
  /** Its first page. */
  readonly home: string;
  /** The page of a rule. */
  readonly rule: (name: string) => string;
  /** What is said of causes. */
  readonly cause: string;
  /** What an error's code means. */
  readonly code: (code: string) => string;
}

/** The site at the address in the manifest of this package, where a release fills it in. */
export function siteOfProject(): Site {
  const text = readFileSync(new URL("../package.json", import.meta.url), "utf8");
  const { homepage: home } = JSON.parse(text) as { readonly homepage: string };
  return {
    home,
    rule: (name) => `${home}/rules/${name}.html`,
    cause: `${home}/guide/report.html`,
    code: (code) => `${home}/codes.html#${code}`,
  };
}
