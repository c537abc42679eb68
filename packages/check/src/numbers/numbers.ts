import { plan, YarnError } from "@drawcord/yarn";
import type { Cloth, Numbers } from "../cloth.js";
import type { ProjectFacts } from "../options.js";

/** The numbers of a cloth's project, worked out when a rule first asks; a sentence where they cannot be. */
export function numbersOf(cloth: Cloth, facts: ProjectFacts): () => Numbers | string {
  let found: Numbers | string | undefined;
  return () => {
    found ??= workOut(projectOfCloth(cloth, facts));
    return found;
  };
}

function workOut(project: ProjectFacts): Numbers | string {
  try {
    return { project, worked: plan(project) };
  } catch (error) {
    if (error instanceof YarnError) return error.message;
    throw error;
  }
}

/** What is said of a project, with what is counted counted in the cloth itself. */
function projectOfCloth(
  { plan: draft, warp, weft, weftOfPick, wefts }: Cloth,
  facts: ProjectFacts,
): ProjectFacts {
  const picks = new Int32Array(wefts.length);
  for (const of of weftOfPick) picks[of]!++;
  const units = draft?.draft.threading.length;
  const counted = facts.wefts?.flatMap((one) => {
    const place = wefts.indexOf(one.name === GROUND_WEFT ? "" : one.name);
    return place < 0 || picks[place] === 0 ? [] : [{ ...one, picks: picks[place]! }];
  });
  return {
    ...facts,
    ends: warp.count,
    picks: weft.count,
    ...(units !== undefined && { units, lingos: units }),
    ...(counted !== undefined && { wefts: counted }),
  };
}

/** The weft of picks whose step names none. */
const GROUND_WEFT = "weft";
