import type { Recipe } from "@drawcord/files";
import type { Document } from "@drawcord/page";
import { expand, printShafts } from "@drawcord/units";

/**
 * A list to tick at the loom while threading: every unit with its ends, their ground shafts and its handles, and the
 * selvedges at their sides.
 * @param recipe a recipe as `soundRecipe` gives it
 * @throws {UnitsError} for a draft that cannot be worked out
 * @example tickList(recipe).parts[0].name // "tick-list"
 */
export function tickList({ draft, title }: Recipe): Document {
  const { shaftOfEnd, unitOfEnd } = expand(draft);
  const groups: { readonly unit: number; readonly ends: number[] }[] = [];
  for (const [end, unit] of unitOfEnd.entries()) {
    const last = groups.at(-1);
    if (last?.unit === unit) last.ends.push(end);
    else groups.push({ unit, ends: [end] });
  }
  const rows = groups.map(({ ends, unit }, i) => {
    const hung = unit < 0 ? [] : draft.threading[unit]!;
    const place = unit >= 0 ? `${unit + 1}` : i === 0 ? "left selvedge" : "right selvedge";
    return [
      place,
      `${ends[0]! + 1}-${ends.at(-1)! + 1}`,
      ends.map((end) => shaftOfEnd[end]).join(" "),
      hung.length === 0 ? "none" : printShafts(hung),
      "",
    ];
  });
  return {
    title: `${title ?? "A cloth without a name"}: threading, to tick`,
    subtitle: `${shaftOfEnd.length} ends from the left, ${draft.threading.length} units`,
    parts: [
      {
        name: "tick-list",
        title: "Threading",
        blocks: [
          {
            kind: "table",
            id: "tick-list-units",
            caption: "A box a unit, ticked when its ends are through mail, heddle and reed",
            columns: [
              { title: "Unit", kind: "head" },
              { title: "Ends" },
              { title: "Shafts" },
              { title: "Handle" },
              { title: "Done", kind: "tick" },
            ],
            rows,
            band: 5,
            narrow: true,
          },
        ],
      },
    ],
  };
}
