/** A formula as a small tree, set by every format in its own way. */
export type TypesetFormula =
  | {
      /** Which part it is. */
      readonly kind: "word";
      /** A number, a letter or a word. */
      readonly text: string;
      /** Whether it is set slanting, as letters that stand for numbers are. */
      readonly slant: boolean;
    }
  | {
      /** Which part it is. */
      readonly kind: "operator";
      /** The sign, such as `×` or `+`. */
      readonly text: string;
    }
  | {
      /** Which part it is. */
      readonly kind: "row";
      /** Its parts, left to right. */
      readonly items: readonly TypesetFormula[];
    }
  | {
      /** Which part it is. */
      readonly kind: "fraction";
      /** What stands above the line. */
      readonly over: TypesetFormula;
      /** What stands below the line. */
      readonly under: TypesetFormula;
    }
  | {
      /** Which part it is. */
      readonly kind: "root";
      /** What stands under the root. */
      readonly of: TypesetFormula;
    }
  | {
      /** Which part it is. */
      readonly kind: "script";
      /** What the small letters stand at. */
      readonly base: TypesetFormula;
      /** What stands above, as an exponent; default nothing. */
      readonly above?: TypesetFormula;
      /** What stands below, as an index; default nothing. */
      readonly below?: TypesetFormula;
    };
