export type { Expansion, UnitDraft, UnitShafts } from "./types.js";
