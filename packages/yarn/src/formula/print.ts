import type { MathNode } from "../math.js";

/** How the symbols of an expression are printed. */
export type SymbolPrinter = (symbol: string) => string;

/** A list of values, joined where a sum stands. */
export type SumPrinter = (symbol: string) => string;

interface NamedNode extends MathNode {
  readonly isSymbolNode?: true;
  readonly isFunctionNode?: true;
  readonly name?: string;
  readonly fn?: { readonly name: string };
  readonly args?: readonly NamedNode[];
}

/** mathjs asks this for each node; undefined leaves the node to mathjs. */
function handler(symbols: SymbolPrinter, sum: SumPrinter): (node: NamedNode) => string | undefined {
  return (node) => {
    if (node.isSymbolNode) return symbols(node.name!);
    if (node.isFunctionNode && node.fn!.name === "sum") return sum(node.args![0]!.name!);
    return undefined;
  };
}

/** An expression as a line of text. */
export function printText(
  node: MathNode,
  symbols: SymbolPrinter,
  sum: SumPrinter,
  implicit: "show" | "hide",
): string {
  return node.toString({ handler: handler(symbols, sum), implicit }).replaceAll(" * ", " × ");
}

/** An expression in TeX. A symbol has a blank before it, or it would run together with a command: `\cdotF`. */
export function printTex(
  node: MathNode,
  symbols: SymbolPrinter,
  sum: SumPrinter,
  implicit: "show" | "hide",
): string {
  const apart = (print: SymbolPrinter) => (name: string) => ` ${print(name)}`;
  return node
    .toTex({ handler: handler(apart(symbols), apart(sum)), implicit })
    .replace(/ +/g, " ")
    .replace(/([{(~]) /g, "$1")
    .trim();
}
