import { expect } from "vitest";

/** A package's class of errors, whose codes are `Code`. */
type Refusals<Code extends string> = new (
  ...given: never[]
) => Error & { readonly code: Code; readonly facts: object };

/**
 * What `run` is refused with, which must be of the package's class.
 * @param run what is to be refused
 * @param Refusal the class
 */
export function refusalBy<Code extends string>(run: () => unknown, Refusal: Refusals<Code>) {
  let caught: unknown;
  try {
    run();
  } catch (error) {
    caught = error;
  }
  expect(caught).toBeInstanceOf(Refusal);
  return caught as InstanceType<Refusals<Code>>;
}

/**
 * An expectation for the refusals of one package: that `run` is refused with `code`, facts that include `facts`, and a
 * sentence that says `sentence`.
 * @param Refusal the package's class of errors
 */
export function refusalsOf<Code extends string>(Refusal: Refusals<Code>) {
  return (run: () => unknown, code: Code, sentence: string | RegExp, facts: object = {}): void => {
    const error = refusalBy(run, Refusal);
    expect(error.message).toMatch(sentence);
    expect(error.code).toBe(code);
    expect(error.facts).toMatchObject(facts);
  };
}
