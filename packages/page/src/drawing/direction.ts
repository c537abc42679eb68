/** Right to left where its first letter is of a script that runs so. */
export function runsLeft(text: string): boolean {
  const letter = /\p{L}/u.exec(text)?.[0];
  return letter !== undefined && /[\p{Script=Hebrew}\p{Script=Arabic}]/u.test(letter);
}
