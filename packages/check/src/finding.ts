/** What callers get, by the names of the rules that there are. */
import type { OptionsOf, WaiverOf } from "./options.js";
import type { ReportOf } from "./report.js";
import type { FindingOf } from "./rules/rule.js";
import type { rules } from "./rules.js";

type AnyRule = (typeof rules)[number];

/** The name of a rule. */
export type RuleName = AnyRule["name"];

/** One fault of the cloth or of its plan, as data; `rule` tells what it says besides. */
export type Finding = FindingOf<AnyRule>;

/** What the checker measured and found of one cloth. */
export interface Report extends ReportOf<Finding> {}

/** How a cloth is to be checked. */
export interface CheckOptions extends OptionsOf<RuleName> {}

/** A finding that the weaver accepts, with her reason; in a recipe as it was read, of a rule by whatever name. */
export interface Waiver<Name extends string = RuleName> extends WaiverOf<Name> {}
