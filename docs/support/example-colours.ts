import type { Example } from "@drawcord/check";
import type { UnitDraft } from "@drawcord/units";

type Options = NonNullable<Example["options"]>;

/**
 * A draft of as many ends as an order of yarns is laid over, in units of two ends.
 * @param draft of the example
 * @param options what it says of the yarns of the warp
 */
export function asWideAsOrder(draft: UnitDraft, { yarnOrders = [] }: Options): UnitDraft {
  const warp = yarnOrders.find(({ system }) => system === "warp");
  if (warp === undefined) return draft;
  const { threading } = draft;
  const units = Array.from({ length: warp.threads / 2 }, (_, unit) => threading[unit % threading.length]!);
  return { ...draft, unitEnds: 2, threading: units };
}

/**
 * The sections of a recipe that say which yarn lies where.
 * @param options what the example says of its yarns
 */
export function coloursText({ yarnOfPick, yarnOrders = [] }: Options): string {
  const orders = [
    ...yarnOrders.map(({ system, yarns }) => [system, yarns] as const),
    ...(yarnOfPick === undefined ? [] : [["weft", yarnOfPick] as const]),
  ];
  if (orders.length === 0) return "";
  const names = [...new Set(orders.flatMap(([, yarns]) => yarns))];
  return [
    "colours:",
    ...orders.map(([system, yarns]) => `  ${system}: ${yarns.join(" ")}`),
    "yarns:",
    ...names.map((name) => `  ${name}: { count: 30/2 Nm }`),
    "",
  ].join("\n");
}
