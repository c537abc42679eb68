/** A formula as a small tree, set by every format in its own way. */
export type Formula =
  | { readonly kind: "word"; readonly text: string; readonly slant: boolean }
  | { readonly kind: "operator"; readonly text: string }
  | { readonly kind: "row"; readonly items: readonly Formula[] }
  | { readonly kind: "fraction"; readonly over: Formula; readonly under: Formula }
  | { readonly kind: "root"; readonly of: Formula }
  | {
      readonly kind: "script";
      readonly base: Formula;
      readonly above?: Formula;
      readonly below?: Formula;
    };
