/**
 * The one door to mathjs: an own instance that holds what the formulas need and no more. Parser and functions are those for
 * plain numbers; units come from the general entry, whose scalar functions know them. That is a third smaller than the
 * general parser. tex, dtex and denier are not built in and are defined before the doors are shut.
 */
import {
  BigNumberDependencies,
  ComplexDependencies,
  createAddScalar,
  createDivideScalar,
  createMultiplyScalar,
  createSqrt,
  createSubtractScalar,
  createUnitClass,
  type EvalFunction,
  type FactoryFunctionMap,
  FractionDependencies,
  type MathJsInstance,
  type MathNode,
  type Unit,
} from "mathjs";
import {
  absDependencies,
  ceilDependencies,
  create,
  equalDependencies,
  fixDependencies,
  floorDependencies,
  formatDependencies,
  isNumericDependencies,
  numberDependencies,
  numericDependencies,
  parseDependencies,
  powDependencies,
  roundDependencies,
  typedDependencies,
} from "mathjs/number";

// mathjs exports these, and its declarations leave them out.
declare module "mathjs" {
  const createAddScalar: FactoryFunction<unknown>;
  const createDivideScalar: FactoryFunction<unknown>;
  const createMultiplyScalar: FactoryFunction<unknown>;
  const createSqrt: FactoryFunction<unknown>;
  const createSubtractScalar: FactoryFunction<unknown>;
  const createUnitClass: FactoryFunction<unknown>;
}

/** What a formula's symbol stands for while it is evaluated. */
export type MathValue = number | Unit | readonly (number | Unit)[];

/** The scalar functions of the instance. */
type Scalars = Record<"addScalar" | "subtractScalar" | "multiplyScalar" | "divideScalar", unknown>;

interface Engine {
  readonly math: Readonly<Record<string, unknown>>;
  readonly parse: (expression: string) => MathNode;
  readonly unit: (value: number, unit: string) => Unit;
}

/** `sum` of a list, `max` of two numbers: plain functions, so that no matrix code comes along. */
function ownFunctions(math: MathJsInstance): Record<string, unknown> {
  const add = math.add as unknown as (a: MathValue, b: MathValue) => MathValue;
  return {
    sum: (list: readonly MathValue[]) => list.reduce((a, b) => add(a, b)),
    max: Math.max,
    pi: Math.PI,
  };
}

/** Functions through which text could reach more than a formula. */
const doors = ["import", "createUnit", "evaluate", "parse", "compile", "simplify", "derivative", "resolve"];

function shut(name: string): () => never {
  return () => {
    throw new Error(`${name} is switched off in this instance of mathjs`);
  };
}

function makeEngine(): Engine {
  const factories = {
    absDependencies,
    BigNumberDependencies,
    ceilDependencies,
    ComplexDependencies,
    createAddScalar,
    createDivideScalar,
    createMultiplyScalar,
    createSqrt,
    createSubtractScalar,
    createUnitClass,
    equalDependencies,
    fixDependencies,
    floorDependencies,
    formatDependencies,
    FractionDependencies,
    isNumericDependencies,
    numberDependencies,
    numericDependencies,
    parseDependencies,
    powDependencies,
    roundDependencies,
    typedDependencies,
  };
  const math = create(factories as FactoryFunctionMap) as unknown as MathJsInstance & Scalars;
  // The parser looks an operator up by its general name.
  const scalars = {
    add: math.addScalar,
    subtract: math.subtractScalar,
    multiply: math.multiplyScalar,
    divide: math.divideScalar,
  };
  math.import(scalars, { override: true });
  math.import(ownFunctions(math), { override: true });
  const { Unit } = math;
  Unit.createUnit({ tex: "1 mg/m", dtex: "0.1 mg/m", denier: new Unit(1 / 9, "mg/m") });
  const parse = math.parse.bind(math);
  math.import(Object.fromEntries(doors.map((name) => [name, shut(name)])), { override: true });
  return {
    math: math as unknown as Readonly<Record<string, unknown>>,
    parse,
    unit: (value, unit) => new Unit(value, unit),
  };
}

let made: Engine | undefined;

/** The engine, made when it is first asked for: that takes a while, and many callers never do. */
function engine(): Engine {
  made ??= makeEngine();
  return made;
}

/**
 * A number with a unit of mathjs.
 * @example unit(840, "yd").toNumber("m") // 768.096
 */
export function unit(value: number, name: string): Unit {
  return engine().unit(value, name);
}

/** Expressions already read; there are only as many as there are formulas. */
const trees = /* @__PURE__ */ new Map<string, { readonly node: MathNode; readonly code: EvalFunction }>();

function tree(expression: string): { readonly node: MathNode; readonly code: EvalFunction } {
  let found = trees.get(expression);
  if (found === undefined) {
    const node = engine().parse(expression);
    found = { node, code: node.compile() };
    trees.set(expression, found);
  }
  return found;
}

/**
 * A formula's expression as a tree that can be printed. For expressions of this package, never a user's text.
 * @example parse("n / S").toString() // "n / S"
 */
export function parse(expression: string): MathNode {
  return tree(expression).node;
}

/**
 * What a formula's expression gives for the values of its symbols.
 * @example evaluate("n / S", { n: 564, S: 40 }) // 14.1
 */
export function evaluate(expression: string, scope: Record<string, MathValue>): number | Unit {
  return tree(expression).code.evaluate(scope);
}

/** The instance behind the formulas, for the tests of what it can and cannot do. */
export function instance(): Readonly<Record<string, unknown>> {
  return engine().math;
}

export type { MathNode, Unit };
