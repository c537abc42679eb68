/** Numbers that look thrown by dice, and come again for the same seed. */
export interface Dice {
  /**
   * A whole number from `least` to `most`.
   * @param least the least that may come
   * @param most the most that may come
   */
  readonly whole: (least: number, most: number) => number;
  /**
   * One of a list.
   * @param list what to take one of; not empty
   */
  readonly one: <T>(list: readonly T[]) => T;
  /**
   * A list in another order.
   * @param list what to put in another order; it stays as it is
   */
  readonly shuffled: <T>(list: readonly T[]) => readonly T[];
}

/**
 * Dice for a seed. The generator is mulberry32 (T. Ettinger; the constants from memory): good enough to set exercises.
 * @param seed a whole number
 * @example diceOf(7).whole(1, 6) === diceOf(7).whole(1, 6) // true
 */
export function diceOf(seed: number): Dice {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const whole = (least: number, most: number) => least + Math.floor(next() * (most - least + 1));
  const shuffled = <T>(list: readonly T[]) => {
    const left = [...list];
    return list.map(() => left.splice(whole(0, left.length - 1), 1)[0]!);
  };
  return { whole, one: (list) => list[whole(0, list.length - 1)]!, shuffled };
}
