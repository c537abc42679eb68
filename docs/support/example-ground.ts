import type { Example } from "@drawcord/check";
import type { UnitDraft } from "@drawcord/units";

type Options = NonNullable<Example["options"]>;

/**
 * A draft whose rows have picks as an example counts them: a third of the rows the second number.
 * @param draft of the example
 * @param options what it says of the ground's start
 */
export function withUnlikeRows(draft: UnitDraft, { groundStart }: Options): UnitDraft {
  if (groundStart === undefined) return draft;
  const [usual = 1, last = usual] = groundStart.rowPicks;
  return {
    ...draft,
    picksPerRow: draft.lifts.map((_, row) => (row % 3 === 2 ? last : usual)),
  };
}

/**
 * A recipe with its ground by the name that an example gives it.
 * @param text of the recipe
 * @param options what the example says of the ground's start
 */
export function withNamedGround(text: string, { groundStart }: Options): string {
  if (groundStart === undefined) return text;
  return text.replace(/^ground:\n(?: .*\n)*/m, `ground:\n  weave: ${groundStart.weave}\n`);
}
