import {
  type Drawdown,
  fibres,
  interlacing,
  type Project,
  type ProjectYarn,
  settByRoot,
  toMetric,
} from "@drawcord/yarn";

/** How close one system lies: its own sett, the closest of its yarn in the ground weave, and as share of it, in percent. */
export interface Closeness {
  readonly perCm: number;
  readonly closest: number;
  readonly share: number;
  /** Threads a cm that lie side by side without a weave between them. */
  readonly sideBySide: number;
}

/** How close the ends lie; undefined where sett, yarn or ground is not known. */
export function warpCloseness({ ground, sett, warp }: Project): Closeness | undefined {
  return sett === undefined ? undefined : closeness(toMetric(sett).value, warp, ground, "warp");
}

/** How close the picks of the ground weft lie; undefined where their sett, yarn or ground is not known. */
export function weftCloseness({ ground, pickSett, picks, wefts = [] }: Project): Closeness | undefined {
  const own = wefts.find(({ name }) => name === "weft");
  if (pickSett === undefined || own === undefined || picks === 0) return undefined;
  return closeness((toMetric(pickSett).value * own.picks) / picks, own, ground, "weft");
}

function closeness(
  perCm: number,
  yarn: ProjectYarn | undefined,
  ground: Drawdown | undefined,
  system: "warp" | "weft",
): Closeness | undefined {
  if (yarn?.yarn === undefined || ground === undefined) return undefined;
  const { fibre } = yarn;
  const known = fibre !== undefined && Object.hasOwn(fibres, fibre) ? { fibre } : {};
  const weave = interlacing(ground)[system];
  const closest = toMetric(settByRoot(yarn.yarn, weave, known)).value;
  const { intersections, threads } = weave;
  const sideBySide = (closest * (threads + intersections)) / threads;
  return { perCm, closest, share: (100 * perCm) / closest, sideBySide };
}
