import { needText } from "@drawcord/base";
import { GroundError } from "../error.js";

/** One word of a description and the column of its first letter, from 1. */
interface Word {
  readonly text: string;
  readonly column: number;
}

/** Reads the words of a description one after the other, and knows the column of each. */
export class WordReader {
  readonly #words: readonly Word[];
  readonly #end: number;
  #next = 0;
  /** What was asked for at the next word and not found there. */
  #asked: string[] = [];

  constructor(text: string) {
    needText(text, "a description of a weave");
    this.#words = [...text.matchAll(/,|[^\s,]+/g)].map((found) => ({
      text: found[0].toLowerCase(),
      column: found.index + 1,
    }));
    this.#end = text.trimEnd().length + 1;
  }

  get done(): boolean {
    return this.#next >= this.#words.length;
  }

  /** The next word, left where it is; empty at the end. */
  get peek(): string {
    return this.#words[this.#next]?.text ?? "";
  }

  /** Takes the next word if it is this one. */
  accept(word: string): boolean {
    if (this.peek === word) {
      this.#take();
      return true;
    }
    this.#asked.push(`"${word}"`);
    return false;
  }

  /**
   * Takes one of the words that may stand here.
   * @throws {GroundError} `bad-description`
   */
  expect<const Choice extends string>(...choices: readonly Choice[]): Choice {
    const found = choices.find((choice) => this.accept(choice));
    return found ?? this.fail();
  }

  /** Whether a whole number stands here. */
  get atNumber(): boolean {
    return /^\d{1,6}$/.test(this.peek);
  }

  /**
   * Takes a whole number of at least `least`.
   * @throws {GroundError} `bad-description`
   */
  number(what: string, least = 0): number {
    if (!this.atNumber || Number(this.peek) < least) return this.fail(`${what} (a whole number)`);
    return Number(this.#take());
  }

  /** Takes whole numbers as long as there are some; at least one. */
  numbers(what: string): number[] {
    const all = [this.number(what)];
    while (this.atNumber) all.push(this.number(what));
    return all;
  }

  /** Whether a ratio stands here. */
  get atRatio(): boolean {
    return this.peek.includes("/");
  }

  /**
   * Takes a ratio such as `2/1/1/2`.
   * @throws {GroundError} `bad-description` when it holds anything but whole numbers
   */
  ratio(): number[] {
    if (!/^\d{1,6}(\/\d{1,6})+$/.test(this.peek)) return this.fail("a ratio of ends up and down, as in 1/3");
    return this.#take().split("/").map(Number);
  }

  /**
   * Says what was expected where the next word stands: all that was asked for there, and `expected`.
   * @throws {GroundError} `bad-description`, always
   */
  fail(expected?: string): never {
    const column = this.column;
    const found = this.done ? "the description ends" : `found "${clipped(this.peek)}"`;
    const wanted = [...this.#asked, ...(expected ? [expected] : [])];
    const last = wanted.pop();
    const all = wanted.length > 0 ? `${wanted.join(", ")} or ${last}` : last;
    throw new GroundError("bad-description", `column ${column}: ${found} where ${all} was expected`, {
      column,
    });
  }

  /** The column of the next word, or the one after the last. */
  get column(): number {
    return this.#words[this.#next]?.column ?? this.#end;
  }

  #take(): string {
    const word = this.peek;
    this.#next += 1;
    this.#asked = [];
    return word;
  }
}

/** Text short enough to stand in a sentence. */
export function clipped(text: string, most = 40): string {
  return text.length > most ? `${text.slice(0, most)}…` : text;
}
