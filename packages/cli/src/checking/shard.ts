import { CliError } from "../error.js";

/** One part of many: `2/8` is the second of eight. */
export interface Shard {
  readonly part: number;
  readonly parts: number;
}

/**
 * @throws {CliError} `bad-shard` for anything but two numbers, the first from 1 to the second
 * @example parseShard("2/8") // { part: 2, parts: 8 }
 */
export function parseShard(text: string): Shard {
  const [, part, parts] = /^(\d{1,9})\/(\d{1,9})$/.exec(text) ?? [];
  const shard = { part: Number(part), parts: Number(parts) };
  if (shard.part >= 1 && shard.part <= shard.parts) return shard;
  const sentence = `drawcord check: --shard takes a part such as 2/8, the second of eight, not "${text}"`;
  throw new CliError("bad-shard", sentence, { option: "shard", value: text });
}

/**
 * The items of one part. The parts follow one another, are as even as can be, and together are all items in their order.
 * @example shardOf({ part: 1, parts: 2 }, ["a", "b", "c"]) // ["a"]
 */
export function shardOf<T>({ part, parts }: Shard, items: readonly T[]): readonly T[] {
  const edge = (before: number) => Math.floor((before * items.length) / parts);
  return items.slice(edge(part - 1), edge(part));
}
