import type { Block } from "@drawcord/page";
import { assumptions } from "@drawcord/yarn";
import type { SheetPart } from "../part-names.js";
import { numberedResults } from "../working/numbered.js";
import { workingBlock } from "../working/working-block.js";
import type { Context } from "./context.js";
import { given } from "./given.js";
import { projectNumbersTable } from "./project-numbers.js";

/** The working of every number of the project, each after those it rests on; a part without blocks where there is none. */
export function workingPart(context: Context): SheetPart {
  const { plan, options, print } = context;
  const results = numberedResults(plan);
  const lead: Block = {
    kind: "paragraph",
    tone: "lead",
    text: "Each number of the project: the formula, the formula with its numbers, the result, and where the formula is from. The tables give the number of the working, and a working those that it rests on.",
  };
  const rounding: Block = {
    kind: "paragraph",
    tone: "note",
    text: "Numbers enter with up to six figures and shares such as take-up as hundredths; a result has as many figures, five at the most, as a pocket calculator gives from the numbers printed, and a half is rounded up. Where units change, the factor stands between. What is said elsewhere on the sheet is rounded once more, as a weaver measures: to a millimetre or an eighth of an inch, from a metre on to a centimetre, from two yards on to an inch, and weights to a gram or a tenth of an ounce.",
  };
  return {
    name: "working",
    title: "How each number was found",
    blocks:
      results.list.length === 0
        ? []
        : [
            lead,
            rounding,
            given(context),
            projectNumbersTable(plan, print, results, options.units),
            ...assumed(context),
            ...results.list.map((one) => workingBlock(one, results, options.units)),
          ],
  };
}

/** What the recipe does not say and the trade has a usual value for. */
function assumed({ plan, print }: Context): Block[] {
  const list = assumptions(plan).map(({ meaning, value, why }) => `${meaning}, ${print(value)} (${why})`);
  return list.length === 0 ? [] : [{ kind: "paragraph", tone: "note", text: `Assumed: ${list.join("; ")}.` }];
}
