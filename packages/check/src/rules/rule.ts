import type { UnitDraft } from "@drawcord/units";
import type { Cloth } from "../cloth.js";
import type { CheckOptions } from "../options.js";
import type { Finding, Severity } from "../report.js";

/** What a rule finds: a finding without the rule's name, its weight and its sentence. */
export type Fact = Omit<Finding, "rule" | "severity" | "message">;

/** A small cloth that shows a rule: a draft, or a drawdown as text (the first pick on the lowest line). */
export interface Example {
  /** One clause: what it is. */
  readonly title: string;
  readonly cloth: UnitDraft | string;
  readonly options?: CheckOptions;
}

/** A rule of the checker: its data, its words and the function that looks. */
export interface Rule {
  readonly name: string;
  readonly severity: Severity;
  /** One line: what it finds. */
  readonly summary: string;
  /** What a finding says of the cloth. */
  readonly meaning: string;
  /** Why it matters at the loom and in use. */
  readonly reason: string;
  /** What to do about it. */
  readonly mend: string;
  /** How the weaver sets the rule's limit in her recipe, and what holds when she sets none; left out where it has no limit. */
  readonly limit?: string;
  /** Where the rule comes from. */
  readonly source: string;
  readonly examples: { readonly passes: readonly Example[]; readonly fails: readonly Example[] };
  /** Why the rule cannot look at this cloth, as a clause; nothing when it can. */
  readonly cannot?: (cloth: Cloth) => string | undefined;
  /** Looks at a cloth; `found` is what the rules before it have found. */
  readonly find: (cloth: Cloth, found: readonly Finding[]) => Iterable<Fact>;
  /** Whether the rule's sentence names its place itself; default false, and the place is added to it. */
  readonly saysPlace?: boolean;
  /** The sentence of a finding: lower case, without a full stop. */
  readonly say: (fact: Fact, cloth: Cloth) => string;
}

/** Why a rule of units and lifts does not look at a cloth that has none. */
export const NO_PLAN = "a plain draft has no units and no lift plan";

/** Why a rule without a usual limit does not look before the weaver has set hers. */
export const NO_LIMIT = "no limit is set";
