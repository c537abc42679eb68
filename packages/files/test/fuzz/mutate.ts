/** Makes broken files of whole ones, the same ones from the same seed. */

/** Numbers from 0 up to 1. */
export type Random = () => number;

/** A small generator of numbers (mulberry32), the same from the same seed. */
export function randomFrom(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** Pieces that readers stumble over. */
const pieces: readonly string[] = [
  ...[
    "[",
    "]",
    "{",
    "}",
    ":",
    "- ",
    "? ",
    "&a ",
    "*a",
    "!!binary ",
    "|\n",
    ">-\n",
    "'",
    '"',
    "\\e",
    "\\x",
    "#",
    "%",
  ],
  ...["\t", "\r", "\n", "\r\n", "\n---\n", "\n...\n", "\uFEFF", "\u0000", "\u001b[2J", "\u202e", "é", "😀"],
  ...[
    "__proto__",
    "constructor",
    "null",
    "~",
    ".inf",
    ".nan",
    "-1",
    "0",
    "1e400",
    "9999999999999999999",
    "0x7f",
  ],
  ...[
    "*1000000",
    "(((((",
    ")))))",
    "1-100000",
    "X",
    "none",
    "1+1",
    "every-other",
    "exchanged on 1-9999",
    "framed 9 rows of 1",
  ],
  ...[
    "[WIF]",
    "[LIFTPLAN]",
    "Threads=1048576",
    "=",
    ";",
    ",",
    "1=1",
    "P1",
    "P4",
    "IDAT",
    "tRNS",
    "\u00ff\u00ff\u00ff\u00ff",
  ],
];

/** A file with one to six faults. */
export function mutate(file: Uint8Array, random: Random): Uint8Array {
  let bytes = file;
  for (let faults = 1 + Math.floor(random() * 6); faults > 0; faults--) bytes = fault(bytes, random);
  return bytes;
}

function fault(bytes: Uint8Array, random: Random): Uint8Array {
  const below = (end: number) => Math.floor(random() * end);
  const from = below(bytes.length + 1);
  const to = Math.min(bytes.length, from + 1 + below(random() < 0.8 ? 8 : 200));
  const cut = bytes.subarray(from, to);
  switch (below(8)) {
    case 0:
      return join(bytes.subarray(0, from), bytes.subarray(to));
    case 1:
      return bytes.subarray(0, from);
    case 2:
      return join(bytes.subarray(0, to), cut, bytes.subarray(to));
    case 3:
      return join(
        bytes.subarray(0, from),
        ...Array.from({ length: 1 + below(300) }, () => cut),
        bytes.subarray(from),
      );
    case 4: {
      const other = below(bytes.length + 1);
      return join(bytes.subarray(0, other), cut, bytes.subarray(other));
    }
    case 5:
      return bytes.map((byte, i) => (i === from ? byte ^ (1 << below(8)) : byte));
    case 6:
      return join(bytes.subarray(0, from), Uint8Array.of(below(256)), bytes.subarray(from));
    default: {
      const piece = new TextEncoder().encode(pieces[below(pieces.length)]);
      return join(bytes.subarray(0, from), piece, bytes.subarray(random() < 0.5 ? from : to));
    }
  }
}

function join(...parts: readonly Uint8Array[]): Uint8Array {
  const joined = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let offset = 0;
  for (const part of parts) {
    joined.set(part, offset);
    offset += part.length;
  }
  return joined;
}
