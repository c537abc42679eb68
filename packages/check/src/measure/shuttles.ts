import type { Cloth, Shuttle } from "../cloth.js";
import type { OptionsOf } from "../options.js";
import type { Side } from "../put-together.js";

/** The weft of picks whose step names none. */
const GROUND_WEFT = "weft";

/** The shuttles of a cloth: one for each yarn of each weft. */
export function shuttlesOf(
  { weftOfPick, wefts }: Pick<Cloth, "weftOfPick" | "wefts">,
  { yarnOfPick = [] }: OptionsOf,
): Pick<Cloth, "shuttles" | "shuttleOfPick"> {
  const shuttles: Shuttle[] = [];
  const known = new Map<string, number>();
  const shuttleOfPick = weftOfPick.map((weft, pick) => {
    const name = yarnOfPick[pick % yarnOfPick.length] ?? (wefts[weft] || GROUND_WEFT);
    const key = `${weft} ${name}`;
    const shuttle = known.get(key) ?? shuttles.push({ weft, name }) - 1;
    known.set(key, shuttle);
    return shuttle;
  });
  return { shuttles, shuttleOfPick };
}

/** The side from which a shuttle is first thrown: by its yarn, its weft, or as all are. */
export function firstSide({ name, weft }: Shuttle, { options, wefts }: Cloth): Side {
  const { firstPickFrom = "left", firstPickOf = {} } = options;
  return firstPickOf[name] ?? firstPickOf[wefts[weft] || GROUND_WEFT] ?? firstPickFrom;
}
