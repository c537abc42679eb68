import { SheetError } from "./error.js";

/** Red, green and blue, 0 to 255. */
export type Rgb = readonly [red: number, green: number, blue: number];

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
 * A yarn's colour as the recipe writes it: `#rgb`, `#rrggbb`, or a name in words.
 * @returns undefined when no word of it is a colour known here
 * @throws {SheetError} `unknown-colour` for a `#` that no three or six hexadecimal digits follow
 * @example readColour("old gold") // [184, 144, 47]
 */
export function readColour(text: string): Rgb | undefined {
  const plain = text.trim().toLowerCase();
  if (plain.startsWith("#")) {
    const short = /^#([0-9a-f])([0-9a-f])([0-9a-f])$/.exec(plain);
    const long =
      short === null
        ? plain
        : `#${short
            .slice(1)
            .map((digit) => digit + digit)
            .join("")}`;
    if (!/^#[0-9a-f]{6}$/.test(long)) {
      throw new SheetError("unknown-colour", `the colour "${text}" is not written #rgb or #rrggbb`, { text });
    }
    return digits(long);
  }
  const words = plain.split(/[^\p{L}]+/u);
  const name = words.findLast((word) => Object.hasOwn(named, word));
  if (name === undefined) return undefined;
  const shade = words.reduce((sum, word) => sum + (Object.hasOwn(shades, word) ? shades[word]! : 0), 0);
  return shaded(digits(named[name]!), Math.max(-0.7, Math.min(0.7, shade)));
}

/** Whether a colour lies nearer to black than to white. */
export function isDark(colour: Rgb): boolean {
  return colour.reduce((sum, part) => sum + part, 0) < 3 * 100;
}

/** Colours are told apart in grey print where one is so many times as light as the other, as WCAG 2.2 reckons contrast. */
const LEAST_CONTRAST = 1.5;

/**
 * A colour, or the nearest lighter or darker shade of it, that stands out from others in grey print: to a reader who sees
 * no colours, and to a copier.
 * Source of the contrast: WCAG 2.2, definition of contrast ratio.
 * @param others the colours that are there already
 * @returns the colour itself where it stands out as it is, or where no shade of it does
 * @example hexOf(toldApart([255, 255, 255], [])) // "#ffffff"
 */
export function toldApart(colour: Rgb, others: readonly Rgb[]): Rgb {
  for (let by = 0; by <= 0.85; by += 0.05) {
    for (const shade of [shaded(colour, -by), shaded(colour, by)]) {
      if (others.every((other) => contrast(shade, other) >= LEAST_CONTRAST)) return by === 0 ? colour : shade;
    }
  }
  return colour;
}

/** How many times as light the lighter of two colours is. */
function contrast(a: Rgb, b: Rgb): number {
  const [dark, light] = [luminance(a), luminance(b)].sort((x, y) => x - y) as [number, number];
  return (light + 0.05) / (dark + 0.05);
}

function luminance([red, green, blue]: Rgb): number {
  return 0.2126 * decode(red) + 0.7152 * decode(green) + 0.0722 * decode(blue);
}

function digits(hex: string): Rgb {
  return [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16)) as unknown as Rgb;
}

function shaded(colour: Rgb, by: number): Rgb {
  const to = by < 0 ? 0 : 255;
  return colour.map((part) => Math.round(part + (to - part) * Math.abs(by))) as unknown as Rgb;
}

/**
 * A colour as pictures write it.
 * @example hexOf([184, 144, 47]) // "#b8902f"
 */
export function hexOf(colour: Rgb): string {
  return `#${colour.map((part) => part.toString(16).padStart(2, "0")).join("")}`;
}

/**
 * What the eye makes of threads too fine to tell apart: their light added in the shares they show, which is done on the
 * light itself and not on its code in the file.
 * Source of the code: IEC 61966-2-1 (sRGB), from memory.
 * @example hexOf(mixed([[[255, 255, 255], 1], [[0, 0, 0], 1]])) // "#bcbcbc"
 */
export function mixed(parts: readonly (readonly [colour: Rgb, share: number])[]): Rgb {
  const whole = parts.reduce((sum, [, share]) => sum + share, 0);
  return [0, 1, 2].map((channel) =>
    encode(parts.reduce((sum, [colour, share]) => sum + decode(colour[channel]!) * share, 0) / whole),
  ) as unknown as Rgb;
}

function decode(code: number): number {
  const part = code / 255;
  return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
}

function encode(light: number): number {
  return Math.round(255 * (light <= 0.0031308 ? light * 12.92 : 1.055 * light ** (1 / 2.4) - 0.055));
}
