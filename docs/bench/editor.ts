/** The slip of paper with the recipe: YAML, its marks underlined, its mends one click away, its keys completed. */
import {
  autocompletion,
  type CompletionContext,
  type CompletionResult,
  completionKeymap,
} from "@codemirror/autocomplete";
import { defaultKeymap, history, historyKeymap, redo, undo } from "@codemirror/commands";
import { yaml } from "@codemirror/lang-yaml";
import { bracketMatching, HighlightStyle, indentUnit, syntaxHighlighting } from "@codemirror/language";
import {
  type Action,
  type Diagnostic,
  forEachDiagnostic,
  lintGutter,
  lintKeymap,
  setDiagnostics,
} from "@codemirror/lint";
import { EditorState } from "@codemirror/state";
import {
  EditorView,
  highlightActiveLine,
  highlightActiveLineGutter,
  hoverTooltip,
  keymap,
  lineNumbers,
  tooltips,
} from "@codemirror/view";
import { tags } from "@lezer/highlight";
import type { Edit, Stretch } from "./edits.js";
import type { Mark, ToldCause, ToldMend } from "./messages.js";
import { anchorOf, keyAt, keysAt, valuesAt } from "./schema-keys.js";

/** The editor as the bench uses it. */
export interface RecipeEditor {
  /** Puts a whole other text on the paper; undo brings the one before back. */
  setText(text: string): void;
  show(marks: readonly Mark[], causes: readonly ToldCause[]): void;
  apply(edits: readonly Edit[]): void;
  undo(): void;
  redo(): void;
  goTo(place: Stretch): void;
  close(): void;
}

/** What the editor tells and asks for. */
export interface EditorUse {
  changed(text: string): void;
  /** The weaver wants to see what a mend changes. */
  preview(mend: ToldMend): void;
}

const LEVELS = { problem: "error", error: "error", warning: "warning", note: "info" } as const;

/** More marks than this make no sense underlined. */
const MOST_UNDERLINED = 100;

/** Inks of the paper; the page sets them for light and dark. */
const inks = HighlightStyle.define([
  { tag: [tags.propertyName, tags.definition(tags.propertyName)], color: "var(--ink-key)" },
  { tag: [tags.string, tags.special(tags.string)], color: "var(--ink-text)" },
  { tag: [tags.comment, tags.lineComment], color: "var(--ink-aside)", fontStyle: "italic" },
  { tag: [tags.separator, tags.punctuation, tags.squareBracket, tags.brace], color: "var(--ink-sign)" },
]);

/**
 * Opens the editor.
 * @param parent where it stands
 * @param text what it begins with
 * @param use whom it tells
 */
export function openEditor(parent: HTMLElement, text: string, use: EditorUse): RecipeEditor {
  const view = new EditorView({
    parent,
    state: EditorState.create({
      doc: text,
      extensions: [
        lineNumbers(),
        history(),
        bracketMatching(),
        highlightActiveLine(),
        highlightActiveLineGutter(),
        indentUnit.of("  "),
        syntaxHighlighting(inks),
        yaml(),
        lintGutter(),
        autocompletion({ override: [complete] }),
        hoverTooltip(explain),
        // What is laid out within the paper is not to be cut off at its edge.
        tooltips({ parent: parent.closest<HTMLElement>(".bench") ?? parent }),
        keymap.of([...lintKeymap, ...completionKeymap, ...defaultKeymap, ...historyKeymap]),
        EditorView.contentAttributes.of({ "aria-label": "the recipe", spellcheck: "false", tabindex: "0" }),
        EditorView.updateListener.of(({ docChanged, state }) => {
          if (docChanged) use.changed(state.doc.toString());
        }),
      ],
    }),
  });
  const within = ({ from, to }: Stretch) => {
    const { length } = view.state.doc;
    return { from: Math.min(from, length), to: Math.min(Math.max(to, from), length) };
  };
  return {
    setText: (insert) => view.dispatch({ changes: { from: 0, to: view.state.doc.length, insert } }),
    show: (marks, causes) => {
      const told = [
        ...causes.map((cause) => diagnosticOf(cause, use)),
        ...marks.slice(0, MOST_UNDERLINED).map(markOf),
      ].map((one) => ({ ...one, ...within(one) }));
      // What is underlined already is not underlined anew: that would cost as much as a key stroke.
      if (!isUnderlined(view.state, told)) view.dispatch(setDiagnostics(view.state, told));
    },
    apply: (edits) => {
      view.dispatch({ changes: edits.map(({ text: insert, ...place }) => ({ ...within(place), insert })) });
      view.focus();
    },
    undo: () => {
      undo(view);
    },
    redo: () => {
      redo(view);
    },
    goTo: (place) => {
      const { from: anchor, to: head } = within(place);
      view.dispatch({
        selection: { anchor, head },
        effects: EditorView.scrollIntoView(anchor, { y: "center" }),
      });
      view.focus();
    },
    close: () => view.destroy(),
  };
}

/** Whether just these stand underlined, with the same mends. */
function isUnderlined(state: EditorState, told: readonly Diagnostic[]): boolean {
  const keyOf = ({ actions = [], message, severity }: Diagnostic, from: number, to: number) =>
    `${from} ${to} ${severity} ${actions.length} ${message}`;
  const shown = new Set<string>();
  let isSame = true;
  forEachDiagnostic(state, (one, from, to) => {
    // A mend knows its places in the text: after a key stroke they are others.
    if ((one.actions?.length ?? 0) > 0) isSame = false;
    shown.add(keyOf(one, from, to));
  });
  return (
    isSame &&
    told.every((one) => shown.has(keyOf(one, one.from, one.to))) &&
    new Set(told.map((one) => keyOf(one, one.from, one.to))).size === shown.size
  );
}

function markOf({ from, level, name, sentence, to }: Mark): Diagnostic {
  return {
    from,
    to,
    severity: LEVELS[level],
    source: name,
    message: sentence,
    renderMessage: () => message(sentence, name, level),
  };
}

function diagnosticOf(cause: ToldCause, use: EditorUse): Diagnostic {
  const { from, level, mends, sentence, to, why } = cause;
  const actions = mends.map(
    (mend, i): Action => ({ name: i === 0 ? "see the mend" : "see another", apply: () => use.preview(mend) }),
  );
  return { from, to, severity: LEVELS[level], message: `${sentence}: ${why}`, actions };
}

/** A message with the way to its page. */
function message(sentence: string, name: string, level: Mark["level"]): Node {
  const line = document.createElement("span");
  const link = document.createElement("a");
  link.textContent = name;
  link.href = level === "problem" ? `./codes.html#${name}` : `./rules/${name}.html`;
  line.append(`${sentence} `, link);
  return line;
}

/** The keys or the values that may stand where the cursor is. */
function complete(context: CompletionContext): CompletionResult | null {
  const word = context.matchBefore(/[\w-]*/);
  if (word === null || (word.from === word.to && !context.explicit)) return null;
  const text = context.state.doc.toString();
  const values = valuesAt(text, word.from);
  if (values.length > 0)
    return { from: word.from, options: values.map((label) => ({ label, type: "enum" })) };
  const keys = keysAt(text, word.from);
  if (keys.length === 0) return null;
  return {
    from: word.from,
    options: keys.map(({ name, description }) => ({
      label: name,
      type: "property",
      info: description,
      apply: `${name}: `,
    })),
  };
}

/** What the key under the pointer means. */
function explain(view: EditorView, at: number) {
  const key = keyAt(view.state.doc.toString(), at);
  if (key === undefined) return null;
  return {
    pos: key.from,
    end: key.to,
    above: true,
    create: () => {
      const dom = document.createElement("div");
      dom.className = "key-help";
      const link = document.createElement("a");
      link.textContent = "all about it";
      link.href = `./recipe-keys.html#${anchorOf(key.path)}`;
      dom.append(`${key.description} `, link);
      return { dom };
    },
  };
}
