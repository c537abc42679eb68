/** A YAML text as a tree of nodes, read under limits, with a place for each node. */
import { Composer, type Document, isAlias, isScalar, Lexer, type Node, Parser, visit } from "yaml";
import { FileError, type FileErrorCode } from "../error.js";
import { lineStarts, placeIn, top } from "../place.js";
import { sentenceOf } from "./yaml-errors.js";

/** How deep the parser may stack lists and sections in one another; a recipe takes 20. */
const deepest = 64;
/** The most words and marks (lexemes) a document may have: some 500,000 entries. */
const mostLexemes = 2_000_000;

/** A document and what it takes to name a place in it. */
export interface Tree {
  readonly file: string;
  /** The text that was read, lone carriage returns turned to line feeds. */
  readonly text: string;
  readonly document: Document.Parsed;
  /** Where each line begins. */
  readonly starts: readonly number[];
  /** What each alias of the document stands for. */
  readonly aliases: ReadonlyMap<Node, Node>;
}

/**
 * Reads a text as one YAML 1.2 document. Time and memory are linear in the text; aliases are not copied out.
 * @throws {FileError} `not-yaml`, `two-documents`, `too-deep`, `too-many-parts`, `empty`
 */
export function readTree(text: string, file: string): Tree {
  // A carriage return alone ends a line too, which the parser does not know; the length stays the same.
  const source = text.replace(/\r(?!\n)/g, "\n");
  const starts = lineStarts(source);
  const refusal = (code: FileErrorCode, sentence: string, offset: number) =>
    new FileError(code, sentence, file, placeIn(starts, offset));

  const document = compose(source, refusal);
  const error = [...document.errors].sort((a, b) => a.pos[0] - b.pos[0])[0];
  if (error !== undefined) throw refusal("not-yaml", sentenceOf(error), error.pos[0]);
  if (document.contents === null || (isScalar(document.contents) && document.contents.source === "")) {
    throw new FileError("empty", "the file holds nothing but comments", file, top);
  }
  return { file, text: source, document, starts, aliases: findAliases(document, refusal) };
}

type Refusal = (code: FileErrorCode, sentence: string, offset: number) => FileError;

/** Feeds the text to the parser piece by piece, so that what goes over a limit is never built. */
function compose(source: string, refusal: Refusal): Document.Parsed {
  const parser = new Parser();
  const composer = new Composer({ uniqueKeys: false, prettyErrors: false, logLevel: "silent" });
  let only: Document.Parsed | undefined;
  const keep = (documents: Iterable<Document.Parsed>) => {
    for (const document of documents) {
      if (only !== undefined) {
        const start = document.contents?.range[0] ?? document.range[0];
        throw refusal("two-documents", "a second document begins here; a file holds one recipe", start);
      }
      only = document;
    }
  };

  let lexemes = 0;
  for (const lexeme of new Lexer().lex(source)) {
    if (++lexemes > mostLexemes) {
      const sentence = `the file has more than ${mostLexemes} words and marks; no recipe needs so many`;
      throw refusal("too-many-parts", sentence, parser.offset);
    }
    for (const token of parser.next(lexeme)) keep(composer.next(token));
    // Beyond this the composer, which calls itself, could run out of stack.
    if (parser.stack.length > deepest) {
      throw refusal("too-deep", "lists and sections lie too deep in one another here", parser.offset);
    }
  }
  for (const token of parser.end()) keep(composer.next(token));
  keep(composer.end(true, source.length));
  return only!;
}

/** What each alias stands for: the last node before it that bears its name. */
function findAliases(document: Document.Parsed, refusal: Refusal): ReadonlyMap<Node, Node> {
  const anchors = new Map<string, Node>();
  const aliases = new Map<Node, Node>();
  visit(document, {
    Node(_key, node) {
      if (isAlias(node)) {
        const target = anchors.get(node.source);
        if (target === undefined) {
          const sentence = `the alias "*${node.source.slice(0, 40)}" stands for nothing before it`;
          throw refusal("not-yaml", sentence, node.range?.[0] ?? 0);
        }
        aliases.set(node, target);
      } else if (node.anchor !== undefined) anchors.set(node.anchor, node);
    },
  });
  return aliases;
}
