import type { Limits, Repeat, Severity, Side, Waiver, YarnOrder } from "@drawcord/check";
import type { Action, ShaftSet } from "@drawcord/ground";
import type { SizedDraft, WovenBlock } from "@drawcord/units";
import type { Measured, Quantity, Reed, Sley, UnitName, Yarn } from "@drawcord/yarn";
import type { Place } from "../place.js";
import type { Path } from "../tree/spot.js";

/** A value that was read from a notation: the text as it is written, what it means, and where it stands. */
export interface Placed<Value> extends Place {
  /** As it is written. */
  readonly text: string;
  /** What was read. */
  readonly value: Value;
}

/** One yarn of the cloth. */
export interface RecipeYarn {
  /** `warp`, `weft`, or the weft's name in the ground's steps. */
  readonly name: string;
  /** The count, such as `20/2 Ne`; none where only the colour is known. */
  readonly count?: Placed<Yarn>;
  /** What it is of. */
  readonly fibre?: string;
  /** Its colour, as it is written. */
  readonly colour?: string;
  /** What one cone or skein holds: a mass or a length. */
  readonly package?: Quantity;
  /** What there is of it: a mass or a length. */
  readonly stock?: Quantity;
}

/** How close the threads lie, and what is lost. Shares are in percent. */
export interface RecipeCloth {
  /** Ends in a unit length. */
  readonly sett?: Quantity;
  /** Picks in a unit length. */
  readonly picks?: Quantity;
  /** The reed, in any reed count. */
  readonly reed?: Placed<Reed>;
  /** Ends in the dents, such as `1-2-2`. */
  readonly sley?: Placed<Sley>;
  /** How wide a warp the reed takes. */
  readonly reedWidth?: Quantity;
  /** What the width loses on the loom, on the width in the reed, in percent. */
  readonly drawIn?: Quantity;
  /** On the length of the cloth (crimp). */
  readonly takeUp?: Quantity;
  /** What the wash takes. */
  readonly shrinkage?: {
    /** On the width, in percent. */
    readonly width?: Quantity;
    /** On the length, in percent. */
    readonly length?: Quantity;
  };
  /** The side from which the first pick of each weft is thrown. */
  readonly firstPickFrom?: Side;
  /** The same of wefts that begin on a side of their own, by the name of the yarn or of the weft. */
  readonly firstPickOf?: Readonly<Record<string, Side>>;
  /** Which ways the cloth repeats. */
  readonly repeat?: Repeat;
}

/** What is to be woven on the warp. Lengths, but for `pieces` and `spare`. */
export interface RecipeProject {
  /** Pieces that are wanted. */
  readonly pieces?: number;
  /** The warp, where it is wound already: it then says how many pieces there are. */
  readonly warp?: Quantity;
  /** Finished. */
  readonly width?: Quantity;
  /** Finished. */
  readonly length?: Quantity;
  /** Length of the hems of a piece, both ends together. */
  readonly hems?: Quantity;
  /** Length of the fringes of a piece, both ends together. */
  readonly fringe?: Quantity;
  /** Warp left unwoven between two pieces. */
  readonly gaps?: Quantity;
  /** Warp for samples. */
  readonly sampling?: Quantity;
  /** Warp that the loom cannot weave. */
  readonly waste?: Quantity;
  /** Yarn beyond what is woven, in percent. */
  readonly spare?: Quantity;
}

/** What the loom has. */
export interface RecipeLoom {
  /** Pattern shafts, or cords. */
  readonly patternShafts?: number;
  /** Ground shafts. */
  readonly groundShafts?: number;
  /** Treadles. */
  readonly treadles?: number;
  /** Lingos at hand. */
  readonly lingos?: number;
  /** Heddles on each ground shaft. */
  readonly heddles?: number;
  /** A mass. */
  readonly lingoWeight?: Quantity;
  /** How wide a cloth the loom weaves: a length. */
  readonly weavingWidth?: Quantity;
  /** How the ground shafts are moved. */
  readonly action?: Action;
}

/** What was measured on a sample. */
export type RecipeMeasured = Measured;

/** The names of the numbers a recipe may state. */
export type StatedName =
  | "ends"
  | "picks"
  | "units"
  | "rows"
  | "lingos"
  | "pieces"
  | "longest-float"
  | "width-in-reed"
  | "finished-width"
  | "finished-length"
  | "warp-length"
  | "left-over"
  | "warp-yarn"
  | "weft-yarn"
  | "cloth-weight";

/** A number that the printed recipe claims, and where it does. */
export interface Stated extends Place {
  /** Which number it is. */
  readonly name: StatedName;
  /** As it is written, for how far it was rounded. */
  readonly text: string;
  /** What is claimed. */
  readonly claim: Quantity;
}

/** A symbol of a formula of the weaver's own; it has either a value or a number of the plan. */
export interface RecipeSymbol {
  /** What it stands for, in words. */
  readonly meaning: string;
  /** Its own value. */
  readonly value?: Quantity;
  /** The number of the plan that it stands for, by its name, or a formula before it by its title. */
  readonly plan?: string;
  /** The unit in which the formula takes the bare number. */
  readonly in?: UnitName;
}

/** A formula of the weaver's own, its expression as it is written. */
export interface RecipeFormula {
  /** What it gives. */
  readonly title: string;
  /** The expression, in the language of mathjs; it is read when it is worked out. */
  readonly formula: string;
  /** Its symbols, by their names. */
  readonly symbols: Readonly<Record<string, RecipeSymbol>>;
  /** The letter of the result. */
  readonly symbol?: string;
  /** The unit of the result. */
  readonly unit?: UnitName;
  /** Decimals to which the result is rounded where it is printed. */
  readonly decimals?: number;
  /** Where it is from. */
  readonly source?: string;
}

/** One design of those that are woven on the warp, one after another. */
export interface RecipePiece {
  /** What it is called; the title of a recipe that is a single piece, or nothing. */
  readonly name: string;
  /** How many are woven, one after another. */
  readonly count: number;
  /** Its own lifts and ground steps over the threading of the warp. */
  readonly draft: SizedDraft;
  /** What is allowed of it. */
  readonly limits: Limits;
  /** The yarn of each pick by its name, pick 1 first; repeats over the picks. */
  readonly wefts: readonly string[];
  /** The orders of yarns that its picks follow, each with the picks that it lies over. */
  readonly yarnOrders: readonly YarnOrder[];
  /** Its finished length, where one is known. */
  readonly length?: Quantity;
  /** The whole rows that come nearest to its length, hems with it, where they can be worked out. */
  readonly wantedRows?: number;
  /** Rows that no whole repeat of a block that fills the length had room in. */
  readonly over: number;
  /** The lines of its weaving order, each with its number of repeats, where it is of blocks. */
  readonly order?: readonly WovenBlock[];
  /** The rows of the blocks that the order names. */
  readonly blocks?: Readonly<Record<string, readonly ShaftSet[]>>;
  /** The way to its section in the text; empty in a recipe that is a single piece. */
  readonly path: Path;
}

/** A recipe as it was read: every notation worked out, all of it plain data that may be cloned. */
export interface Recipe {
  /** The name the recipe was read by. */
  readonly file: string;
  /** The text it was read from, in which `placesOf` finds where everything stands. */
  readonly text: string;
  /** The ways to the values of the text that could not be read and are left out; none in a sound recipe. */
  readonly unread: readonly Path[];
  /** The version of the format. */
  readonly version: 1;
  /** What it is called. */
  readonly title?: string;
  /** What is woven on the warp, in weaving order; one or more. */
  readonly pieces: readonly RecipePiece[];
  /** The draft of the first piece. */
  readonly draft: SizedDraft;
  /** The name of the ground weave as it is written; none where the ground is given step by step. */
  readonly weave?: string;
  /** The shaft number that stands for static units. */
  readonly staticShaft?: number;
  /** The yarn of each end by its name, end 1 first; repeats over the ends. */
  readonly warp: readonly string[];
  /** In the order of the text. */
  readonly yarns: readonly RecipeYarn[];
  /** What is said of the cloth. */
  readonly cloth: RecipeCloth;
  /** What is to be woven on the warp. */
  readonly project: RecipeProject;
  /** What was measured on a sample; nothing where none was woven. */
  readonly measured: RecipeMeasured;
  /** What the loom has. */
  readonly loom: RecipeLoom;
  /** What the weaver allows. */
  readonly limits: Limits;
  /** The severities that she sets, by the rule's name. */
  readonly levels: Readonly<Record<string, Severity | "off">>;
  /** The findings that she accepts. */
  readonly waive: readonly Waiver<string>[];
  /** The numbers that a printed recipe claims. */
  readonly stated: readonly Stated[];
  /** Formulas of the weaver's own, for `ownNumbers`. */
  readonly formulas: readonly RecipeFormula[];
  /** Notes, as they are written. */
  readonly notes?: string;
}
