import type { Cloth } from "./cloth.js";
import { allowedFloat } from "./float-limit.js";
import type { AllowedLength } from "./measured-length.js";

/** A weft, or a yarn of it that has a limit of its own, with the float allowed of it. */
export interface WeftAllowance {
  /** Its name; empty of the ground weft. */
  readonly name: string;
  /** The longest float allowed of it. */
  readonly allowed: AllowedLength;
  /**
   * Whether a pick is of it.
   * @param pick the pick, from 0
   */
  readonly has: (pick: number) => boolean;
}

/**
 * The floats allowed along the picks: each weft once, and each of its yarns that has a limit by its own name apart.
 * @param cloth a cloth that was measured
 * @example weftAllowances(measureDraft(draft, expand(draft), {})).map(({ name }) => name) // [""]
 */
export function weftAllowances(
  cloth: Pick<Cloth, "options" | "shuttleOfPick" | "shuttles" | "weftOfPick" | "wefts">,
): readonly WeftAllowance[] {
  const { options, shuttleOfPick, shuttles, weftOfPick, wefts } = cloth;
  const named = options.limits?.floatOfWeft ?? {};
  return wefts.flatMap((weft, index) => {
    const apart = shuttles.flatMap(({ name, weft: of }, shuttle) =>
      of === index && name !== weft && Object.hasOwn(named, name) ? [{ name, shuttle }] : [],
    );
    const isApart = new Set(apart.map(({ shuttle }) => shuttle));
    return [
      {
        name: weft,
        allowed: allowedFloat(options, "weft", weft),
        has: (pick: number) => weftOfPick[pick] === index && !isApart.has(shuttleOfPick[pick]!),
      },
      ...apart.map(({ name, shuttle }) => ({
        name,
        allowed: allowedFloat(options, "weft", name),
        has: (pick: number) => shuttleOfPick[pick] === shuttle,
      })),
    ];
  });
}
