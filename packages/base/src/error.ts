import type { Range } from "./range.js";

/** What an error found and what it wanted, by name; numbers that count things count from 1 as the sentence does. */
export type Facts = Readonly<Record<string, string | number>>;

/** An error as plain data: it goes through JSON and through `structuredClone`, so over the border of a worker. */
export interface ErrorData {
  /** The class that was thrown, such as `GridError`. */
  readonly name: string;
  /** Why, as one of the codes that the class lists; it stays when the sentence is reworded. */
  readonly code: string;
  /** What is wrong, as one sentence without its place. */
  readonly sentence: string;
  /** The sentence behind its place, as people read it. */
  readonly message: string;
  /** What was found and what was wanted. */
  readonly facts: Facts;
  /** Where in a text, if it was read from one. */
  readonly place?: Range;
  /** All that is wrong with the text, in its order, for an error that bears it. */
  readonly problems?: readonly ErrorProblem[];
}

/** One of the things that are wrong with a text, as plain data: what, and from where to where. */
export interface ErrorProblem extends Range {
  /** Why, as one of the codes that the class lists. */
  readonly code: string;
  /** What is wrong, without the place. */
  readonly sentence: string;
}

/**
 * The error that every package of Drawcord throws, each under a name of its own: a caller's mistake, or a text that
 * cannot be read. Its `message` is the sentence, behind its place where it has one.
 */
export class DrawcordError<Code extends string = string> extends Error {
  /** The class that was thrown, such as `GridError`. */
  override readonly name: string = "DrawcordError";
  /** Why, as one of the codes that the class lists. */
  readonly code: Code;
  /** What is wrong, as one sentence without its place. */
  readonly sentence: string;
  /** What was found and what was wanted. */
  readonly facts: Facts;
  /** Where in a text, if it was read from one. */
  readonly place: Range | undefined;

  /**
   * @param code why, as one of the codes that the class lists
   * @param sentence what is wrong: where, what was found, what was expected; lower case, without a full stop
   * @param facts what was found and what was wanted
   * @param place where in a text, if it was read from one
   */
  constructor(code: Code, sentence: string, facts: Facts = {}, place?: Range) {
    super(place === undefined ? sentence : `${before(place)}: ${sentence}`);
    this.code = code;
    this.sentence = sentence;
    this.facts = facts;
    this.place = place;
  }

  /** The error as plain data, which `errorFrom` turns back. */
  toJSON(): ErrorData {
    const { name, code, sentence, message, facts, place } = this;
    return { name, code, sentence, message, facts, ...(place === undefined ? {} : { place }) };
  }
}

/** An error that came back from data, under the name that it was thrown by. */
class ReturnedError extends DrawcordError {
  override readonly name: string;
  readonly problems?: readonly ErrorProblem[];

  constructor({ name, code, sentence, message, facts, place, problems }: ErrorData) {
    super(code, sentence, facts, place);
    this.name = name;
    this.message = message;
    if (problems !== undefined) this.problems = problems;
  }

  override toJSON(): ErrorData {
    const { problems } = this;
    return { ...super.toJSON(), ...(problems === undefined ? {} : { problems }) };
  }
}

/**
 * The error that data tells of: name, code, sentence, facts, place and problems are those that were thrown. It is a
 * `DrawcordError` but no longer of the class that threw it, so tell errors apart by their name and code.
 * @param data what `toJSON` gave, as it was or through JSON or `structuredClone`
 * @returns an error to throw on this side
 * @example errorFrom({ name: "GridError", code: "outside", sentence: "no row 7", message: "no row 7", facts: { row: 7 } }).code // "outside"
 */
export function errorFrom(data: ErrorData): DrawcordError & Pick<ErrorData, "problems"> {
  return new ReturnedError(data);
}

function before({ file, line, column }: Range): string {
  return file === "" ? `line ${line}, column ${column}` : `${file}:${line}:${column}`;
}
