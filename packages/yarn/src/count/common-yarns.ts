import type { FibreName } from "./fibres.js";

/** A yarn that weavers buy. */
export interface CommonYarn {
  /** What it is spun of. */
  readonly fibre: FibreName;
  /** Its count, in the notation of its trade. */
  readonly yarn: string;
  /** Yards in a pound as the trade prints them. */
  readonly yardsInAPound: number;
}

/** Common weaving yarns by fibre. Source: common practice; the yards in a pound follow from the counts. */
export const commonYarns: readonly CommonYarn[] = [
  { fibre: "cotton", yarn: "3/2 Ne", yardsInAPound: 1260 },
  { fibre: "cotton", yarn: "5/2 Ne", yardsInAPound: 2100 },
  { fibre: "cotton", yarn: "8/2 Ne", yardsInAPound: 3360 },
  { fibre: "cotton", yarn: "10/2 Ne", yardsInAPound: 4200 },
  { fibre: "cotton", yarn: "16/2 Ne", yardsInAPound: 6720 },
  { fibre: "cotton", yarn: "20/2 Ne", yardsInAPound: 8400 },
  { fibre: "linen", yarn: "16/2 lea", yardsInAPound: 2400 },
  { fibre: "linen", yarn: "20/2 lea", yardsInAPound: 3000 },
  { fibre: "linen", yarn: "16 lea", yardsInAPound: 4800 },
  { fibre: "linen", yarn: "40/2 lea", yardsInAPound: 6000 },
  { fibre: "worsted", yarn: "2/20 worsted", yardsInAPound: 5600 },
  { fibre: "wool", yarn: "Nm 7/2", yardsInAPound: 1736 },
  { fibre: "silk", yarn: "Nm 60/2", yardsInAPound: 14_882 },
  { fibre: "silk", yarn: "Nm 20/2", yardsInAPound: 4961 },
];
