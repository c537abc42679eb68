/**
 * The one door to mathjs: its parser, as an instance that holds nothing else. What it reads becomes a tree of our own kinds
 * of operation; anything else that a text may hold is refused, so that no text reaches more than arithmetic.
 */
import type { FactoryFunctionMap, MathJsInstance, MathNode } from "mathjs";
import { create, parseDependencies } from "mathjs/number";
import { YarnError } from "../error.js";
import { checkShort } from "../short.js";
import type { FormulaTree } from "./tree.js";

/** The nodes of mathjs that stand for arithmetic, as far as they are looked at. */
interface Node {
  readonly type: string;
  readonly value: unknown;
  readonly name: string;
  readonly op: string;
  readonly fn: Node | string;
  readonly args: readonly Node[];
  readonly content: Node;
}

/** Functions through which a text could reach more than arithmetic. */
const doors = ["import", "createUnit", "config"];

function makeParser(): (text: string) => MathNode {
  const math = create({ parseDependencies } as FactoryFunctionMap) as unknown as MathJsInstance;
  const parse = math.parse.bind(math);
  for (const name of doors) {
    Object.defineProperty(math, name, {
      value: () => {
        throw new YarnError("bad-formula", `${name} is switched off`);
      },
    });
  }
  return parse;
}

let made: ((text: string) => MathNode) | undefined;

const binary = /* @__PURE__ */ new Set(["+", "-", "*", "/", "^"]);
const unary = /* @__PURE__ */ new Set(["sqrt", "round", "floor", "ceil"]);
const pairs = /* @__PURE__ */ new Set(["max", "min"]);

/**
 * An expression in the language of mathjs as a tree. It may hold numbers, symbols, `+ - * / ^`, brackets, `pi`, and the
 * functions `sqrt`, `round`, `floor`, `ceil`, `max` and `min` of two, and `sum` of a list.
 * @param text such as `n / S`; a blank between two symbols multiplies them
 * @throws {YarnError} `bad-formula`, with the `column` where there is one; `too-long`
 * @example parseExpression("m / (N h)") // ["/", "m", ["*", "N", "h"]]
 */
export function parseExpression(text: string): FormulaTree {
  checkShort(text);
  made ??= makeParser();
  try {
    return treeOf(made(text) as unknown as Node, text);
  } catch (failure) {
    if (failure instanceof YarnError) throw failure;
    const { char, message } = failure as { readonly char?: number; readonly message: string };
    const why = message.replace(/ \(char \d+\)$/, "").toLowerCase();
    throw new YarnError("bad-formula", `"${text}" is not a formula: ${why}`, {
      text,
      ...(char === undefined ? {} : { column: char }),
    });
  }
}

function treeOf(node: Node, text: string): FormulaTree {
  const { args } = node;
  const refuse = (what: string): YarnError => new YarnError("bad-formula", `"${text}": ${what}`, { text });
  const at = (i: number): FormulaTree => treeOf(args[i]!, text);
  switch (node.type) {
    case "ConstantNode":
      if (typeof node.value === "number") return node.value;
      throw refuse(`${String(node.value)} is not a number`);
    case "SymbolNode":
      return node.name;
    case "ParenthesisNode":
      return treeOf(node.content, text);
    case "OperatorNode":
      if (args.length === 1 && node.op === "-") return ["negative", at(0)];
      if (args.length === 2 && binary.has(node.op)) return [node.op as "+", at(0), at(1)];
      throw refuse(`"${node.op}" is not known here; expected + - * / or ^`);
    case "FunctionNode": {
      const name = (node.fn as Node).name;
      const [first] = args;
      if (name === "sum" && args.length === 1 && first!.type === "SymbolNode") return ["sum", first!.name];
      if (unary.has(name) && args.length === 1) return [name as "sqrt", at(0)];
      if (pairs.has(name) && args.length === 2) return [name as "max", at(0), at(1)];
      throw refuse(
        `"${name}" of ${args.length} is not known here; expected sqrt, round, floor, ceil, max or min of two, or sum of a list; a factor before a bracket needs a *`,
      );
    }
    default:
      throw refuse(
        "only numbers, symbols, + - * / ^, brackets and the functions of a formula may stand here",
      );
  }
}
