/** Titles that break pages. */
export const titles: Readonly<Record<string, string>> = {
  "quotes and angle brackets": `"Moth" & 'lantern' <b>runner</b> <script>alert(1)</script> &amp;`,
  emoji: "Moth 🦋 and lantern 🏮 runner 👩🏽‍🌾",
  Hebrew: "ראנר עש ופנסים 12",
  Arabic: "مفرش الفراشة والفانوس",
  "both directions": "Runner עש ופנס with lanterns (مفرش) 1",
  "300 characters":
    "A runner of moths and paper lanterns for the long table of the winter course ".repeat(4).slice(0, 299) +
    ".",
  "300 characters without a blank": "Mothlantern".repeat(28).slice(0, 300),
};
