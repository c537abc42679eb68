import type { Document } from "../src/index.js";

const picture = {
  id: "squares",
  caption: "A square",
  alt: "A black square.",
  drawing: {
    width: 10,
    height: 10,
    shapes: [{ kind: "path", d: "M0 0h10v10h-10z", fill: "#000000", role: "drawn" }],
  },
} as const;

const document: Document = {
  title: "Moth and lantern",
  subtitle: "two parts",
  parts: [
    { name: "words", title: "Words", blocks: [{ kind: "paragraph", text: "Some words." }] },
    { name: "pictures", title: "Pictures", blocks: [{ kind: "pictures", pictures: [picture] }] },
  ],
};

/** What docstring examples may name besides what is exported. */
export const scope = { document, picture };
