import type { Kind, Quantity, UnitName } from "../quantity/units.js";
import type { FormulaTree } from "./tree.js";

/** What a symbol of a formula stands for, and the values for which the formula holds. */
export interface SymbolSpec {
  /** What it stands for, in a few words. */
  readonly meaning: string;
  /** What kind of quantity it is. */
  readonly kind: Kind;
  /** The expression takes the bare number in this unit; left out, it carries its unit. A share is always a fraction of 1. */
  readonly bare?: UnitName;
  /** How it is typeset, where not as its name. */
  readonly tex?: string;
  /** A list of values. */
  readonly list?: true;
  /** Only whole numbers. */
  readonly whole?: true;
  /** May not be 0. */
  readonly positive?: true;
  /** The least and the most that make sense, in `bare` or in the metric unit of the kind. */
  readonly least?: number;
  /** The most that makes sense, in the same unit. */
  readonly most?: number;
  /** What is taken where nothing is given, and why; it is always shown as assumed. */
  readonly usual?: Quantity & {
    /** Why it is taken. */
    readonly assumed: string;
  };
}

/** What a formula gives. */
export interface ResultSpec {
  /** Its letter. */
  readonly symbol: string;
  /** How the letter is typeset, where not as itself. */
  readonly tex?: string;
  /** What kind of quantity it is. */
  readonly kind: Kind;
  /** The expression gives the bare number in this unit; left out, it gives a unit of its own. */
  readonly bare?: UnitName;
  /** The unit of the result. Default: the metric unit of its kind. */
  readonly unit?: UnitName;
  /** Decimals to which the result is rounded where it is printed. */
  readonly decimals: number;
  /** The least and the most that make sense, in the unit of the result. */
  readonly least?: number;
  /** The most that makes sense, in the unit of the result. */
  readonly most?: number;
}

/** A formula as data: the functions evaluate it, the working and the documentation are printed from it. */
export interface Formula {
  /** What it works out, in a few words. */
  readonly title: string;
  /** As it is written, in the language of mathjs; a share stands for a fraction of 1. */
  readonly expression: string;
  /** What each letter of the expression stands for. */
  readonly symbols: Readonly<Record<string, SymbolSpec>>;
  /** What it gives. */
  readonly result: ResultSpec;
  /** Where it is from: author, title, year and page, or `common practice`. */
  readonly source: string;
  /** Where it holds and what it leaves out. */
  readonly validity?: string;
}

/** A formula whose expression is read. */
export interface ReadFormula extends Formula {
  /** The expression, read. */
  readonly tree: FormulaTree;
}

/** Formulas by id. */
export type FormulaSet = Readonly<Record<string, Formula>>;
