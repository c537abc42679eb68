import type { Formula } from "@drawcord/page";

/**
 * Reads the TeX of a working into a formula. It knows what workings are written with: fractions, roots, scripts, brackets
 * that grow, Greek letters, units in upright letters. A command it does not know stands as its own name.
 */

type Token = { readonly kind: "command" | "letter" | "number" | "mark"; readonly text: string };

const TOKEN = /\\([a-zA-Z]+)|\\(.)|(\d+(?:\.\d+)?)|([a-zA-Z])|(\S)/gu;

function tokens(tex: string): Token[] {
  return [...tex.matchAll(TOKEN)].map(([, command, escaped, number, letter, mark]): Token => {
    if (command !== undefined) return { kind: "command", text: command };
    if (escaped !== undefined) return { kind: "command", text: escaped };
    if (number !== undefined) return { kind: "number", text: number };
    if (letter !== undefined) return { kind: "letter", text: letter };
    return { kind: "mark", text: mark! };
  });
}

const signs: Readonly<Record<string, string>> = {
  cdot: "·",
  times: "×",
  approx: "≈",
  sum: "∑",
  lceil: "⌈",
  rceil: "⌉",
  lfloor: "⌊",
  rfloor: "⌋",
};

const letters: Readonly<Record<string, string>> = { pi: "π", phi: "φ", rho: "ρ" };

const OPERATORS = /^[-+=<>/*()|≈,]$/;

/**
 * @param tex such as `W = \frac{n}{S}`
 * @example formulaText(readTex("W = \\frac{n}{S}")) // "W = n / S"
 */
export function readTex(tex: string): Formula {
  const list = tokens(tex);
  let at = 0;

  function row(end?: string): Formula {
    const items: Formula[] = [];
    while (at < list.length) {
      const token = list[at]!;
      if (end !== undefined && token.text === end && token.kind === "mark") {
        at++;
        break;
      }
      if (token.kind === "mark" && (token.text === "^" || token.text === "_")) {
        at++;
        items.push(scripted(items.pop() ?? word("", false), token.text, group()));
      } else {
        const item = one();
        if (item !== undefined) items.push(item);
      }
    }
    return items.length === 1 ? items[0]! : { kind: "row", items };
  }

  function group(): Formula {
    if (list[at]?.text === "{" && list[at]?.kind === "mark") {
      at++;
      return row("}");
    }
    return one() ?? word("", false);
  }

  /** Upright letters between braces, as they stand. */
  function letterGroup(slant: boolean): Formula {
    const inner = group();
    return upright(inner, slant);
  }

  function one(): Formula | undefined {
    const token = list[at++];
    if (token === undefined) return undefined;
    if (token.kind === "number") return word(token.text, false);
    if (token.kind === "letter") return word(token.text, true);
    if (token.kind === "mark") {
      if (token.text === "{") return row("}");
      if (token.text === "}" || token.text === "~") return undefined;
      return OPERATORS.test(token.text) ? operator(token.text) : word(token.text, false);
    }
    return command(token.text);
  }

  function command(name: string): Formula | undefined {
    if (name === "frac") return { kind: "fraction", over: bare(group()), under: bare(group()) };
    if (name === "sqrt") return { kind: "root", of: group() };
    if (name === "mathrm" || name === "mathit" || name === "text") return letterGroup(name === "mathit");
    if (name === "left" || name === "right") return undefined;
    if (name === ",") return word("\u2009", false);
    if (/^[;:! ]$/.test(name)) return undefined;
    if (name === "%") return word("%", false);
    if (Object.hasOwn(signs, name)) return operator(signs[name]!);
    return word(letters[name] ?? name, Object.hasOwn(letters, name));
  }

  return row();
}

/** A side of a fraction needs no brackets around the whole of it. */
function bare(formula: Formula): Formula {
  if (formula.kind !== "row") return formula;
  const { items } = formula;
  let open = 0;
  for (const [i, item] of items.entries()) {
    if (item.kind === "operator" && item.text === "(") open++;
    if (item.kind === "operator" && item.text === ")") open--;
    if (open === 0)
      return i === items.length - 1 && i > 0 ? { kind: "row", items: items.slice(1, -1) } : formula;
  }
  return formula;
}

function word(text: string, slant: boolean): Formula {
  return { kind: "word", text, slant };
}

function operator(text: string): Formula {
  return { kind: "operator", text: text === "-" ? "−" : text === "*" ? "·" : text };
}

function scripted(base: Formula, mark: string, script: Formula): Formula {
  const known = base.kind === "script" ? base : { kind: "script" as const, base };
  return mark === "^" ? { ...known, above: script } : { ...known, below: script };
}

/** Letters run together into one word. */
function upright(formula: Formula, slant: boolean): Formula {
  if (formula.kind === "script") return { ...formula, base: upright(formula.base, slant) };
  if (formula.kind !== "row") return formula.kind === "word" ? { ...formula, slant } : formula;
  const items: Formula[] = [];
  for (const item of formula.items) {
    const last = items.at(-1);
    const text = item.kind === "word" || item.kind === "operator" ? item.text : undefined;
    if (text !== undefined && last?.kind === "word") items[items.length - 1] = word(last.text + text, slant);
    else items.push(text === undefined ? upright(item, slant) : word(text, slant));
  }
  return items.length === 1 ? items[0]! : { kind: "row", items };
}

/**
 * The sides of an equation, cut at every `=` or `≈` outside brackets.
 * @example sides(readTex("W = n = 3")).length // 3
 */
export function sides(formula: Formula): Formula[] {
  const items = formula.kind === "row" ? formula.items : [formula];
  const result: Formula[][] = [[]];
  for (const item of items) {
    if (item.kind === "operator" && (item.text === "=" || item.text === "≈")) result.push([]);
    else result.at(-1)!.push(item);
  }
  return result.map((side) => (side.length === 1 ? side[0]! : { kind: "row", items: side }));
}
