/** How the benchmarks print. */

export function line(...cells) {
  console.log(cells.map((cell, i) => (i === 0 ? String(cell).padEnd(52) : ` ${cell}`.padStart(17))).join(""));
}

export const ms = (time) => `${time.toFixed(0)} ms`;

export const within = (measured, most, unit) => `${measured <= most ? "within" : "OVER"} ${most} ${unit}`;

export const least = (measured, fewest, unit) => `${measured >= fewest ? "over" : "UNDER"} ${fewest} ${unit}`;
