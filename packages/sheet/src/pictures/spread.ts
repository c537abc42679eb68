/** A rectangle in mm. */
export interface Area {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Room left between two things that are set apart, in mm. */
const APART = 0.3;

/** Steps by which a thing moves away from where it belongs, in mm. */
const STEP = 1.2;

/**
 * Places for things of a size, each as near as it can be to the middle of what it belongs to, none over another or beyond
 * the bounds; undefined for one that finds no room within `reach` mm.
 */
export function placer(bounds: Area): {
  readonly place: (size: { width: number; height: number }, at: Area, reach: number) => Area | undefined;
} {
  const placed: Area[] = [];
  const place = (size: { width: number; height: number }, at: Area, reach: number) => {
    const middle = { x: at.x + (at.width - size.width) / 2, y: at.y + (at.height - size.height) / 2 };
    for (const { dx, dy } of offsets(reach)) {
      const found = { x: middle.x + dx, y: middle.y + dy, ...size };
      if (!within(bounds, found) || placed.some((other) => overlap(other, found))) continue;
      placed.push(found);
      return found;
    }
    return undefined;
  };
  return { place };
}

/** Moves away from a middle, the shortest first, in sixteen directions. */
function* offsets(reach: number): Generator<{ readonly dx: number; readonly dy: number }> {
  yield { dx: 0, dy: 0 };
  for (let far = STEP; far <= reach; far += STEP)
    for (let turn = 0; turn < 16; turn++) {
      const angle = (turn * Math.PI) / 8;
      yield { dx: far * Math.cos(angle), dy: far * Math.sin(angle) };
    }
}

function within(bounds: Area, { x, y, width, height }: Area): boolean {
  return (
    x >= bounds.x &&
    y >= bounds.y &&
    x + width <= bounds.x + bounds.width &&
    y + height <= bounds.y + bounds.height
  );
}

function overlap(a: Area, b: Area): boolean {
  return (
    a.x < b.x + b.width + APART &&
    b.x < a.x + a.width + APART &&
    a.y < b.y + b.height + APART &&
    b.y < a.y + a.height + APART
  );
}
