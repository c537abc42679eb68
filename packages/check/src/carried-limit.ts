import { carriedLimit } from "./limits/carried.js";
import { type AllowedLength, allowedLength } from "./measured-length.js";
import type { OptionsOf } from "./options.js";

/**
 * How many picks a weft that rests is carried over at most; past that it is cut off and begun anew.
 * @example allowedCarry({ sett: { picksPerCm: 10 } }).threads // 25
 */
export function allowedCarry(options: OptionsOf): AllowedLength {
  return allowedLength(options, "pick", setLimit(options));
}

function setLimit({ limits = {} }: OptionsOf): { readonly threads?: number; readonly mm?: number } {
  const { carried: set } = limits;
  if (set === undefined) return carriedLimit.usual;
  const { mm, picks } = set;
  return { ...(picks !== undefined && { threads: picks }), ...(mm !== undefined && { mm }) };
}
