/** A YAML text as a tree of nodes, read under limits, with a place for each node. */
import {
  Composer,
  type Document,
  isAlias,
  isScalar,
  Lexer,
  type Node,
  Parser,
  visit,
  type YAMLError,
} from "yaml";
import { FileError, type FileErrorCode } from "../error.js";
import { lineStarts, placeIn, top } from "../place.js";
import { largestFile } from "../text.js";
import { aliasGrowth } from "./alias-growth.js";
import { isUnclosedQuote, noMark, sentenceOf } from "./yaml-errors.js";

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
 * @throws {FileError} `not-yaml`, `two-documents`, `too-deep`, `too-many-parts`, `too-large`, `empty`
 */
export function readTree(text: string, file: string): Tree {
  // A carriage return alone ends a line too, which the parser does not know; the length stays the same.
  const source = text.replace(/\r(?!\n)/g, "\n");
  const starts = lineStarts(source);
  const refusal = (code: FileErrorCode, sentence: string, offset: number) =>
    new FileError(code, sentence, file, placeIn(starts, offset));

  const document = compose(source, refusal);
  // What the parser only warns of, a tag or a directive it does not know, has no meaning in a recipe either.
  const error = [...document.errors, ...document.warnings].sort((a, b) => a.pos[0] - b.pos[0])[0];
  if (error !== undefined) throw refusal("not-yaml", sentenceOf(error), openingOf(error, document));
  const { version } = document.directives.yaml;
  if (version !== "1.2") {
    throw refusal("not-yaml", `this says that it is YAML ${version}; a recipe is YAML 1.2`, 0);
  }
  if (document.contents === null || (isScalar(document.contents) && document.contents.source === "")) {
    throw new FileError("empty", "the file holds nothing but comments", file, top);
  }
  return { file, text: source, document, starts, aliases: findAliases(document, refusal) };
}

/** Where a fault of YAML begins: a text in quotes that is never closed where it is opened. */
function openingOf(error: YAMLError, document: Document.Parsed): number {
  let opening = error.pos[0];
  if (isUnclosedQuote(error)) {
    visit(document, {
      Scalar(_key, node) {
        if (node.range?.[1] === opening) {
          opening = node.range[0];
          return visit.BREAK;
        }
        return undefined;
      },
    });
  }
  return opening;
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

/** The type marks of plain data; others, such as that of bytes, would make another thing of a text. */
const plainTag = /^tag:yaml\.org,2002:(?:str|int|float|bool|null|map|seq)$/;

/**
 * What each alias stands for: the last node before it that bears its name. They are not copied out, but what reads the
 * tree walks through them, so together they may come to no more than a file may.
 */
function findAliases(document: Document.Parsed, refusal: Refusal): ReadonlyMap<Node, Node> {
  const anchors = new Map<string, Node>();
  const aliases = new Map<Node, Node>();
  const grown = aliasGrowth();
  visit(document, {
    Node(_key, node) {
      if (!isAlias(node) && node.tag !== undefined && !plainTag.test(node.tag)) {
        throw refusal("not-yaml", noMark, node.range?.[0] ?? 0);
      }
      if (isAlias(node)) {
        const target = anchors.get(node.source);
        if (target === undefined) {
          const sentence = `the alias "*${node.source.slice(0, 40)}" stands for nothing before it`;
          throw refusal("not-yaml", sentence, node.range?.[0] ?? 0);
        }
        const at = node.range?.[0] ?? 0;
        const [start = 0, end = 0] = target.range ?? [];
        if (end > at) throw refusal("not-yaml", "an alias stands here within the value it stands for", at);
        if (grown.add(at, start, end) > largestFile) {
          const sentence = `with the aliases written out, the file is larger than ${largestFile / 2 ** 20} MiB`;
          throw refusal("too-large", sentence, at);
        }
        aliases.set(node, target);
      } else if (node.anchor !== undefined) anchors.set(node.anchor, node);
    },
  });
  return aliases;
}
