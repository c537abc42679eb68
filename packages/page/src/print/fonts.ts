import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { type FontName, fontNames } from "./font-names.js";

const require = /* @__PURE__ */ createRequire(import.meta.url);

/**
 * Where the fonts are installed. All are open under the SIL Open Font License 1.1: Source Serif 4 and Source Sans 3 (Adobe),
 * IBM Plex Sans Arabic (IBM), Noto Sans Hebrew and Noto Emoji (Google).
 */
const files: Readonly<Record<FontName, () => string>> = {
  serif: () => require.resolve("@expo-google-fonts/source-serif-4/400Regular/SourceSerif4_400Regular.ttf"),
  "serif-bold": () =>
    require.resolve("@expo-google-fonts/source-serif-4/600SemiBold/SourceSerif4_600SemiBold.ttf"),
  "serif-italic": () =>
    require.resolve("@expo-google-fonts/source-serif-4/400Regular_Italic/SourceSerif4_400Regular_Italic.ttf"),
  sans: () => require.resolve("@expo-google-fonts/source-sans-3/400Regular/SourceSans3_400Regular.ttf"),
  "sans-bold": () =>
    require.resolve("@expo-google-fonts/source-sans-3/600SemiBold/SourceSans3_600SemiBold.ttf"),
  hebrew: () =>
    require.resolve("@expo-google-fonts/noto-sans-hebrew/400Regular/NotoSansHebrew_400Regular.ttf"),
  arabic: () =>
    require.resolve("@expo-google-fonts/ibm-plex-sans-arabic/400Regular/IBMPlexSansArabic_400Regular.ttf"),
  emoji: () => require.resolve("@expo-google-fonts/noto-emoji/400Regular/NotoEmoji_400Regular.ttf"),
};

/**
 * The bytes of a font of the page, as it is installed: a TrueType file.
 * @param name which of the fonts
 * @example (await installedFont("sans")).length > 100_000 // true
 */
export function installedFont(name: FontName): Promise<Buffer<ArrayBuffer>> {
  return readFile(files[name]());
}

/** The bytes of every font. */
export function fontBytes(): Promise<Uint8Array[]> {
  return Promise.all(fontNames.map(installedFont));
}
