import type { Recipe, Revision } from "@drawcord/files";
import { draftSize } from "@drawcord/units";

/**
 * The order of the yarns of the warp for another number of ends: an order that lies once over the warp has its longest stripe
 * made wider or narrower, so that the stripes along the edges stay where they are.
 */
export function stripesFor({ draft, warp }: Recipe, ends: number): Revision[] {
  const now = draftSize(draft).ends;
  if (warp.length !== now || ends === now) return [];
  const runs: { readonly yarn: string; ends: number }[] = [];
  for (const yarn of warp) {
    const last = runs.at(-1);
    if (last?.yarn === yarn) last.ends++;
    else runs.push({ yarn, ends: 1 });
  }
  const widest = runs.reduce((most, run) => (run.ends > most.ends ? run : most));
  widest.ends = Math.max(1, widest.ends + ends - now);
  const value = runs.map((run) => (run.ends === 1 ? run.yarn : `${run.yarn}*${run.ends}`)).join(" ");
  return [{ path: ["colours", "warp"], value }];
}
