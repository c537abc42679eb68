/**
 * Reads and runs the examples of docstrings and READMEs. An example is TypeScript; a line `expression // result` in it
 * is a promise: the value of the expression equals the result, numbers to the digits shown. `// throws code` promises
 * an error with that code. Under a `console.log(...)` the lines of comment are what it prints.
 */
import ts from "typescript";
import { expect } from "vitest";

/** One promise of an example, kept or not. */
export interface Promised {
  /** The expression, as it is written. */
  readonly code: string;
  /** The result, as it is written. */
  readonly result: string;
  /** Compares the two. @throws the test runner's assertion error when they differ */
  readonly check: () => Promise<void>;
}

/** The examples in the docstrings of one source file. */
export function docstringExamples(source: string): readonly string[] {
  const file = ts.createSourceFile("source.ts", source, ts.ScriptTarget.Latest, true);
  const found = new Set<string>();
  const visit = (node: ts.Node): void => {
    for (const tag of ts.getJSDocTags(node)) {
      if (tag.tagName.text === "example") found.add(ts.getTextOfJSDocComment(tag.comment)?.trim() ?? "");
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  return [...found];
}

/** The functions that a source file exports, those apart that have an example in the docstring of any overload. */
export function functionsOf(source: string): {
  readonly told: readonly string[];
  readonly untold: readonly string[];
} {
  const file = ts.createSourceFile("source.ts", source, ts.ScriptTarget.Latest, true);
  const functions = file.statements.filter(ts.isFunctionDeclaration);
  const exported = functions.filter(({ modifiers }) =>
    modifiers?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword),
  );
  const nameOf = ({ name }: ts.FunctionDeclaration) => name?.text ?? "";
  const hasExample = (node: ts.Node) =>
    ts.getJSDocTags(node).some(({ tagName }) => tagName.text === "example");
  const told = new Set(exported.filter(hasExample).map(nameOf));
  return { told: [...told], untold: [...new Set(exported.map(nameOf))].filter((name) => !told.has(name)) };
}

/** The TypeScript and JavaScript between the fences of a page. */
export function fencedExamples(markdown: string): readonly string[] {
  return [...markdown.matchAll(/^```(?:ts|js)\n([\s\S]*?)^```/gm)].map(([, code]) => code!);
}

/**
 * Runs an example and gives its promises.
 * @param scope what the example may name without importing it
 * @param load what `import ... from "package"` gives
 */
export async function runExample(
  code: string,
  scope: Readonly<Record<string, unknown>>,
  load: (specifier: string) => Promise<Readonly<Record<string, unknown>>>,
): Promise<readonly Promised[]> {
  const file = ts.createSourceFile("example.ts", code, ts.ScriptTarget.Latest, true);
  const promises: Promised[] = [];
  const promise = (expression: string, result: string, actual: () => unknown, wanted: () => unknown) => {
    promises.push({ code: expression, result, check: kept(result, actual, wanted) });
  };
  const body = file.statements.map((statement, index) => {
    if (ts.isImportDeclaration(statement)) return importLine(statement);
    const result = resultAfter(code, statement, file.statements[index + 1]);
    if (result === undefined) return statement.getText();
    const expression = promisedBy(statement, result);
    if (expression === undefined) return statement.getText();
    const printed = printedBy(expression);
    const wanted = printed === undefined ? asLiteral(result) : asPrinted(result);
    const actual = (printed ?? expression).getText();
    const before = ts.isExpressionStatement(statement) ? "" : statement.getText();
    return `${before}\npromise(${JSON.stringify(actual)}, ${JSON.stringify(result)}, async () => (${actual}), () => (${wanted}));`;
  });
  const text = ts.transpile(`{\n${body.join("\n")}\n}`, {
    target: ts.ScriptTarget.ES2022,
    module: ts.ModuleKind.ESNext,
  });
  const names = Object.keys(scope);
  const run = new AsyncFunction("promise", "load", "near", ...names, text);
  await run(promise, load, near, ...names.map((name) => scope[name]));
  return promises;
}

const AsyncFunction = Object.getPrototypeOf(async () => {}).constructor as new (
  ...text: string[]
) => (...values: unknown[]) => Promise<void>;

/** The import, as a declaration that `load` fills. Types are not there when the example runs. */
function importLine(statement: ts.ImportDeclaration): string {
  const named = statement.importClause?.namedBindings;
  if (named === undefined || !ts.isNamedImports(named))
    throw new Error(`named imports only: ${statement.getText()}`);
  const names = named.elements
    .filter((element) => !element.isTypeOnly)
    .map(({ propertyName, name }) => (propertyName ? `${propertyName.text}: ${name.text}` : name.text));
  return `const { ${names.join(", ")} } = await load(${statement.moduleSpecifier.getText()});`;
}

/** What the result behind a statement speaks of; nothing where it is a remark behind a declaration. */
function promisedBy(statement: ts.Statement, result: string): ts.Node | undefined {
  if (ts.isExpressionStatement(statement)) return statement.expression;
  const declared = ts.isVariableStatement(statement) ? statement.declarationList.declarations[0] : undefined;
  return /^["[{\d-]/.test(result) && isExpression(result) ? declared?.name : undefined;
}

/** The comment behind a statement on its line, and the lines of comment right under it. */
function resultAfter(
  code: string,
  statement: ts.Statement,
  next: ts.Statement | undefined,
): string | undefined {
  const after = code.slice(statement.getEnd(), next?.getStart() ?? code.length);
  const lines = after.split("\n");
  const first = /^\s*\/\/ ?(.*)$/.exec(lines[0]!)?.[1];
  const under: string[] = [];
  for (const line of lines.slice(1)) {
    const text = /^\s*\/\/ ?(.*)$/.exec(line)?.[1];
    if (text === undefined) break;
    under.push(text);
  }
  if (first !== undefined) return first.trim();
  const prints = ts.isExpressionStatement(statement) && printedBy(statement.expression) !== undefined;
  return prints && under.length > 0 ? under.join("\n") : undefined;
}

/** What a `console.log(...)` of one argument prints. */
function printedBy(expression: ts.Node): ts.Expression | undefined {
  if (!ts.isCallExpression(expression) || expression.expression.getText() !== "console.log") return undefined;
  return expression.arguments[0];
}

/** What is printed is text; a number or a list may also be shown as its literal. */
function asPrinted(result: string): string {
  return isExpression(result) && !/^[#.]/.test(result) ? asLiteral(result) : JSON.stringify(result);
}

/** A result with each decimal number in it turned into "near this, to the digits shown". */
function asLiteral(result: string): string {
  if (/^throws [\w-]+$/.test(result)) return JSON.stringify(result.slice("throws ".length));
  if (!isExpression(result)) throw new Error(`this result is no expression: ${result}`);
  return result.replace(/"(?:[^"\\]|\\.)*"|(?<![\w$.])-?\d+\.(\d+)/g, (token, digits?: string) =>
    digits === undefined ? token : `near(${token}, ${digits.length})`,
  );
}

function isExpression(text: string): boolean {
  const { diagnostics = [] } = ts.transpileModule(`(${text}\n)`, { reportDiagnostics: true });
  return diagnostics.length === 0;
}

/** A number that rounds to the one shown. */
function near(shown: number, digits: number): unknown {
  return expect.closeTo(shown, digits);
}

function kept(result: string, actual: () => unknown, wanted: () => unknown): () => Promise<void> {
  if (result.startsWith("throws ")) {
    return () => expect(actual()).rejects.toEqual(expect.objectContaining({ code: wanted() }));
  }
  return async () => {
    expect(plain(await actual())).toEqual(wanted());
  };
}

/** Whole numbers may be off by what the arithmetic of a few steps leaves. */
expect.addEqualityTesters([
  (a: unknown, b: unknown) =>
    typeof a === "number" && typeof b === "number" && Math.abs(a - b) <= 1e-12 * Math.abs(b)
      ? true
      : undefined,
]);

/** Typed arrays are shown as lists. */
function plain(value: unknown): unknown {
  if (ArrayBuffer.isView(value) && !(value instanceof DataView)) return Array.from(value as Uint8Array);
  return value;
}
