/**
 * A few letters that are other ones when the data are others. Not proof against malice, which gains nothing here.
 * The hash is FNV-1a with 32 bits (G. Fowler, L. C. Noll, K.-P. Vo; the constants from memory), over two beginnings.
 * @example fingerprint([1]) === fingerprint([2]) // false
 */
export function fingerprint(data: unknown): string {
  const text = JSON.stringify(data);
  return [hash(text, 0x811c9dc5), hash(text, 0x050c5d1f)].map((half) => half.toString(36)).join("");
}

function hash(text: string, start: number): number {
  let hashed = start;
  for (let i = 0; i < text.length; i++) hashed = Math.imul(hashed ^ text.charCodeAt(i), 0x01000193);
  return hashed >>> 0;
}
