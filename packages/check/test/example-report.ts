import { fromText } from "@drawcord/grid";
import {
  type CheckOptions,
  check,
  checkGrid,
  checkShaftDraft,
  type Example,
  exampleFacts,
  projectNumbers,
  type Report,
} from "../src/index.js";

/** The report of an example of a rule. */
export function exampleReport({ cloth, options: asked = {}, project }: Example): Report {
  const options: CheckOptions = {
    ...(asked as CheckOptions),
    ...(project && { project: projectNumbers(exampleFacts(project)) }),
  };
  if (typeof cloth === "string") return checkGrid(fromText(cloth), options);
  return "shafts" in cloth ? checkShaftDraft(cloth, options) : check(cloth, options);
}
