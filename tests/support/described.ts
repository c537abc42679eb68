import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";
import { exportedNames, fileOf } from "./exported.js";
import type { Package } from "./packages.js";

/** Something exported that says nothing of itself. */
export interface Undescribed {
  readonly file: string;
  /** `expand.draft`, `Report.size.ends`: its name behind those of what it is in. */
  readonly path: string;
  readonly kind: "declaration" | "parameter" | "field" | "code";
  /** Where the description would stand: what it is, and what holds its docstring. */
  readonly node: ts.Node;
  readonly holder: ts.Node;
}

/** Everything a package exports, each declaration, parameter, field and error code, that has no description. */
export function undescribed({ entries, src }: Package): readonly Undescribed[] {
  const exported = entries.flatMap((entry) => exportedNames(fileOf(src, entry)));
  const files = readdirSync(src, { recursive: true, encoding: "utf8" }).filter((file) =>
    file.endsWith(".ts"),
  );
  const statements = files.flatMap((file) => {
    const path = join(src, file);
    const source = ts.createSourceFile(path, readFileSync(path, "utf8"), ts.ScriptTarget.Latest, true);
    return [...source.statements];
  });
  const names = new Set(exported.map((name) => name.replace(/^type /, "")));
  const met = withBases(names, statements);
  const bases = new Set([...met].filter((name) => !names.has(name)));
  return statements.flatMap((statement) => [
    ...(isHanded(statement) ? ofStatement(statement, names) : []),
    ...(isType(statement) ? ofStatement(statement, bases) : []),
  ]);
}

/** The names, and those of the types whose fields theirs have: by `extends`, by `&`, or as a name for them. */
function withBases(names: ReadonlySet<string>, statements: readonly ts.Statement[]): ReadonlySet<string> {
  const bases = new Set(names);
  const ahead = [...names];
  for (let name = ahead.pop(); name !== undefined; name = ahead.pop()) {
    const visit = (node: ts.Node): void => {
      const isPart =
        ts.isTypeReferenceNode(node) &&
        (ts.isIntersectionTypeNode(node.parent) || ts.isTypeAliasDeclaration(node.parent));
      const base = ts.isExpressionWithTypeArguments(node)
        ? node.expression
        : isPart
          ? node.typeName
          : undefined;
      if (base !== undefined && !bases.has(base.getText())) {
        bases.add(base.getText());
        ahead.push(base.getText());
      }
      ts.forEachChild(node, visit);
    };
    for (const statement of statements.filter(isType)) if (statement.name.text === name) visit(statement);
  }
  return bases;
}

const isType = (statement: ts.Statement) =>
  ts.isInterfaceDeclaration(statement) || ts.isTypeAliasDeclaration(statement);

function isHanded(statement: ts.Statement): boolean {
  const modifiers = ts.canHaveModifiers(statement) ? (statement.modifiers ?? []) : [];
  return modifiers.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword);
}

function ofStatement(statement: ts.Statement, names: ReadonlySet<string>): readonly Undescribed[] {
  const declared = ts.isVariableStatement(statement) ? statement.declarationList.declarations : [statement];
  return declared.flatMap((node: ts.Node & { name?: ts.Node }) => {
    const name = node.name?.getText() ?? "";
    if (!names.has(name) || isBehindOverloads(node, name)) return [];
    const found: Undescribed[] = [];
    const file = statement.getSourceFile().fileName;
    const tell = (kind: Undescribed["kind"], path: string, at: ts.Node, holder: ts.Node): void => {
      found.push({ file, path, kind, node: at, holder });
    };
    if (isHanded(statement) && textOf(statement) === "") tell("declaration", name, node, statement);
    ofCodes(statement, name, tell);
    const body = "body" in node ? node.body : undefined;
    const visit = (at: ts.Node, path: string, holder: ts.Node): void => {
      if (at === body || ts.isBlock(at) || ts.isJSDoc(at) || isAsked(at) || isOfItsType(at)) return;
      const inner = memberOf(at);
      let [inside, held] = [path, holder];
      if (inner !== undefined) {
        if (isPrivate(at)) return;
        [inside, held] = [`${path}.${inner}`, at];
        if (!ts.isConstructorDeclaration(at) && textOf(at) === "") tell("field", inside, at, at);
      }
      if (ts.isParameter(at) && isNamed(at)) {
        const said = ts.getJSDocParameterTags(at).some(({ comment }) => textOfComment(comment) !== "");
        if (!said && !saidOf(holder, at.name.getText())) {
          tell("parameter", `${path}.${nameOf(at)}`, at, holder);
        }
      }
      ts.forEachChild(at, (child) => visit(child, inside, held));
    };
    ts.forEachChild(node, (child) => visit(child, name, statement));
    return found;
  });
}

/** Whether a constant holds what its type describes, such as a table of functions. */
function isOfItsType(node: ts.Node): boolean {
  const { parent } = node;
  return ts.isVariableDeclaration(parent) && parent.type !== undefined && parent.initializer === node;
}

/** Whether a type only asks what another is like, as in `L extends { kind: "size" }` and `Extract<L, { kind: "size" }>`. */
function isAsked(node: ts.Node): boolean {
  const { parent } = node;
  if (ts.isConditionalTypeNode(parent)) return parent.extendsType === node;
  return (
    ts.isTypeReferenceNode(parent) && parent.typeName.getText() === "Extract" && ts.isTypeLiteralNode(node)
  );
}

/** Whether a function is called by the ways that stand before it alone. */
function isBehindOverloads(node: ts.Node, name: string): boolean {
  if (!ts.isFunctionDeclaration(node) || node.body === undefined) return false;
  return node
    .getSourceFile()
    .statements.some((other) => ts.isFunctionDeclaration(other) && !other.body && other.name?.text === name);
}

/** The name of a field or a method, where a node is one. */
function memberOf(node: ts.Node): string | undefined {
  if (ts.isConstructorDeclaration(node)) return "constructor";
  const isMember =
    ts.isPropertySignature(node) ||
    ts.isMethodSignature(node) ||
    ts.isPropertyDeclaration(node) ||
    ts.isMethodDeclaration(node) ||
    ts.isAccessor(node) ||
    (ts.isPropertyAssignment(node) && isShown(node));
  return isMember ? (node as ts.NamedDeclaration).name!.getText() : undefined;
}

/** Whether the type of a constant is made of what it holds, so that someone who uses it sees its fields one by one. */
function isShown(node: ts.Node): boolean {
  const { parent } = node;
  if (ts.isVariableDeclaration(parent)) return parent.type === undefined;
  const isPart =
    ts.isObjectLiteralExpression(parent) ||
    ts.isAsExpression(parent) ||
    ts.isSatisfiesExpression(parent) ||
    ts.isPropertyAssignment(parent);
  return isPart && isShown(parent);
}

function ofCodes(
  statement: ts.Statement,
  name: string,
  tell: (kind: "code", path: string, at: ts.Node, holder: ts.Node) => void,
): void {
  if (!ts.isTypeAliasDeclaration(statement) || !name.endsWith("ErrorCode")) return;
  const said = new Set([...textOf(statement).matchAll(/^- `([a-z-]+)`: \S/gm)].map(([, code]) => code));
  const visit = (node: ts.Node): void => {
    if (ts.isLiteralTypeNode(node) && ts.isStringLiteral(node.literal) && !said.has(node.literal.text)) {
      tell("code", `${name}.${node.literal.text}`, node, statement);
    }
    ts.forEachChild(node, visit);
  };
  visit(statement.type);
}

/** Whether a parameter is one that a docstring can name: not `this`, not the key of a record, not of a callback. */
function isNamed({ name, parent }: ts.ParameterDeclaration): boolean {
  if (name.getText() === "this" || ts.isIndexSignatureDeclaration(parent)) return false;
  return (
    ts.findAncestor(parent.parent, (node) => ts.isParameter(node) || ts.isCallExpression(node)) === undefined
  );
}
const nameOf = ({ name, parent }: ts.ParameterDeclaration) =>
  ts.isIdentifier(name) ? name.text : `${parent.parameters.findIndex((other) => other.name === name)}`;

function isPrivate(node: ts.Node): boolean {
  const modifiers = ts.canHaveModifiers(node) ? (node.modifiers ?? []) : [];
  if (
    modifiers.some(
      ({ kind }) => kind === ts.SyntaxKind.PrivateKeyword || kind === ts.SyntaxKind.ProtectedKeyword,
    )
  )
    return true;
  return (node as ts.NamedDeclaration).name?.kind === ts.SyntaxKind.PrivateIdentifier;
}

/** What the docstring of a declaration says before its tags. */
function textOf(node: ts.Node): string {
  const docs = ts.getJSDocCommentsAndTags(node).filter(ts.isJSDoc);
  return docs
    .map(({ comment }) => textOfComment(comment))
    .join("\n")
    .trim();
}

/** Whether the docstring of what a parameter is in has words for it. */
function saidOf(holder: ts.Node, name: string): boolean {
  const tags = ts.getJSDocTags(holder).filter(ts.isJSDocParameterTag);
  return tags.some((tag) => tag.name.getText() === name && textOfComment(tag.comment) !== "");
}

const textOfComment = (comment: string | ts.NodeArray<ts.JSDocComment> | undefined) =>
  (ts.getTextOfJSDocComment(comment) ?? "").trim();
