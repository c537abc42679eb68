import { zlibSync } from "fflate";

/** A part of a PDF, as the library that writes it keeps it until it ends. */
interface Part {
  compress: boolean;
  data: { Filter?: unknown; Length?: number };
  buffer: Uint8Array[];
  finalize(): void;
}

/**
 * Has the parts of a PDF packed by the same code in Node and in a browser. The library takes what each of the two has,
 * and their bytes differ.
 * @param doc a PDF before anything is drawn in it
 */
export function packed(doc: PDFKit.PDFDocument): void {
  const document = doc as unknown as { ref(data: object): Part };
  const ref = document.ref.bind(doc);
  document.ref = (data) => {
    const part = ref(data);
    if (!part.compress) return part;
    part.compress = false;
    const finalize = part.finalize.bind(part);
    part.finalize = () => {
      if (part.buffer.length > 0) {
        part.buffer = [zlibSync(joined(part.buffer))];
        part.data.Filter = "FlateDecode";
      }
      finalize();
    };
    return part;
  };
}

/**
 * Bytes one after another.
 * @param chunks in their order
 */
export function joined(chunks: readonly Uint8Array[]): Uint8Array {
  const bytes = new Uint8Array(chunks.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const chunk of chunks) {
    bytes.set(chunk, at);
    at += chunk.length;
  }
  return bytes;
}
