import { scriptedPage } from "@drawcord/page";
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
  return scriptedPage({
    title: `${plan.title}: at the loom`,
    ...{ script, scriptHash, style, styleHash },
    data: plan,
    body: `<noscript><p>This page keeps your place with a script, and this browser runs none. Print the recipe as a sheet instead: it has every row.</p></noscript>
${skeleton}`,
  });
}
