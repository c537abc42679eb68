import type { Bound, Document } from "../document/types.js";
import { installedFont } from "./fonts.js";
import { type Paper, pdfWith } from "./pdf.js";

/**
 * A document as a PDF: vector pictures, real text in embedded fonts, a running head with the document and the part, page
 * numbers, bookmarks, and tags by which it can be read out. Several are bound one after
 * another, each with page numbers of its own. The same document gives the same bytes: nothing in it tells of the time or the machine.
 * @param document what is printed, or several
 * @param paper default `a4`
 * @example new TextDecoder().decode((await toPdf(document)).subarray(0, 5)) // "%PDF-"
 */
export function toPdf(document: Document | Bound, paper: Paper = "a4"): Promise<Uint8Array> {
  return pdfWith(document, installedFont, paper);
}
