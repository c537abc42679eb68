import type { Format } from "./format.js";

/** The names of the formats, in the order of the help. */
export const formatNames = ["pretty", "json", "ndjson", "sarif", "github", "markdown"] as const;

export type FormatName = (typeof formatNames)[number];

/** Loads one format, and none of the others. */
export async function loadFormat(name: FormatName): Promise<Format> {
  switch (name) {
    case "pretty":
      return (await import("./pretty.js")).pretty;
    case "json":
      return (await import("./json.js")).json;
    case "ndjson":
      return (await import("./json.js")).ndjson;
    case "sarif":
      return (await import("./sarif.js")).sarif;
    case "github":
      return (await import("./github.js")).github;
    case "markdown":
      return (await import("./markdown.js")).markdown;
  }
}
