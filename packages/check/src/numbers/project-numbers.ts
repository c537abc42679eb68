import { endsForWidth, plan, withSample, YarnError } from "@drawcord/yarn";
import { warpCloseness, weftCloseness } from "./closeness.js";
import type { Counted, Numbers, ProjectFacts, ProjectNumbers } from "./project.js";

/**
 * What is said of a project, for the rules of numbers that agree. It brings the formulas of `@drawcord/yarn` along, so a check
 * of the cloth alone does without.
 * @param facts what the project says; what follows from the draft (ends, picks, units, lingos, picks of each weft) is
 * counted anew in the cloth
 * @example check(draft, { project: projectNumbers({ ends: 0, picks: 0, sett: parseQuantity("9 per cm") }) }).ok // true
 */
export function projectNumbers(facts: ProjectFacts): ProjectNumbers {
  return { facts: sampled(facts), of: (counted) => workOut(projectOfCloth(facts, counted)) };
}

/** With what a sample tells; as it is where its measures cannot be, which the numbers then say. */
function sampled(facts: ProjectFacts): ProjectFacts {
  try {
    return { ...facts, ...withSample(facts) };
  } catch (error) {
    if (error instanceof YarnError) return facts;
    throw error;
  }
}

function workOut(given: ProjectFacts): Numbers | string {
  try {
    const worked = plan(given);
    const project: ProjectFacts = { ...given, ...withSample(given) };
    const { drawIn, shrinkage, width } = project;
    const { sett } = worked;
    return {
      project,
      worked,
      closeness: { warp: warpCloseness(project), weft: weftCloseness(project) },
      ...(width !== undefined &&
        sett !== undefined && {
          endsOfWidth: endsForWidth(width, sett, { drawIn, shrinkage: shrinkage?.width }).ends.value,
        }),
    };
  } catch (error) {
    if (error instanceof YarnError) return error.message;
    throw error;
  }
}

/** What is said of a project, with what is counted counted in the cloth itself. */
function projectOfCloth(facts: ProjectFacts, { ends, picks, picksOf, units }: Counted): ProjectFacts {
  const wefts = facts.wefts?.flatMap((one) => {
    const woven = picksOf(one.name);
    return woven === 0 ? [] : [{ ...one, picks: woven }];
  });
  return {
    ...facts,
    ends,
    picks,
    ...(units !== undefined && { units, lingos: units }),
    ...(wefts !== undefined && { wefts }),
  };
}
