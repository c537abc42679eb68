import type { Example } from "@drawcord/check";
import { printLifts, printShafts, type UnitDraft } from "@drawcord/units";
import { quantity } from "@drawcord/yarn";

type Options = NonNullable<Example["options"]>;
type Woven = NonNullable<Options["woven"]>;

/** Picks in a centimetre, where a length is to come out in rows. */
const PICKS = 10;

/**
 * What an example says of its cloth that makes a block fill it.
 * @param draft of the example
 * @param woven its weaving order
 */
export function filledLength(draft: UnitDraft, { order, over }: Woven) {
  if (order.some(({ changes }) => changes.length > 0)) return {};
  const rows = draft.lifts.length + over;
  const picks = typeof draft.picksPerRow === "number" ? draft.picksPerRow : 1;
  return {
    pickSett: quantity(PICKS, "per cm"),
    length: quantity((rows * picks) / PICKS, "cm"),
    shrinkage: { width: quantity(0, "%"), length: quantity(0, "%") },
  };
}

/**
 * A recipe whose lifts are put together of blocks in a weaving order.
 * @param text of the recipe, with its rows
 * @param draft of the example
 * @param woven its weaving order
 */
export function inBlocks(text: string, draft: UnitDraft, { blocks, order }: Woven): string {
  const isFilled = order.every(({ changes }) => changes.length === 0);
  const rowsOf = (name: string) => printLifts(isFilled ? draft.lifts : blocks[name]!);
  const lines = [
    "lifts:",
    `  picks: ${typeof draft.picksPerRow === "number" ? draft.picksPerRow : 1}`,
    "  blocks:",
    ...Object.keys(blocks).map((name) => `    ${name}: { rows: ${JSON.stringify(rowsOf(name))} }`),
    `  order: ${JSON.stringify(order.map(lineOf))}`,
    "",
  ];
  return text.replace(/^lifts:\n(?: .*\n)*/m, lines.join("\n"));
}

function lineOf({ block, changes }: Woven["order"][number]): string {
  if (changes.length === 0) return `${block}*fill`;
  const words = changes.map((change) =>
    "on" in change && change.on !== undefined
      ? `${change.change} on ${printShafts(change.on)}`
      : change.change,
  );
  return [block, ...words].join(" ");
}
