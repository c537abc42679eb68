import {
  endsForWidth,
  type Plan,
  plan,
  type Quantity,
  toMetric,
  withSample,
  YarnError,
} from "@drawcord/yarn";
import { rulesOfNumbers } from "../number-rules.js";
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
  return {
    facts: sampled(facts),
    rules: rulesOfNumbers,
    of: (counted) => workOut(projectOfCloth(facts, counted)),
  };
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

function workOut(given: ProjectFacts): Numbers | YarnError {
  try {
    const worked = plan(given);
    const project: ProjectFacts = { ...given, ...withSample(given) };
    const { drawIn, shrinkage, width } = project;
    const { sett } = worked;
    const piecesOfWarp = warpGives(project, worked);
    return {
      project,
      worked,
      buy: given.onWarp === undefined ? worked.buy : plan(given.onWarp).buy,
      ...(piecesOfWarp !== undefined && { piecesOfWarp }),
      closeness: { warp: warpCloseness(project), weft: weftCloseness(project) },
      ...(width !== undefined &&
        sett !== undefined && {
          endsOfWidth: endsForWidth(width, sett, { drawIn, shrinkage: shrinkage?.width }).ends.value,
        }),
    };
  } catch (error) {
    if (error instanceof YarnError) return error;
    throw error;
  }
}

/** The pieces that a wound warp gives, of several designs in their order, and those that are wanted. */
function warpGives(project: ProjectFacts, worked: Plan): Numbers["piecesOfWarp"] {
  const { gaps, onWarp, pieces, sampling, warpLength, waste } = project;
  if (warpLength === undefined) return undefined;
  if (onWarp === undefined)
    return pieces === undefined ? undefined : { given: worked.pieces.value, wanted: pieces };
  const designs = plan(onWarp).woven;
  const wanted = designs.reduce((sum, { count }) => sum + count.value, 0);
  const long = (length: Quantity | undefined) => (length === undefined ? 0 : toMetric(length).value);
  // Between two pieces lies a gap, so that there is one fewer than pieces.
  let left = long(warpLength) - long(sampling) - long(waste) + long(gaps);
  let given = 0;
  for (const { count, warpOfPiece } of designs) {
    if (warpOfPiece === undefined) return undefined;
    const each = long(warpOfPiece) + long(gaps);
    const some = Math.min(count.value, Math.floor((left / each) * (1 + 1e-12)));
    given += Math.max(0, some);
    if (some < count.value) break;
    left -= some * each;
  }
  return { given, wanted };
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
