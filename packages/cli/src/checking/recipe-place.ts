import type { Finding } from "@drawcord/check";
import type { Path, Place, Recipe } from "@drawcord/files";

type PlaceIn = Recipe["place"];

/**
 * Where in a recipe each finding can be mended: the row of the lift plan where the rows are listed one by one, else the
 * nearest section that the finding is about.
 */
export function recipePlaces(
  findings: readonly Finding[],
  recipe: Pick<Recipe, "place" | "draft" | "waive">,
): readonly (Place | null)[] {
  const known = new Map<string, Place | null>();
  const place: PlaceIn = (path) => {
    const key = JSON.stringify(path);
    if (!known.has(key)) known.set(key, recipe.place(path) ?? null);
    return known.get(key) ?? undefined;
  };
  const rows = recipe.draft.lifts.length;
  const listed = place(["lifts", "rows", rows - 1]) !== undefined && !place(["lifts", "rows", rows]);
  return findings.map((finding) => {
    for (const path of [...pathsOf(finding, recipe.waive, listed), ["ground"]]) {
      const found = place(path);
      if (found !== undefined) return found;
    }
    return null;
  });
}

/** The sections that a finding may be about, the nearest first. */
function pathsOf(finding: Finding, waive: Recipe["waive"], listed: boolean): readonly Path[] {
  const { rule, rows, unit = "", units } = finding;
  const row = rows === undefined || !listed ? [] : [["lifts", "rows", rows[0] - 1]];
  const lifts = [...row, ["lifts", "order"], ["lifts", "rows"], ["lifts", "picture"]];
  const threading = [["units", "threading"]];
  switch (rule) {
    case "open-cut":
    case "layers":
    case "loose-thread":
    case "unlike-sides":
      return GROUND;
    case "loom-capacity":
      return [["loom", unit.replace(" ", "-")], ["loom"]];
    case "stated-number":
      return [["stated", finding.stated ?? ""], ["stated"]];
    case "unused-waiver":
      return [["waive", waive.findIndex((waiver) => isAbout(finding, waiver))], ["waive"]];
    case "threading-slip":
      return threading;
    case "idle-shaft":
      return finding.harness === "ground" ? [["ground", "threading"], ...GROUND] : threading;
    default:
      if (rows !== undefined) return lifts;
      return units === undefined ? GROUND : threading;
  }
}

const GROUND: readonly Path[] = [["ground", "weave"], ["ground", "steps"], ["ground"]];

/** Whether it is this waiver that a finding says matches nothing. */
function isAbout(finding: Finding, { ends, picks, rows, rule, units }: Recipe["waive"][number]): boolean {
  const told = [finding.waives, finding.ends, finding.picks, finding.units, finding.rows];
  return JSON.stringify(told) === JSON.stringify([rule, ends, picks, units, rows]);
}
