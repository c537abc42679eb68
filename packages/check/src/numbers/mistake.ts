import type { Sentence } from "@drawcord/base";
/** A mistake that gives just the wrong number that stands in a recipe, as data: its kind, and what that leaves open. */
export type Mistake =
  | {
      /** Which mistake it is. */
      readonly mistake: PlainMistake;
    }
  /** Another number of the cloth was counted: its name, and that of the number meant. */
  | {
      /** Which mistake it is. */
      readonly mistake: "other-count";
      /** The number that was counted, as a plan calls it. */
      readonly counted: string;
      /** The number that was meant, by its name. */
      readonly meant: string;
    }
  /** Another number of the plan was written: its name, and what a plan calls it. */
  | {
      /** Which mistake it is. */
      readonly mistake: "other-number";
      /** The number that was written, by its name. */
      readonly number: string;
      /** What a plan calls it. */
      readonly title: string;
    }
  /** Another number of ends goes into every dent. */
  | {
      /** Which mistake it is. */
      readonly mistake: "other-sley";
      /** The ends that were meant in a dent. */
      readonly ends: number;
    };

type PlainMistake = keyof typeof plainMistakes;

/** The clauses of those that are told by their kind alone. */
const plainMistakes = {
  "inches-for-centimetres": () => "inches were taken for centimetres",
  "centimetres-for-inches": () => "centimetres were taken for inches",
  "centimetres-for-millimetres": () => "centimetres were taken for millimetres",
  "millimetres-for-centimetres": () => "millimetres were taken for centimetres",
  "inches-and-centimetres": () => "inches were taken for centimetres, or the other way round",
  "finished-length-for-woven": () => "the finished and the woven length were taken for one another",
  "finished-width-for-reed": () => "the finished width and the width in the reed were taken for one another",
  "hems-left-out": () => "the hems were left out",
  "hems-twice": () => "the hems were taken off twice",
  "draw-in-forgotten": () => "the draw-in was forgotten",
  "inch-for-ten-centimetres": () => "dents in an inch and in 10 cm were taken for one another",
  "wash-forgotten": () => "the wash was forgotten",
  "picks-for-rows": () => "picks were taken for rows",
  "rows-for-picks": () => "rows were taken for picks",
  "units-for-ends": () => "units were taken for ends",
  "dents-for-ends": () => "the dents of the reed were taken for ends",
  "selvedges-left-out": () => "the selvedges were left out",
  "selvedges-twice": () => "the selvedges were counted twice",
  "selvedges-counted": () => "the selvedges were counted",
  "draw-in-twice": () => "the draw-in was taken twice",
  "draw-in-added-twice": () => "the draw-in was added twice",
  "shrinkage-twice": () => "the shrinkage was taken twice",
} as const satisfies Readonly<Record<string, () => string>>;

/**
 * A clause for each kind of mistake.
 */
export type MistakeSentences = {
  readonly [Kind in Mistake["mistake"]]: Sentence<
    Extract<
      Mistake,
      {
        /** Which mistake it is. */
        readonly mistake: Kind;
      }
    >
  >;
};

/** The clauses of mistakes in English, by their kind, to follow `it looks as if`. */
export const mistakeSentences: MistakeSentences = /* @__PURE__ */ (() => ({
  ...plainMistakes,
  "other-count": ({ counted, meant }) => `the ${counted} were taken for ${meant.replaceAll("-", " ")}`,
  "other-number": ({ title }) => `the ${title} was written`,
  "other-sley": ({ ends }) => `${ends} in every dent ${ends === 1 ? "was" : "were"} meant`,
}))();

/**
 * The clause of a mistake from its data alone, to follow `it looks as if`.
 * @param mistake a mistake as a finding has it
 * @param sentences a clause for every kind; default: English
 * @example sayMistake({ mistake: "draw-in-twice" }) // "the draw-in was taken twice"
 */
export function sayMistake(mistake: Mistake, sentences: MistakeSentences = mistakeSentences): string {
  // Each clause is asked for its own kind, which the type of the table cannot follow.
  return (sentences[mistake.mistake] as (of: Mistake) => string)(mistake);
}

/** The words for a likely mistake, to follow a sentence; nothing where there is none. */
export function because(mistake: Mistake | undefined): string {
  return mistake === undefined ? "" : `; it looks as if ${sayMistake(mistake)}`;
}
