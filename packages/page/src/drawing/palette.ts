/**
 * One ink, one accent, and three signal colours that stay apart for readers with any of the common kinds of colour
 * blindness. They never speak alone: each severity has its own shape as well.
 * Source of the signal colours: M. Okabe and K. Ito, "Color Universal Design", 2008 (vermilion, orange, blue).
 */
export const palette = {
  ink: "#1d1b18",
  muted: "#5f584d",
  paper: "#ffffff",
  rule: "#b9b1a3",
  hair: "#ddd7cc",
  wash: "#f4f0e8",
  accent: "#7a2e1f",
  error: "#d55e00",
  warning: "#e69f00",
  note: "#0072b2",
} as const;
