/**
 * Drafts to measure by. The figure is drawn by a few waves laid over each other, so that its areas have the sizes of
 * those in cloth and no two rows need be alike.
 */

/** Broken twill on 4 ends in the order that cuts clean on all sides. */
const ground = {
  shafts: 4,
  threading: [1, 2, 3, 4],
  steps: [1, 2, 3, 4].map((shaft) => ({ raise: [shaft], sink: [5 - shaft] })),
};

/**
 * A single-unit draw of `side` ends by `side` picks, in units of 4 ends and rows of 4 picks.
 * @param side ends, and picks
 * @param faults how many squares are spoilt so that each makes a finding of its own
 * @param rows different rows; the others repeat them
 */
export function figuredDraft(side, faults = 0, rows = side / 4) {
  const units = side / 4;
  const drawn = Array.from({ length: rows }, (_, row) => {
    const lift = [];
    for (let unit = 0; unit < units; unit++) {
      const wave =
        Math.sin(unit / 17) +
        Math.sin(row / 13) +
        Math.sin((unit + row) / 29) +
        Math.cos((unit - 2 * row) / 41);
      if (wave > 0.2) lift.push(unit + 1);
    }
    return lift;
  });
  const lifts = Array.from({ length: units }, (_, row) => drawn[row % rows]);
  return {
    ground,
    unitEnds: 4,
    threading: Array.from({ length: units }, (_, unit) => [unit + 1]),
    lifts,
    picksPerRow: 4,
  };
}
