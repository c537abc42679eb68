import { script, scriptHash, style, styleHash } from "../generated/follow.js";
import type { FollowPlan } from "../plan/types.js";
import { skeleton } from "./skeleton.js";

/**
 * A plan as one page for the loom that needs nothing else: one script and one style, each let in by its hash, and a policy
 * that lets nothing else in and nothing out.
 * @param plan the plan, as `followPlan` makes it
 * @example followPage(plan).startsWith("<!doctype html>") // true
 */
export function followPage(plan: FollowPlan): string {
  const title = escapeText(plan.title);
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src '${scriptHash}'; style-src '${styleHash}'; base-uri 'none'; form-action 'none'">
<title>${title}: at the loom</title>
<style>${style}</style>
</head>
<body>
<noscript><p>This page keeps your place with a script, and this browser runs none. Print the recipe as a sheet instead: it has every row.</p></noscript>
${skeleton}
<script type="application/json" id="plan">${inScript(plan)}</script>
<script>${script}</script>
</body>
</html>
`;
}

/** Data as text that no mark in it can end. */
function inScript(data: unknown): string {
  return JSON.stringify(data).replaceAll("<", "\\u003c");
}

function escapeText(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");
}
