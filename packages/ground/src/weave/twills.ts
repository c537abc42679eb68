import { compareLists } from "../arithmetic.js";
import { GroundError } from "../error.js";
import { soundCount } from "../size.js";
import { type Ratio, ratioOf } from "./ratio.js";

/** Which twills count as one. */
export interface TwillsOptions {
  /** A twill, its other face, and the two ways to read its ratio all count as one; by default each stands for itself. */
  readonly upToFace?: boolean;
}

/** Above so many ends the twills are too many to list. */
const MOST_ENDS = 16;

/**
 * The twills on just `ends` ends: every ratio that does not repeat on fewer, begun anywhere, of either face.
 * @param ends ends of a repeat, from 2 to 16
 * @param options whether a twill and its other face count as one; by default each stands for itself
 * @returns ratios, those with the fewest intersections first
 * @throws {GroundError} `bad-size` below 2 ends, `too-large` above 16
 * Source: J. T. Taylor, Cotton Weaving and Designing, 1909, pp. 219-222. Their number is OEIS A001037; up to face, A000046.
 * @example twillsOn(4) // [[1, 3], [2, 2], [3, 1]]
 */
export function twillsOn(ends: number, { upToFace = false }: TwillsOptions = {}): Ratio[] {
  const n = soundCount(ends, "the number of ends of a twill", 2);
  if (n > MOST_ENDS) {
    throw new GroundError(
      "too-large",
      `the twills on ${n} ends are too many to list; ${MOST_ENDS} ends are the most`,
      {
        ends: n,
        most: MOST_ENDS,
      },
    );
  }
  const full = 2 ** n - 1;
  const listed: number[] = [];
  for (let raised = 1; raised < full; raised++) {
    const rounds = roundsOf(raised, n);
    if (rounds.length < n) continue;
    const alike = upToFace
      ? [
          ...rounds,
          ...roundsOf(full - raised, n),
          ...roundsOf(reversed(raised, n), n),
          ...roundsOf(full - reversed(raised, n), n),
        ]
      : rounds;
    if (alike.every((other) => raised <= other)) listed.push(raised);
  }
  return listed
    .map((raised) => ratioOf(Array.from({ length: n }, (_, end) => ((raised >>> end) & 1) === 1)))
    .sort((a, b) => a.length - b.length || compareLists(a, b));
}

/** A round of raised and lowered ends, as bits, begun at each end; as many as differ. */
function roundsOf(raised: number, n: number): number[] {
  const rounds = [raised];
  const on = (round: number) => (round >>> 1) | ((round & 1) << (n - 1));
  for (let next = on(raised); next !== raised; next = on(next)) rounds.push(next);
  return rounds;
}

function reversed(raised: number, n: number): number {
  let back = 0;
  for (let end = 0; end < n; end++) back |= ((raised >>> end) & 1) << (n - 1 - end);
  return back;
}
