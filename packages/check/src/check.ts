import { step, type Watched } from "@drawcord/base";
import { type BitGrid, needGrid } from "@drawcord/grid";
import { draftSize, type Expansion, expand, expansionFromData, type UnitDraft } from "@drawcord/units";
import type { YarnError } from "@drawcord/yarn";
import { checkOptions } from "./check-options.js";
import { CheckError } from "./error.js";
import type { CheckOptions, Report } from "./finding.js";
import { measureDraft, measurePlain } from "./measure/measure.js";
import { countedIn } from "./numbers/counted.js";
import type { Numbers } from "./numbers/project.js";
import { reportOf } from "./report-of.js";
import { rules } from "./rules.js";
import { drawdownOfDraft } from "./shaft-draft/drawdown.js";
import { settOf } from "./shaft-draft/sett.js";
import type { ShaftDraft } from "./shaft-draft/types.js";

/** What is known of a draft already, and how its check is watched: `progress` is told of each rule that has looked. */
export interface CheckRun extends Watched {
  /** The cloth of the draft, as `expand` gave it or as a clone of that; default: it is worked out. */
  readonly expansion?: Expansion | undefined;
}

/**
 * Works a draft out to every end and pick, measures the cloth, and lets every rule look at it.
 * @param draft the draft
 * @param options how it is to be checked
 * @param run what is known already, and how the check is watched
 * @throws {CheckError} `bad-sett`, `bad-limit`, `bad-level`, `bad-repeat`, `unknown-rule` for options that cannot be meant
 * @throws {UnitsError} for a draft that cannot be worked out
 * @throws {CheckError} `unlike-size` for an expansion that is of another draft
 * @throws {StoppedError} `stopped` when its signal says so
 * @example check(draft).ok // true
 */
export function check(draft: UnitDraft, options: CheckOptions = {}, run: CheckRun = {}): Report {
  checkOptions(options);
  const worked = run.expansion === undefined ? expand(draft) : given(run.expansion, draft);
  step(run, 0, rules.length);
  const cloth = measureDraft(draft, worked, options);
  const { project } = options;
  if (project === undefined) return reportOf(cloth, rules, run);
  let found: Numbers | YarnError | undefined;
  const numbers = (): Numbers | YarnError => {
    found ??= project.of(countedIn(cloth));
    return found;
  };
  return reportOf({ ...cloth, numbers }, rules, run);
}

/**
 * Measures a drawdown (picks x ends, pick 1 in row 0) of which no plan is known, and lets the rules look at it that need
 * none; the report names the others. What is drawn is inferred from the face, and the report says how sure that is.
 * @param drawdown picks x ends, pick 1 in row 0
 * @param options sett, limits, levels and the rest; each has its default
 * @throws {CheckError} as `check`
 * @example checkGrid(fromText("#.#.\n.#.#")).integrity.layers // 1
 */
export function checkGrid(drawdown: BitGrid, options: CheckOptions = {}): Report {
  needGrid(drawdown);
  checkOptions(options);
  return reportOf(measurePlain(drawdown, options), rules);
}

/**
 * Checks a plain draft: its cloth as `checkGrid` does, at the sett that its spacing gives, and its plan by the rules for it.
 * @param draft a draft as `soundWif` gives it
 * @param options sett, limits, levels and the rest; each has its default
 * @throws {CheckError} as `check`
 * @example checkShaftDraft(shaftDraft).ok // true
 */
export function checkShaftDraft(draft: ShaftDraft, options: CheckOptions = {}): Report {
  checkOptions(options);
  const { colours } = draft.weft;
  const cloth = measurePlain(drawdownOfDraft(draft), {
    ...(colours && { yarnOfPick: colours }),
    ...options,
    sett: { ...settOf(draft), ...options.sett },
  });
  return reportOf({ ...cloth, shaftDraft: draft }, rules);
}

/** An expansion that is there, if it can be of the draft. */
function given(expansion: Expansion, draft: UnitDraft): Expansion {
  const { drawdown } = expansion;
  const { ends, picks } = draftSize(draft);
  if (drawdown.columns === ends && drawdown.rows === picks) return expansionFromData(expansion);
  throw new CheckError(
    "unlike-size",
    `the expansion has ${drawdown.columns} ends and ${drawdown.rows} picks; its draft has ${ends} and ${picks}`,
    { ends: drawdown.columns, picks: drawdown.rows },
  );
}
