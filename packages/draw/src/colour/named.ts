import { DrawError } from "../error.js";
import { colourDistance, shaded } from "./compare.js";
import { parseRgb, type Rgb, rgbOf } from "./rgb.js";

/**
 * Yarn and dye colours by their plain names, as a sheet draws them. A mix of words takes the last it knows, lightened
 * or darkened by the words before it, so that "dark moss green" is a dark green.
 */
const named: Readonly<Record<string, string>> = {
  black: "#1c1b1a",
  white: "#f7f5f0",
  natural: "#e6dcc6",
  ecru: "#e3d7bd",
  cream: "#efe6cf",
  ivory: "#f2ecdc",
  bleached: "#f4f1ea",
  unbleached: "#ddd0b4",
  undyed: "#e2d8c2",
  linen: "#d8cbb0",
  flax: "#cdbb94",
  oatmeal: "#d6c8ab",
  grey: "#8b8880",
  gray: "#8b8880",
  silver: "#b9b8b4",
  charcoal: "#3d3c3b",
  slate: "#57626b",
  ash: "#aaa79f",
  brown: "#6b4a32",
  chestnut: "#713f2a",
  walnut: "#5a4331",
  chocolate: "#4a3225",
  tan: "#bb9a70",
  fawn: "#bfa27c",
  beige: "#d9c8a8",
  sand: "#d3c09a",
  camel: "#b98d58",
  copper: "#a9643a",
  bronze: "#8a6a36",
  rust: "#9c4a23",
  red: "#a8281f",
  madder: "#9b3326",
  crimson: "#8f1d2c",
  scarlet: "#b8281c",
  wine: "#5e1f2b",
  burgundy: "#5e1f2b",
  rose: "#c2707a",
  pink: "#d79aa0",
  coral: "#d9735b",
  brick: "#93412e",
  orange: "#d27a25",
  apricot: "#e3a36b",
  amber: "#c98a1e",
  gold: "#b8902f",
  ochre: "#bd8a32",
  mustard: "#c09a2f",
  yellow: "#e0bd3c",
  straw: "#dcc67e",
  honey: "#cf9c3f",
  weld: "#d6b93a",
  saffron: "#db9a26",
  lemon: "#e8d66a",
  green: "#3f6b43",
  moss: "#66723a",
  olive: "#6c6a35",
  sage: "#93a083",
  forest: "#2b4a34",
  emerald: "#1f6b50",
  fern: "#55763f",
  leaf: "#55763f",
  lime: "#9aae3c",
  mint: "#a6c9ae",
  teal: "#256a6c",
  turquoise: "#3c9c9a",
  blue: "#34507a",
  indigo: "#2c3f66",
  navy: "#1f2a47",
  woad: "#5b7d9b",
  sky: "#8db4d2",
  denim: "#4b627d",
  cobalt: "#2a4f9b",
  azure: "#4f8fc0",
  ice: "#cfdfe6",
  midnight: "#1b2238",
  violet: "#5d4a7d",
  purple: "#5b3a66",
  lilac: "#ac9bbd",
  lavender: "#a79cc0",
  plum: "#5c2f49",
  heather: "#8e7791",
  mauve: "#957b94",
  aubergine: "#3e2740",
  magenta: "#97306b",
};

const shades: Readonly<Record<string, number>> = {
  light: 0.35,
  pale: 0.5,
  soft: 0.2,
  deep: -0.25,
  dark: -0.35,
};

/**
 * A yarn's colour as a recipe writes it: `#rgb`, `#rrggbb`, or a name in words.
 * @param text the words; the last that names a colour counts, made lighter or darker by words such as "pale" and "dark"
 * @returns undefined when no word of it is a colour known here
 * @throws {DrawError} `bad-colour` for a `#` that no three or six hexadecimal digits follow
 * @example parseColour("old gold") // [184, 144, 47]
 */
export function parseColour(text: string): Rgb | undefined {
  const plain = text.trim().toLowerCase();
  if (plain.startsWith("#")) {
    const rgb = parseRgb(plain.length === 4 ? plain.replace(/[^#]/g, "$&$&") : plain);
    if (rgb !== undefined) return rgb;
    throw new DrawError("bad-colour", `the colour "${text}" is not written #rgb or #rrggbb`, { found: text });
  }
  const words = plain.split(/[^\p{L}]+/u);
  const name = words.findLast((word) => Object.hasOwn(named, word));
  if (name === undefined) return undefined;
  const shade = words.reduce((sum, word) => sum + (Object.hasOwn(shades, word) ? shades[word]! : 0), 0);
  return shaded(rgbOf(named[name]!), Math.max(-0.7, Math.min(0.7, shade)));
}

/**
 * The plain name of the colour that lies nearest to one.
 * @param colour a colour as `#rrggbb`
 * @example nearestColourName("#2b3a5e") // "indigo"
 * @throws {DrawError} `bad-colour` for what is not `#rrggbb`
 */
export function nearestColourName(colour: string): string {
  const wanted = rgbOf(colour);
  const far = (name: string) => colourDistance(rgbOf(named[name]!), wanted);
  return Object.keys(named).reduce((best, name) => (far(name) < far(best) ? name : best));
}
