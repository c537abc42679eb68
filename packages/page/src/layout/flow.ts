import type { Shape } from "../drawing/shape.js";

/** Shapes that stay together, placed from their own top left. */
export interface FlowBox {
  readonly height: number;
  readonly shapes: readonly Shape[];
}

/** What one page holds. */
export interface FilledPage {
  readonly shapes: Shape[];
  /** The part that the page begins with. */
  readonly part: string;
  /** The parts that begin on it. */
  readonly begins: string[];
  /** How far down it is filled, in mm. */
  filled: number;
}

/**
 * Fills pages from the top. A box that no longer fits goes to the next page whole; with no end to the page, nothing ever
 * has to.
 */
export class Flow {
  readonly pages: FilledPage[] = [];
  readonly width: number;
  readonly height: number;
  #y = 0;
  #part = "";

  constructor(width: number, height: number, used = 0) {
    this.width = width;
    this.height = height;
    this.#open();
    this.#y = used;
  }

  /** An empty flow that begins as far down the page as this one has come, to try out what would fit. */
  fork(): Flow {
    return new Flow(this.width, this.height, this.#y);
  }

  /** Room left on the page, in mm. */
  get room(): number {
    return this.height - this.#y;
  }

  get atTop(): boolean {
    return this.#y === 0;
  }

  /** Names the part that what follows belongs to. */
  begin(part: string): void {
    this.#part = part;
    if (this.atTop) this.pages[this.pages.length - 1] = { ...this.pages.at(-1)!, part };
    this.pages.at(-1)!.begins.push(part);
  }

  /** Leaves room, but never at the top of a page. */
  space(mm: number): void {
    if (!this.atTop) this.#y = Math.min(this.height, this.#y + mm);
  }

  nextPage(): void {
    if (!this.atTop) this.#open();
  }

  /** Goes on to the next page where less room than this is left. */
  need(mm: number): void {
    if (mm > this.room + 1e-6) this.nextPage();
  }

  /**
   * Places a box, on the next page when it does not fit on this one.
   * @param with room that must be left below it as well, so that a heading never stands alone
   */
  put(box: FlowBox, below = 0): void {
    this.need(box.height + below);
    const page = this.pages.at(-1)!;
    page.shapes.push({ kind: "group", x: 0, y: this.#y, shapes: box.shapes });
    this.#y += box.height;
    page.filled = this.#y;
  }

  #open(): void {
    this.pages.push({ shapes: [], part: this.#part, begins: [], filled: 0 });
    this.#y = 0;
  }
}
