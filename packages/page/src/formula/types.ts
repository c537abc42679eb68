/** A formula as a small tree, set by every format in its own way. */
export type TypesetFormula =
  | { readonly kind: "word"; readonly text: string; readonly slant: boolean }
  | { readonly kind: "operator"; readonly text: string }
  | { readonly kind: "row"; readonly items: readonly TypesetFormula[] }
  | { readonly kind: "fraction"; readonly over: TypesetFormula; readonly under: TypesetFormula }
  | { readonly kind: "root"; readonly of: TypesetFormula }
  | {
      readonly kind: "script";
      readonly base: TypesetFormula;
      readonly above?: TypesetFormula;
      readonly below?: TypesetFormula;
    };
