import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import {
  Application,
  type Comment,
  type CommentDisplayPart,
  type DeclarationReflection,
  ReflectionKind,
  type SignatureReflection,
} from "typedoc";
import { errorCodes } from "./error-codes.js";
import { capital } from "./text.js";

/** The page of a package. */
interface ReferencePage {
  readonly name: string;
  readonly content: string;
}

/**
 * A page for each package, with all that it exports: what it is, what it takes and gives, what it throws, and an example.
 * @throws {Error} where the sources cannot be read
 */
export async function referencePages(): Promise<readonly ReferencePage[]> {
  const options = fileURLToPath(new URL("./typedoc.json", import.meta.url));
  const app = await Application.bootstrap({ options, logLevel: "Warn" });
  const project = await app.convert();
  if (project === undefined) throw new Error("the reference cannot be made");
  const root = fileURLToPath(new URL("../..", import.meta.url));
  const codes = new Set(errorCodes(root).map(({ code }) => code));
  return (project.children ?? []).map((module) => {
    const name = module.name.replace("packages/", "").replace("/src", "").replace("/", "-");
    return { name, content: linked(pageOf(name, module), codes) };
  });
}

/** Kinds of exports in the order of the page. */
const KINDS: readonly (readonly [title: string, kind: ReflectionKind])[] = [
  ["Functions", ReflectionKind.Function],
  ["Classes", ReflectionKind.Class],
  ["Values", ReflectionKind.Variable],
  ["Types", ReflectionKind.Interface | ReflectionKind.TypeAlias],
];

function pageOf(name: string, module: DeclarationReflection): string {
  const [folder = name, entry] = name.split("-");
  const manifest = fileURLToPath(new URL(`../../packages/${folder}/package.json`, import.meta.url));
  const { description } = JSON.parse(readFileSync(manifest, "utf8")) as { description: string };
  const title = `@drawcord/${folder}${entry === undefined ? "" : `/${entry}`}`;
  const exports = module.children ?? [];
  return [
    `# ${title}`,
    `${capital(description)}.`,
    ...KINDS.flatMap(([heading, kind]) => {
      const found = exports.filter((one) => one.kindOf(kind)).sort((a, b) => (a.name < b.name ? -1 : 1));
      return found.length === 0 ? [] : [`## ${heading}`, ...found.map((one) => exportText(one))];
    }),
  ].join("\n\n");
}

function exportText(one: DeclarationReflection): string {
  const head = `### ${one.name} {#${one.name}}`;
  if (one.kindOf(ReflectionKind.Function))
    return [head, ...(one.signatures ?? []).flatMap((signature) => signatureText(one.name, signature))].join(
      "\n\n",
    );
  const comment = one.comment ?? one.signatures?.[0]?.comment;
  return [head, code(declaration(one)), ...said(comment), ...fieldList(one), ...told(comment)].join("\n\n");
}

function signatureText(name: string, { comment, parameters = [], type }: SignatureReflection) {
  const takes = parameters.map(({ defaultValue, flags, name: of, type: is }) => {
    const optional = flags.isOptional || defaultValue !== undefined ? "?" : "";
    return `${plain(of)}${optional}: ${is}`;
  });
  const one = `function ${name}(${takes.join(", ")}): ${type}`;
  const signature =
    one.length < 90 ? one : `function ${name}(\n${takes.map((line) => `  ${line},`).join("\n")}\n): ${type}`;
  const list = parameters.flatMap(({ comment: of, defaultValue, name: is }) =>
    of === undefined
      ? []
      : [
          `- \`${plain(is)}\`: ${textOf(of.summary)}${defaultValue === undefined || defaultValue === "..." ? "" : `; default: \`${defaultValue}\``}`,
        ],
  );
  return [
    code(signature),
    ...said(comment),
    ...(list.length === 0 ? [] : [list.join("\n")]),
    ...told(comment),
  ];
}

/** Arguments that are taken apart have no name of their own. */
function plain(name: string): string {
  return name.startsWith("__") ? "given" : name;
}

function declaration(one: DeclarationReflection): string {
  const { name, type } = one;
  if (one.kindOf(ReflectionKind.Class)) {
    const made = one.children?.find((child) => child.kindOf(ReflectionKind.Constructor))?.signatures?.[0];
    const takes = made?.parameters?.map(({ name: of, type: is }) => `${of}: ${is}`).join(", ");
    const base = one.extendedTypes?.map(String).join(", ");
    return `class ${name}${base ? ` extends ${base}` : ""}${takes === undefined ? "" : ` // new ${name}(${takes})`}`;
  }
  if (one.kindOf(ReflectionKind.Interface)) {
    const base = one.extendedTypes?.map(String).join(", ");
    return `interface ${name}${base ? ` extends ${base}` : ""}`;
  }
  return one.kindOf(ReflectionKind.TypeAlias) ? `type ${name} = ${type}` : `const ${name}: ${type}`;
}

/** Fields and methods, each with what it is. */
function fieldList(one: DeclarationReflection): readonly string[] {
  const fields = (one.children ?? []).filter(
    (child) =>
      !child.kindOf(ReflectionKind.Constructor) &&
      !child.flags.isExternal &&
      child.inheritedFrom === undefined,
  );
  const lines = fields.map((field) => {
    const [signature] = field.signatures ?? [];
    const is = signature ? methodType(signature) : `${field.type ?? field.getSignature?.type ?? ""}`;
    const comment = field.comment ?? signature?.comment ?? field.getSignature?.comment;
    const what = comment === undefined ? "" : `: ${textOf(comment.summary)}`;
    return `- \`${field.name}${field.flags.isOptional ? "?" : ""}: ${is}\`${what}`;
  });
  return lines.length === 0 ? [] : [lines.join("\n")];
}

function methodType({ parameters = [], type }: SignatureReflection): string {
  return `(${parameters.map(({ name, type: is }) => `${name}: ${is}`).join(", ")}) => ${type}`;
}

function said(comment: Comment | undefined): readonly string[] {
  return comment === undefined ? [] : [textOf(comment.summary)];
}

/** What it gives, throws and where it is from, and an example. */
function told(comment: Comment | undefined): readonly string[] {
  const words: Readonly<Record<string, string>> = { "@returns": "Gives", "@throws": "Throws" };
  return (comment?.blockTags ?? []).map(({ content, tag }) => {
    const text = textOf(content);
    return words[tag] === undefined ? text : `*${words[tag]}* ${text}`;
  });
}

/** A page on which the codes that are thrown lead to what they mean. */
function linked(page: string, codes: ReadonlySet<string>): string {
  return page.replace(/^\*Throws\* .*$/gm, (line) =>
    line.replace(/`([\w-]+)`/g, (whole, code: string) =>
      codes.has(code) ? `[${whole}](../codes#${code})` : whole,
    ),
  );
}

function textOf(parts: readonly CommentDisplayPart[]): string {
  return parts
    .map((part) => {
      if (part.kind === "inline-tag") return `\`${part.text}\``;
      return part.kind === "code"
        ? part.text
        : part.text.replaceAll("<", "&lt;").replaceAll("{{", "&#123;&#123;");
    })
    .join("")
    .trim();
}

function code(text: string): string {
  return `\`\`\`ts\n${text}\n\`\`\``;
}
