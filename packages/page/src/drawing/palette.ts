/**
 * One ink, one accent, and three signal colours that stay apart for readers with any of the common kinds of colour
 * blindness. They never speak alone: each severity has its own shape as well.
 * Source of the signal colours: M. Okabe and K. Ito, "Color Universal Design", 2008 (vermilion, orange, blue).
 */
export const palette = {
  /** Text and lines. */
  ink: "#1d1b18",
  /** What stands back: captions and small print. */
  muted: "#5f584d",
  /** The page. */
  paper: "#ffffff",
  /** Lines of grids, and frames. */
  rule: "#b9b1a3",
  /** The finest lines, between rows. */
  hair: "#ddd7cc",
  /** Tinted bands. */
  wash: "#f4f0e8",
  /** The one colour that leads the eye. */
  accent: "#7a2e1f",
  /** Signal of an error: vermilion. */
  error: "#d55e00",
  /** Signal of a warning: orange. */
  warning: "#e69f00",
  /** Signal of a note: blue. */
  note: "#0072b2",
} as const;
