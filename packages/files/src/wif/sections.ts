/** What cannot be read without a colour table. */
export const coloured: readonly string[] = ["color palette", "color table", "warp colors", "weft colors"];

/** The sections of a WIF file that are read, in lower case; every other section is ignored. */
export const known: readonly string[] = [
  ...["wif", "contents", "text", "notes", "weaving", "warp", "weft"],
  ...coloured,
  ...["threading", "tieup", "treadling", "liftplan"],
  ...["warp spacing", "weft spacing", "warp thickness", "weft thickness"],
];
