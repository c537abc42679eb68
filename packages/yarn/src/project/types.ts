import type { Yarn } from "../count/yarn.js";
import type { Given } from "../formula/input.js";
import type { Result } from "../formula/work-out.js";
import type { Quantity } from "../quantity/units.js";
import type { Reed } from "../reed/notation.js";
import type { Sley } from "../reed/sley.js";
import type { Sleying } from "../reed/sleying.js";
import type { Drawdown } from "../sett/interlacing.js";

/** A yarn of the project. */
export interface ProjectYarn {
  /** Left out where it is not known. */
  readonly yarn?: Yarn | string;
  /** By its name, for the constant of the root rule; a fibre that is not known counts as a firm yarn. */
  readonly fibre?: string;
  /** Its colour, by name or as `#rrggbb`. */
  readonly colour?: string;
  /** What one cone or skein holds, by weight or by length. */
  readonly package?: Quantity;
  /** What there is of it, by weight or by length. */
  readonly stock?: Quantity;
}

/** One design of those woven on the warp, one after another. */
export interface ProjectPiece {
  /** What it is called; nothing where there is one design alone. */
  readonly name: string;
  /** How many are woven. */
  readonly count: number;
  /** Rows of its lift plan. */
  readonly rows?: number;
  /** Rows of its length that no whole repeat of the block that fills it had room in. */
  readonly over?: number;
  /** Picks of its draft, all wefts together. */
  readonly picks: number;
  /** Picks of its draft by weft, by the names in `wefts` of the project. */
  readonly wefts: readonly {
    /** The weft's name. */
    readonly name: string;
    /** Picks of it. */
    readonly picks: number;
  }[];
  /** Finished length; left out, its picks make it. */
  readonly length?: Quantity;
}

/** One yarn of a warp of several, and how many ends are of it. */
export interface ProjectWarp extends ProjectYarn {
  /** Its name, as other parts of the project call it. */
  readonly name: string;
  /** Ends of it. */
  readonly ends: number;
}

/** A weft, and how much of the draft is woven with it. */
export interface ProjectWeft extends ProjectYarn {
  /** Its name; that of the ground weft is the recipe's. */
  readonly name: string;
  /** Picks of the draft woven with it. */
  readonly picks: number;
}

/** What was measured on a sample. Two that belong together tell a loss: without its partner a measure tells nothing. */
export interface Measured {
  /** Width of the sample in the reed. */
  readonly widthInReed?: Quantity;
  /** On the loom. */
  readonly width?: Quantity;
  /** Its width after the wash. */
  readonly washedWidth?: Quantity;
  /** Warp that the sample took. */
  readonly warp?: Quantity;
  /** On the loom. */
  readonly length?: Quantity;
  /** Its length after the wash. */
  readonly washedLength?: Quantity;
  /** Picks counted over a length on the loom. */
  readonly picks?: number;
  /** The length over which they were counted. */
  readonly over?: Quantity;
  /** Side of the washed square that was weighed. Default: 10 cm, shown as assumed. */
  readonly square?: Quantity;
  /** What the washed square weighs. */
  readonly squareWeight?: Quantity;
}

/** What is known of a project. What is left out is assumed where the trade has a usual value, and then shown as assumed. */
export interface Project {
  /** Ends, selvedges included. */
  readonly ends: number;
  /** Picks of the draft, all wefts together. */
  readonly picks: number;
  /** Rows of the length that no whole repeat of the block that fills it had room in, where there is one design. */
  readonly over?: number;
  /** Units of the draft. */
  readonly units?: number;
  /** Lingos that it takes, one a unit. */
  readonly lingos?: number;
  /** One repeat of the ground weave, for how firm the sett is. */
  readonly ground?: Drawdown;
  /** The yarn of the warp, where it is of one. */
  readonly warp?: ProjectYarn;
  /** The yarns of a warp of several; their ends make up `ends`. */
  readonly warps?: readonly ProjectWarp[];
  /** The wefts, the ground weft first. */
  readonly wefts?: readonly ProjectWeft[];
  /** Ends side by side in the reed. */
  readonly sett?: Quantity;
  /** Picks side by side on the loom. */
  readonly pickSett?: Quantity;
  /** The reed by its count. */
  readonly reed?: Reed;
  /** Ends in each dent, in turn. */
  readonly sley?: Sley;
  /** On the width in the reed. */
  readonly drawIn?: Quantity;
  /** On the length of the cloth (crimp). */
  readonly takeUp?: Quantity;
  /** What the wash takes. */
  readonly shrinkage?: {
    /** On the width. */
    readonly width?: Quantity;
    /** On the length. */
    readonly length?: Quantity;
  };
  /** Pieces wanted. */
  readonly pieces?: number;
  /** Length of the warp, where it is wound already. */
  readonly warpLength?: Quantity;
  /** Finished width that is wanted. */
  readonly width?: Quantity;
  /** Finished length of a piece; left out, the draft's picks make one piece. */
  readonly length?: Quantity;
  /** Hems and fringes of a piece, both ends together. */
  readonly hems?: Quantity;
  /** Fringes of a piece, both ends together. */
  readonly fringe?: Quantity;
  /** Warp left unwoven between two pieces. */
  readonly gaps?: Quantity;
  /** Warp for samples. */
  readonly sampling?: Quantity;
  /** Warp that the loom cannot weave. */
  readonly waste?: Quantity;
  /** Yarn beyond what is woven, for mistakes, knots and the weaver's hand. Default: 5 %, shown as assumed. */
  readonly spare?: Quantity;
  /** The designs on the warp, where there are several: they then say pieces, picks and lengths. */
  readonly woven?: readonly ProjectPiece[];
  /** What was measured on a sample; the losses, picks and weight that it tells go before those given or assumed. */
  readonly measured?: Measured;
}

/** How the reed is sleyed. */
export interface PlanReed {
  /** The reed by its count. */
  readonly reed: Reed;
  /** Dents in a centimetre. */
  readonly dents: Result;
  /** Ends in each dent, in turn. */
  readonly sley: Sley;
  /** The sett that they make. */
  readonly sett: Result;
  /** How much closer than the sett that was wanted, in percent; below 0 more open. Left out where none was. */
  readonly error?: number;
  /** Other ways to sley it, where the sley was found and is not exact. */
  readonly others: readonly Sleying[];
  /** Dents that the ends fill, empty ones between them counted. */
  readonly dentsUsed: number;
  /** Width of these dents. */
  readonly width: Result;
  /** Ends in each dent, as a weaver reads them. */
  readonly printed: string;
}

/** How firm the setts are. */
export interface PlanFirmness {
  /** Closest sett of the warp yarn in the ground weave, by the root rule. */
  readonly closest: Result;
  /** Share that the sett is of it. */
  readonly share: Result;
  /** The same of the picks, where they and the ground weft are known. */
  readonly weft?: {
    /** Closest sett of the picks. */
    readonly closest: Result;
    /** Share that the picks are of it, in percent. */
    readonly share: Result;
  };
  /** Mean of both shares: a cloth whose weft covers its warp is set open one way and close the other. */
  readonly together?: Result;
  /** The whole in words. */
  readonly words: string;
}

/** What is used of one yarn. */
export interface PlanYarn {
  /** The name of the yarn in the project. */
  readonly name: string;
  /** Its colour, by name or as `#rrggbb`. */
  readonly colour?: string;
  /** All of it, samples too. */
  readonly length: Result;
  /** Left out where the yarn is not known. */
  readonly mass?: Result;
  /** What of the length goes into samples, for a weft. */
  readonly samples?: Result;
  /** Picks in a piece, for a weft where there is one design. */
  readonly picks?: Quantity;
}

/** One yarn to have: what is alike in count, fibre and colour is bought together. */
export interface PlanPurchase {
  /** The warp and wefts that it is for. */
  readonly yarns: readonly string[];
  /** As its trade writes it, where it is known. */
  readonly count?: string;
  /** Its fibre. */
  readonly fibre?: string;
  /** Its colour, by name or as `#rrggbb`. */
  readonly colour?: string;
  /** Used on the loom: by weight where the yarn is known and is not packed by length, else by length. */
  readonly used: Result;
  /** That, and what is spared for mistakes. */
  readonly need: Result;
  /** What there is of it. */
  readonly stock?: Quantity;
  /** What the stock leaves to buy; 0 where it is enough. */
  readonly toBuy: Result;
  /** What one cone or skein holds. */
  readonly package?: Quantity;
  /** Cones or skeins to buy, whole ones. */
  readonly packages?: Result;
}

/** One design of the plan. */
export interface PlanPiece {
  /** What it is called; nothing where there is one design alone. */
  readonly name: string;
  /** How many are woven. */
  readonly count: Given;
  /** Rows of its lift plan. */
  readonly rows?: number;
  /** Rows of its length that whole repeats leave over; left out where they meet it. */
  readonly over?: number;
  /** Picks in one. */
  readonly picks: Quantity;
  /** Cloth woven for one. */
  readonly clothLength?: Result;
  /** Length of one when it is washed. */
  readonly finishedLength?: Quantity;
  /** Warp of one. */
  readonly warpOfPiece?: Result;
  /** How many more the warp left over would give. */
  readonly more?: Result;
  /** Weft of all of them, by weft. */
  readonly wefts: readonly {
    /** The weft's name. */
    readonly name: string;
    /** Length of all of it. */
    readonly length: Result;
    /** Weight of all of it; left out where the yarn is not known. */
    readonly mass?: Result;
  }[];
}

/** A number that the sample tells. */
export interface SampleNumber {
  /** Its name, as the plan calls it. */
  readonly name:
    | "draw-in"
    | "take-up"
    | "shrinkage-of-width"
    | "shrinkage-of-length"
    | "picks"
    | "cloth-weight";
  /** What it is, in a few words. */
  readonly title: string;
  /** What the sample tells. */
  readonly value: Result;
  /** What was given, assumed or worked out instead; left out where nothing was known. */
  readonly instead?: Given;
}

/** What a sample tells, and by how much the plan moves with it. */
export interface PlanSample {
  /** The losses, picks and weight that it tells. */
  readonly numbers: readonly SampleNumber[];
  /** The numbers of the plan that come out otherwise by it. */
  readonly moved: readonly Moved[];
}

/** A number of a plan that the sample moves, as far as it shows in print. */
export interface Moved {
  /** Its name, as in `stated` of a recipe. */
  readonly name: string;
  /** What it is, in a few words. */
  readonly title: string;
  /** Without the sample. */
  readonly before: Given;
  /** With the sample. */
  readonly after: Given;
  /** After less before, as they are printed. */
  readonly by: Quantity;
}

/** A number by a formula of the weaver's own. */
export interface OwnNumber {
  /** The title of its formula. */
  readonly name: string;
  /** What it works out, in a few words. */
  readonly title: string;
  /** As it was worked out. */
  readonly value: Result;
}

/** Every number of the project that can be worked out from what is known. */
export interface Plan {
  /** Ends, selvedges included. */
  readonly ends: Quantity;
  /** Units of the draft. */
  readonly units?: Quantity;
  /** Lingos that it takes. */
  readonly lingos?: Quantity;
  /** Ends in a centimetre. */
  readonly sett?: Quantity;
  /** The sett against the closest one of the warp yarn in the ground weave. */
  readonly firmness?: PlanFirmness;
  /** Dents, sley and width; left out where no reed is known. */
  readonly reed?: PlanReed;
  /** Width of the warp in the reed. */
  readonly widthInReed?: Result;
  /** Width of the cloth on the loom, drawn in. */
  readonly clothWidth?: Result;
  /** Width of the cloth when it is washed. */
  readonly finishedWidth?: Result;
  /** Picks in a piece. */
  readonly picks: Quantity;
  /** Cloth woven for one piece. */
  readonly clothLength?: Result;
  /** Length of a piece when it is washed. */
  readonly finishedLength?: Quantity;
  /** Warp that one piece takes, with hems, fringes and take-up. */
  readonly warpOfPiece?: Result;
  /** Warp to wind, or that is wound already. */
  readonly warpLength?: Quantity;
  /** Pieces that are woven. */
  readonly pieces: Given;
  /** Warp that is left when all pieces are woven. */
  readonly leftOver?: Result;
  /** The warp as a whole. */
  readonly warpYarn?: PlanYarn;
  /** Each yarn of the warp; the whole where it is of one. */
  readonly warpYarns: readonly PlanYarn[];
  /** Each weft, in the order of the project. */
  readonly weftYarn: readonly PlanYarn[];
  /** The yarns to have, each once. */
  readonly buy: readonly PlanPurchase[];
  /** The designs in weaving order; one or more. */
  readonly woven: readonly PlanPiece[];
  /** Weight of the cloth when it is washed, in grams a square metre. */
  readonly clothWeight?: Result;
  /** What the sample tells, where one was measured. */
  readonly sample?: PlanSample;
  /** Numbers by formulas of the weaver's own, which `ownNumbers` of `@drawcord/files` works out. */
  readonly own?: readonly OwnNumber[];
  /** Of two things that say the same, which the plan goes by: a clause each. */
  readonly goesBy: readonly string[];
  /** What cannot be worked out, and what is missing for it: a sentence each. */
  readonly missing: readonly string[];
  /** What the weaver should know: numbers that do not go together. */
  readonly notes: readonly string[];
}
