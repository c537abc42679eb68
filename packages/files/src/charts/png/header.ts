import { badPng, readChunks } from "./chunks.js";
import type { Layout } from "./lines.js";

/** The most pixels that are read: a 10,000 by 10,000 chart and some more. */
const mostPixels = 2 ** 27;
/** The most bytes that a picture may unpack to. */
const mostUnpacked = 2 ** 28;

/** A PNG file taken apart, still compressed. */
export interface PngParts extends Layout {
  /** Bits in a sample: 1, 2, 4, 8 or 16. */
  readonly depth: number;
  readonly kind: "grey" | "rgb" | "palette" | "grey-alpha" | "rgb-alpha";
  /** Red, green, blue for each entry. */
  readonly palette: Uint8Array;
  /** The part `tRNS`, empty when there is none. */
  readonly transparency: Uint8Array;
  readonly squares: readonly Uint8Array[];
}

const kinds: Readonly<
  Record<
    number,
    { readonly kind: PngParts["kind"]; readonly samples: number; readonly depths: readonly number[] }
  >
> = {
  0: { kind: "grey", samples: 1, depths: [1, 2, 4, 8, 16] },
  2: { kind: "rgb", samples: 3, depths: [8, 16] },
  3: { kind: "palette", samples: 1, depths: [1, 2, 4, 8] },
  4: { kind: "grey-alpha", samples: 2, depths: [8, 16] },
  6: { kind: "rgb-alpha", samples: 4, depths: [8, 16] },
};

/**
 * Takes a PNG file apart and checks every size before anything is unpacked.
 * @throws {FileError} `bad-chart` when it is damaged, `too-large` sides among it
 */
export function readParts(bytes: Uint8Array, file: string): PngParts {
  let header: Omit<PngParts, "palette" | "transparency" | "squares"> | undefined;
  let palette: Uint8Array = new Uint8Array(0);
  let transparency: Uint8Array = new Uint8Array(0);
  const squares: Uint8Array[] = [];
  for (const { type, data, offset } of readChunks(bytes, file)) {
    if ((header === undefined) !== (type === "IHDR")) {
      throw badPng(file, "the PNG picture is damaged: its header is not where it belongs", offset);
    }
    if (type === "IHDR") header = readHeader(data, file);
    else if (type === "PLTE") palette = data;
    else if (type === "tRNS") transparency = data;
    else if (type === "IDAT") squares.push(data);
    else if (type !== "IEND" && /^[A-Z]/.test(type)) {
      throw badPng(file, `the PNG picture has the part ${type}, which is not known here`, offset);
    }
  }
  if (header === undefined) throw badPng(file, "the PNG picture has no header");
  if (header.kind === "palette" && (palette.length === 0 || palette.length % 3 !== 0)) {
    throw badPng(file, "the PNG picture has no palette, or a damaged one");
  }
  return { ...header, palette, transparency, squares };
}

function readHeader(data: Uint8Array, file: string) {
  if (data.length !== 13) throw badPng(file, "the PNG picture has a damaged header");
  const view = new DataView(data.buffer, data.byteOffset, data.byteLength);
  const width = view.getUint32(0);
  const height = view.getUint32(4);
  const [depth, type, compression, filter, interlace] = data.subarray(8) as unknown as readonly number[];
  const colour = kinds[type!];
  if (
    colour === undefined ||
    !colour.depths.includes(depth!) ||
    compression !== 0 ||
    filter !== 0 ||
    interlace! > 1
  ) {
    throw badPng(file, "the PNG picture is of a kind that there is not");
  }
  const bits = depth! * colour.samples;
  if (width === 0 || height === 0) throw badPng(file, "the PNG picture has no pixels");
  if (width * height > mostPixels || (width * height * bits) / 8 > mostUnpacked) {
    throw badPng(file, `the PNG picture has ${width} by ${height} pixels, more than are read`);
  }
  return { width, height, depth: depth!, kind: colour.kind, bits, interlaced: interlace === 1 };
}
