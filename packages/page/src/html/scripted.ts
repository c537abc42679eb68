import { escapeText } from "../drawing/escape.js";

/** What a page in one file that moves by a script is made of. */
export interface ScriptedPage {
  /** What stands in the head as its title, as plain text. */
  readonly title: string;
  /** The script, in one piece. */
  readonly script: string;
  /** Its hash, as a content security policy calls it by. */
  readonly scriptHash: string;
  /** The style, in one piece. */
  readonly style: string;
  /** Its hash; left out for a style that is put together, which is then let in as it is. */
  readonly styleHash?: string;
  /** What stands in the body, as HTML. */
  readonly body: string;
  /** What the script finds in the element with the id `plan`; left out where it needs nothing. */
  readonly data?: unknown;
}

/**
 * A page in one file that needs nothing else: one script, let in by its hash, one style, and a policy that lets nothing else
 * in and nothing out.
 * @param page what it is made of
 * @example scriptedPage({ title: "Moths & more", script: "", scriptHash: "sha256-x", style: "", body: "" }).includes("<title>Moths &amp; more</title>") // true
 */
export function scriptedPage({
  body,
  data,
  script,
  scriptHash,
  style,
  styleHash,
  title,
}: ScriptedPage): string {
  const styles = styleHash ?? "unsafe-inline";
  // No mark in the data can end them.
  const json = JSON.stringify(data)?.replaceAll("<", "\\u003c");
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src '${scriptHash}'; style-src '${styles}'; base-uri 'none'; form-action 'none'">
<title>${escapeText(title)}</title>
<style>${style}</style>
</head>
<body>
${body}
${json === undefined ? "" : `<script type="application/json" id="plan">${json}</script>\n`}<script>${script}</script>
</body>
</html>
`;
}
