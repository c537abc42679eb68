import type { Finding } from "@drawcord/check";
import type { Path, Place, Recipe } from "@drawcord/files";

type PlaceIn = Recipe["place"];

/** What of a recipe tells where something stands in it. */
type Placing = Pick<Recipe, "place" | "rowPlaces" | "unitPlaces" | "waive">;

/**
 * Where in a recipe each finding can be mended: the row of the lift plan or the unit of the threading that it begins at,
 * else the nearest section that it is about.
 */
export function recipePlaces(findings: readonly Finding[], recipe: Placing): readonly (Place | null)[] {
  const partPlace = partPlaces(recipe);
  const known = new Map<string, Place | null>();
  const place: PlaceIn = (path) => {
    const key = JSON.stringify(path);
    if (!known.has(key)) known.set(key, recipe.place(path) ?? null);
    return known.get(key) ?? undefined;
  };
  return findings.map((finding) => {
    const part = partPlace(finding);
    if (part !== undefined) return part;
    for (const path of [...pathsOf(finding, recipe.waive), ["ground"]]) {
      const found = place(path);
      if (found !== undefined) return found;
    }
    return null;
  });
}

/** The places of rows and units, looked up in the text when the first finding asks for them. */
function partPlaces(recipe: Placing): (finding: Finding) => Place | undefined {
  let ofRows: readonly Place[] | undefined;
  let ofUnits: readonly Place[] | undefined;
  return (finding) => {
    const { rows, units } = finding;
    if (isOfLifts(finding) && rows !== undefined) {
      ofRows ??= recipe.rowPlaces();
      return ofRows[rows[0] - 1];
    }
    if (isOfThreading(finding) && units !== undefined) {
      ofUnits ??= recipe.unitPlaces();
      return ofUnits[units[0] - 1];
    }
    return undefined;
  };
}

/** Rules about the ground, the loom, or what the recipe says besides, wherever in the cloth they found something. */
const OF_OTHERS: readonly string[] = [
  "idle-shaft",
  "layers",
  "loom-capacity",
  "loose-thread",
  "open-cut",
  "stated-number",
  "unlike-sides",
  "unused-waiver",
];

function isOfLifts({ rows, rule }: Finding): boolean {
  return rows !== undefined && rule !== "threading-slip" && !OF_OTHERS.includes(rule);
}

function isOfThreading({ rows, rule, units }: Finding): boolean {
  if (rule === "threading-slip") return true;
  return units !== undefined && rows === undefined && !OF_OTHERS.includes(rule);
}

/** The sections that a finding may be about, the nearest first. */
function pathsOf(finding: Finding, waive: Recipe["waive"]): readonly Path[] {
  if (isOfLifts(finding)) return [["lifts"]];
  if (isOfThreading(finding)) return THREADING;
  switch (finding.rule) {
    case "loom-capacity":
      return [["loom", (finding.unit ?? "").replace(" ", "-")], ["loom"]];
    case "stated-number":
      return [["stated", finding.stated ?? ""], ["stated"]];
    case "unused-waiver":
      return [["waive", waive.findIndex((waiver) => isAbout(finding, waiver))], ["waive"]];
    case "idle-shaft":
      return finding.harness === "ground" ? [["ground", "threading"], ...GROUND] : THREADING;
    default:
      return GROUND;
  }
}

const THREADING: readonly Path[] = [["units", "threading"]];
const GROUND: readonly Path[] = [["ground", "weave"], ["ground", "steps"], ["ground"]];

/** Whether it is this waiver that a finding says matches nothing. */
function isAbout(finding: Finding, { ends, picks, rows, rule, units }: Recipe["waive"][number]): boolean {
  const told = [finding.waives, finding.ends, finding.picks, finding.units, finding.rows];
  return JSON.stringify(told) === JSON.stringify([rule, ends, picks, units, rows]);
}
