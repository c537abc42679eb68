import type { Recipe } from "@drawcord/files";
import { type FontName, pdfWith } from "@drawcord/page/pdf";
import arabic from "@expo-google-fonts/ibm-plex-sans-arabic/400Regular/IBMPlexSansArabic_400Regular.ttf?url";
import emoji from "@expo-google-fonts/noto-emoji/400Regular/NotoEmoji_400Regular.ttf?url";
import hebrew from "@expo-google-fonts/noto-sans-hebrew/400Regular/NotoSansHebrew_400Regular.ttf?url";
import sans from "@expo-google-fonts/source-sans-3/400Regular/SourceSans3_400Regular.ttf?url";
import sansBold from "@expo-google-fonts/source-sans-3/600SemiBold/SourceSans3_600SemiBold.ttf?url";
import serif from "@expo-google-fonts/source-serif-4/400Regular/SourceSerif4_400Regular.ttf?url";
import serifItalic from "@expo-google-fonts/source-serif-4/400Regular_Italic/SourceSerif4_400Regular_Italic.ttf?url";
import serifBold from "@expo-google-fonts/source-serif-4/600SemiBold/SourceSerif4_600SemiBold.ttf?url";
import { usualSheet } from "./sheet.js";

/** Where the site keeps the fonts that are installed with the command. */
const fonts: Readonly<Record<FontName, string>> = {
  serif,
  "serif-bold": serifBold,
  "serif-italic": serifItalic,
  sans,
  "sans-bold": sansBold,
  hebrew,
  arabic,
  emoji,
};

/**
 * The sheet of a recipe as a PDF on A4.
 * @param recipe a sound recipe
 */
export function sheetPdf(recipe: Recipe): Promise<Uint8Array> {
  return pdfWith(usualSheet(recipe), fontOf);
}

async function fontOf(name: FontName): Promise<Uint8Array> {
  const answer = await fetch(fonts[name]);
  return new Uint8Array(await answer.arrayBuffer());
}
