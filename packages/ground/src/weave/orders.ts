import { commonDivisor, modulo, sum, upTo } from "../arithmetic.js";
import { GroundError } from "../error.js";
import { repeatLength, soundCount } from "../size.js";

/**
 * Straight order: 1, 2, ... n.
 * @param n how many shafts, from 1
 * @example straight(4) // [1, 2, 3, 4]
 */
export function straight(n: number): number[] {
  return upTo(soundCount(n, "the number of shafts")).map((i) => i + 1);
}

/**
 * Pointed order: up and down again, the turning shafts once each; 2n - 2 places.
 * @param n how many shafts, from 2
 * @throws {GroundError} `bad-size` below 2
 * @example pointed(4) // [1, 2, 3, 4, 3, 2]
 */
export function pointed(n: number): number[] {
  const up = straight(soundCount(n, "the number of shafts in a pointed order", 2));
  return [...up, ...up.slice(1, -1).reverse()];
}

/**
 * Undulating order: each place moves on by the next of `moves`, begun again until the order closes on itself.
 * A move of 0 repeats the shaft, so the line of the twill steepens; a greater move lays it flat.
 * @param n how many shafts, from 1
 * @param moves by how many shafts each place moves on, begun again at the end
 * @throws {GroundError} `bad-order` without moves; `too-large` for more than 1024 places
 * @example undulating(4, [1, 1, 0]) // [1, 2, 3, 3, 4, 1]
 */
export function undulating(n: number, moves: readonly number[]): number[] {
  if (moves.length === 0) throw new GroundError("bad-order", "an undulating order needs at least one move");
  const rounds = n / commonDivisor(sum(moves), n);
  const length = repeatLength(rounds * moves.length, "an undulating order of these moves");
  const order: number[] = [];
  let at = 0;
  for (let i = 0; i < length; i++) {
    order.push(modulo(at, n) + 1);
    at += moves[i % moves.length]!;
  }
  return order;
}

/**
 * Herringbone: `after` places up, then as many down, each turn broken by half the shafts so that floats are cut there.
 * 2 x `after` places.
 * @param n how many shafts, from 1
 * @param after places before the order turns, from 2
 * @throws {GroundError} `bad-size` when `after` is below 2; `too-large` for more than 1024 places
 * Common practice.
 * @example herringbone(4, 4) // [1, 2, 3, 4, 2, 1, 4, 3]
 */
export function herringbone(n: number, after: number): number[] {
  repeatLength(2 * soundCount(after, "the ends before a herringbone turns", 2), "a herringbone");
  const up = upTo(after);
  const half = Math.floor(n / 2);
  return [...up, ...up.map((i) => i + half).reverse()].map((place) => modulo(place, n) + 1);
}

/**
 * Broken by halves: the first half straight, the second half back to front; n places.
 * @param n how many shafts, from 3
 * Source: J. T. Taylor, Cotton Weaving and Designing, 1909, p. 224 (the broken twill on 4 ends).
 * @example brokenByHalves(4) // [1, 2, 4, 3]
 */
export function brokenByHalves(n: number): number[] {
  const order = straight(soundCount(n, "the number of shafts of a broken twill", 3));
  const half = Math.ceil(n / 2);
  return [...order.slice(0, half), ...order.slice(half).reverse()];
}

/**
 * Broken by fourths: each second fourth back to front; n places.
 * @param n how many shafts, a multiple of 4 from 8
 * @throws {GroundError} `bad-size` when n is not divisible by 4, or is 4
 * Common practice.
 * @example brokenByFourths(8) // [1, 2, 4, 3, 5, 6, 8, 7]
 */
export function brokenByFourths(n: number): number[] {
  if (n % 4 !== 0 || n < 8) {
    throw new GroundError("bad-size", `${n} ends do not break by fourths; 8, 12, 16 and so on do`, {
      ends: n,
    });
  }
  const fourth = n / 4;
  return [0, 1, 2, 3].flatMap((i) => {
    const part = upTo(fourth).map((k) => i * fourth + k + 1);
    return i % 2 === 0 ? part : part.reverse();
  });
}

/**
 * Broken by skipping: `take` shafts straight on, then `skip` left out, until the order closes on itself.
 * @param n how many shafts, from 1
 * @param take shafts taken straight on, from 1
 * @param skip shafts left out after them, from 1
 * @throws {GroundError} `bad-size` when `take` or `skip` is below 1; `too-large` for more than 1024 places
 * Common practice.
 * @example brokenBySkipping(4, 2, 1) // [1, 2, 4, 1, 3, 4, 2, 3]
 */
export function brokenBySkipping(n: number, take: number, skip: number): number[] {
  const move = soundCount(take, "the ends taken") + soundCount(skip, "the ends skipped");
  const rounds = n / commonDivisor(move, n);
  repeatLength(rounds * take, `a twill broken by taking ${take} and skipping ${skip}`);
  return upTo(rounds).flatMap((round) => upTo(take).map((i) => modulo(round * move + i, n) + 1));
}
