import { type GlossaryTerm, glossary } from "./terms.js";

/**
 * The terms of the glossary that a text uses, in the order of the alphabet; a longer one does not count for a shorter one
 * within it.
 * @param text any running text
 * @example termsIn("9 static units").map(({ term }) => term) // ["static unit"]
 */
export function termsIn(text: string): readonly GlossaryTerm[] {
  const used = new Set<GlossaryTerm>();
  let left = text;
  const forms = glossary
    .flatMap((entry) => [entry.term, ...(entry.forms ?? [])].map((form) => ({ entry, form })))
    .toSorted((a, b) => b.form.length - a.form.length);
  for (const { entry, form } of forms) {
    const word = new RegExp(`(?<![\\p{L}-])${form}s?(?![\\p{L}])`, "giu");
    const without = left.replace(word, " ");
    if (without === left) continue;
    used.add(entry);
    left = without;
  }
  return glossary.filter((entry) => used.has(entry));
}
