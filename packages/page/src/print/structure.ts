import type { Tag } from "../drawing/shape.js";

/** The tree by which a PDF is read out: an element for each tag, in the order in which they are painted. */
export class Structure {
  readonly #doc: PDFKit.PDFDocument;
  readonly #element: PDFKit.PDFStructureElement;
  /** The table or row that the last tag belonged to, which the next may go on with. */
  #last: { readonly id: string; readonly structure: Structure } | undefined;

  constructor(doc: PDFKit.PDFDocument, element: PDFKit.PDFStructureElement) {
    this.#doc = doc;
    this.#element = element;
  }

  /**
   * Paints what a tag holds.
   * @param draw is given the tree below a tag that holds others, and nothing for one that holds the text itself
   */
  tagged(tag: Tag, draw: (below: Structure | undefined) => void): void {
    switch (tag.role) {
      case "Artifact":
        this.artifact(() => draw(undefined));
        break;
      case "Table":
      case "TR":
        draw(this.#goingOn(tag.role, tag.id));
        break;
      default: {
        const content = this.#doc.markStructureContent(tag.role);
        draw(undefined);
        this.#doc.endMarkedContent();
        this.#element.add(this.#doc.struct(tag.role, optionsOf(tag), [content]));
      }
    }
  }

  /** Paints what nobody needs to hear of: rules, running heads, page numbers. */
  artifact(draw: () => void): void {
    this.#doc.markContent("Artifact", { type: "Layout" });
    draw();
    this.#doc.endMarkedContent();
  }

  #goingOn(role: "Table" | "TR", id: string): Structure {
    if (this.#last?.id === id) return this.#last.structure;
    const element = this.#doc.struct(role);
    this.#element.add(element);
    const structure = new Structure(this.#doc, element);
    this.#last = { id, structure };
    return structure;
  }
}

/** The declarations of pdfkit leave out the scope of a heading cell. */
type ElementOptions = PDFKit.Mixins.StructureElementOptions & { readonly scope?: "Row" | "Column" };

function optionsOf(tag: Tag): ElementOptions {
  if ("alt" in tag && tag.alt !== undefined) return { alt: tag.alt };
  return "scope" in tag ? { scope: tag.scope } : {};
}
