import type { Ground } from "../types.js";

type Pairs = { readonly pairs: readonly (readonly [number, number])[] };

/**
 * Which shafts of a ground can hang in pairs over damask pulleys: where one rises the other sinks, and the other way
 * round, and where one rests so does the other.
 * @returns the pairs, or why a shaft has no partner
 * @example pulleyPairs(groundFromWeave("broken twill")) // { pairs: [[1, 4], [2, 3]] }
 */
export function pulleyPairs(ground: Ground): Pairs | { readonly why: string } {
  const moves = Array.from({ length: ground.shafts }, (_, i) => movesOf(ground, i + 1));
  const pairs: [number, number][] = [];
  const hung = new Set<number>();
  for (let shaft = 1; shaft <= ground.shafts; shaft++) {
    const own = moves[shaft - 1]!;
    if (hung.has(shaft) || !/[+-]/.test(own)) continue;
    const opposite = own.replace(/[+-]/g, (move) => (move === "+" ? "-" : "+"));
    const partner =
      moves.findIndex((other, i) => other === opposite && !hung.has(i + 1) && i + 1 !== shaft) + 1;
    if (partner === 0) return { why: whyAlone(ground, shaft) };
    hung.add(shaft).add(partner);
    pairs.push([shaft, partner]);
  }
  return { pairs };
}

/** What a shaft does on each pick: `+` raised, `-` sunk, `0` at rest. */
function movesOf({ steps }: Ground, shaft: number): string {
  return steps
    .map(({ raise, sink }) => (raise.includes(shaft) ? "+" : sink.includes(shaft) ? "-" : "0"))
    .join("");
}

function whyAlone({ steps, shafts }: Ground, shaft: number): string {
  const rising = steps.find(({ raise }) => raise.includes(shaft));
  const sinking = steps.find(({ sink }) => sink.includes(shaft));
  const list = (numbers: readonly number[]) =>
    `${numbers.length > 1 ? "shafts" : "shaft"} ${numbers.join(", ")}`;
  const counted = steps.every(({ raise, sink }) => raise.length === 1 && sink.length === 1);
  if (rising && sinking && counted) {
    const [below] = rising.sink;
    const [above] = sinking.raise;
    return `${list([shaft])} rises where ${list([below!])} sinks, but sinks where ${list([above!])} rises; over a pulley it can have one partner only`;
  }
  return shafts % 2 === 1
    ? `${list([shaft])} of ${shafts} has no partner that sinks wherever it rises and rises wherever it sinks`
    : `${list([shaft])} has no partner that sinks wherever it rises and rises wherever it sinks`;
}
