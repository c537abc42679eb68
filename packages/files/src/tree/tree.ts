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
import { lineStarts, stretchIn, top } from "../place.js";
import { largestFile } from "../text.js";
import { aliasGrowth } from "./alias-growth.js";
import { noProblems, type Problems, tell } from "./problems.js";
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
  /** What is wrong with the text, as far as it is known: at first the faults of YAML. */
  readonly problems: Problems;
}

/**
 * Reads a text as one YAML 1.2 document. Time and memory are linear in the text; aliases are not copied out. Faults that
 * leave a document to be read are told in its `problems`.
 * @throws {FileError} `not-yaml` for another version of YAML, `too-deep`, `too-many-parts`, `too-large`, `empty`
 */
export function readTree(text: string, file: string): Tree {
  // A carriage return alone ends a line too, which the parser does not know; the length stays the same.
  const source = text.replace(/\r(?!\n)/g, "\n");
  const starts = lineStarts(source);
  const refusal: Refusal = (code, sentence, from, to = from) =>
    new FileError(
      code,
      sentence,
      file,
      stretchIn(starts, Math.min(from, source.length), Math.min(to, source.length)),
    );

  const problems = noProblems();
  const { document, second } = compose(source, refusal);
  // What the parser only warns of, a tag or a directive it does not know, has no meaning in a recipe either.
  for (const error of ownFaults([...document.errors, ...document.warnings])) {
    const from = openingOf(error, document);
    tell(problems, refusal("not-yaml", sentenceOf(error), from, error.pos[1]));
  }
  const { version } = document.directives.yaml;
  if (version !== "1.2") {
    throw refusal("not-yaml", `this says that it is YAML ${version}; a recipe is YAML 1.2`, 0);
  }
  const isEmpty =
    document.contents === null || (isScalar(document.contents) && document.contents.source === "");
  if (isEmpty && problems.found.length === 0) {
    throw new FileError("empty", "the file holds nothing but comments", file, top);
  }
  const aliases = findAliases(document, source, refusal, (fault) => tell(problems, fault));
  if (second !== undefined) tell(problems, second);
  return { file, text: source, document, starts, aliases, problems };
}

/** The faults of YAML in the order of the text, without those that an earlier one brings about. */
function ownFaults(errors: readonly YAMLError[]): readonly YAMLError[] {
  const sorted = errors.toSorted((a, b) => a.pos[0] - b.pos[0]);
  const tab = sorted.findIndex(({ code }) => code === "TAB_AS_INDENT");
  return sorted.filter(
    ({ code, pos }, i) =>
      // Behind a tab no line is where it was meant to be.
      (tab < 0 || i <= tab || code === "TAB_AS_INDENT") && sorted[i - 1]?.pos[0] !== pos[0],
  );
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

type Refusal = (code: FileErrorCode, sentence: string, from: number, to?: number) => FileError;

/** The first document of a text, and what is said of a second. */
interface Composed {
  readonly document: Document.Parsed;
  readonly second: FileError | undefined;
}

/** Feeds the text to the parser piece by piece, so that what goes over a limit is never built. */
function compose(source: string, refusal: Refusal): Composed {
  const parser = new Parser();
  const composer = new Composer({ uniqueKeys: false, prettyErrors: false, logLevel: "silent" });
  let first: Document.Parsed | undefined;
  let second: FileError | undefined;
  const keep = (documents: Iterable<Document.Parsed>) => {
    for (const document of documents) {
      if (first !== undefined) {
        const start = document.contents?.range[0] ?? document.range[0];
        second ??= refusal("two-documents", "a second document begins here; a file holds one recipe", start);
      }
      first ??= document;
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
  return { document: first!, second };
}

/** Where the type mark of a value that begins at an offset begins. */
function markBefore(source: string, at: number): number {
  const mark = source.lastIndexOf("!", at);
  return mark < 0 ? at : mark - (source[mark - 1] === "!" ? 1 : 0);
}

/** The type marks of plain data; others, such as that of bytes, would make another thing of a text. */
const plainTag = /^tag:yaml\.org,2002:(?:str|int|float|bool|null|map|seq)$/;

/**
 * What each alias stands for: the last node before it that bears its name. They are not copied out, but what reads the
 * tree walks through them, so together they may come to no more than a file may.
 */
function findAliases(
  document: Document.Parsed,
  source: string,
  refusal: Refusal,
  fault: (error: FileError) => void,
): ReadonlyMap<Node, Node> {
  const anchors = new Map<string, Node>();
  const aliases = new Map<Node, Node>();
  const grown = aliasGrowth();
  visit(document, {
    Node(_key, node) {
      const [at, after] = [node.range?.[0] ?? 0, node.range?.[1] ?? 0];
      if (!isAlias(node)) {
        if (node.tag !== undefined && !plainTag.test(node.tag)) {
          const mark = markBefore(source, at);
          fault(refusal("not-yaml", noMark, mark, Math.max(mark + 1, at)));
        }
        if (node.anchor !== undefined) anchors.set(node.anchor, node);
        return;
      }
      const target = anchors.get(node.source);
      if (target === undefined) {
        const sentence = `the alias "*${node.source.slice(0, 40)}" stands for nothing before it`;
        fault(refusal("not-yaml", sentence, at, after));
        return;
      }
      const [start = 0, end = 0] = target.range ?? [];
      if (end > at) {
        fault(refusal("not-yaml", "an alias stands here within the value it stands for", at, after));
        return;
      }
      if (grown.add(at, start, end) > largestFile) {
        const sentence = `with the aliases written out, the file is larger than ${largestFile / 2 ** 20} MiB`;
        throw refusal("too-large", sentence, at, after);
      }
      aliases.set(node, target);
    },
  });
  return aliases;
}
