import type { Document } from "../document/types.js";
import { showable } from "../drawing/escape.js";
import { fontRuns } from "../drawing/font-runs.js";
import type { Shape } from "../drawing/shape.js";
import { layDocument } from "../layout/document.js";
import { roomWide } from "../layout/room.js";
import type { FontName } from "./font-names.js";
import { installedFont } from "./fonts.js";

/** What is there to join, space or vary others, or stands for what no page can show. */
const UNSEEN = /[\p{Z}\p{Cc}\p{Cf}\ufffd]|\p{Variation_Selector}/u;

/**
 * The letters of a document that no font of a PDF or PNG has, each once, in the order in which they first come: they show
 * as empty boxes there.
 * @param document the document, as `makeSheet` and its like give it
 * @example await missingLetters({ title: "Runner 織", subtitle: "", parts: [] }) // ["織"]
 */
export async function missingLetters(document: Document): Promise<readonly string[]> {
  const letters = new Map<string, FontName>();
  for (const { shapes } of layDocument(document, roomWide, Number.POSITIVE_INFINITY).pages)
    gather(shapes, letters);
  const { create } = await import("fontkit");
  const fonts = new Map<FontName, ReturnType<typeof create>>();
  for (const name of letters.values()) {
    if (!fonts.has(name)) fonts.set(name, create(await installedFont(name)));
  }
  const has = (name: FontName, letter: string) => {
    const font = fonts.get(name)!;
    return "hasGlyphForCodePoint" in font && font.hasGlyphForCodePoint(letter.codePointAt(0)!);
  };
  return [...letters].flatMap(([letter, name]) => (has(name, letter) ? [] : [letter]));
}

/** Every letter past ASCII with the font that it is set in; a letter in several faces is asked of the first. */
function gather(shapes: readonly Shape[], letters: Map<string, FontName>): void {
  for (const shape of shapes) {
    if (shape.kind === "group") gather(shape.shapes, letters);
    if (shape.kind !== "text") continue;
    for (const { text, script } of fontRuns(showable(shape.text))) {
      for (const letter of text) {
        if (letter <= "~" || UNSEEN.test(letter) || letters.has(letter)) continue;
        letters.set(letter, script === "latin" ? shape.face : script);
      }
    }
  }
}
