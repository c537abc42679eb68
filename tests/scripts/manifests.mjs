/**
 * Writes what the manifest of every package says alike, from the one of the workspace: where the project lives. The address
 * there is a placeholder until a release fills it in; `npm run manifests` carries it into every package and README, with the notices
 * of what each needs of others.
 */
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";

const root = join(dirname(fileURLToPath(import.meta.url)), "../..");
const read = (file) => readFileSync(join(root, file), "utf8");
const json = (file) => JSON.parse(read(file));

/** What a package is about, before what it is made of. */
const FIRST = [
  "name",
  "version",
  "private",
  "description",
  "license",
  "author",
  "homepage",
  "repository",
  "bugs",
];

/**
 * What every generated file is to hold, by its name from the root.
 * @returns {Map<string, string>}
 */
export function packageFiles() {
  const { bugs, homepage, repository } = json("package.json");
  const files = new Map();
  for (const name of readdirSync(join(root, "packages"))) {
    const folder = `packages/${name}`;
    if (!existsSync(join(root, folder, "package.json"))) continue;
    const manifest = json(`${folder}/package.json`);
    const whole = {
      ...manifest,
      homepage,
      repository: { ...repository, directory: folder },
      bugs,
      files: [...new Set([...manifest.files, "CHANGELOG.md", "NOTICE.md"])],
      publishConfig: { access: "public", provenance: true },
    };
    const first = FIRST.filter((key) => key in whole).map((key) => [key, whole[key]]);
    const rest = Object.entries(whole).filter(([key]) => !FIRST.includes(key));
    const text = `${JSON.stringify(Object.fromEntries([...first, ...rest]), null, 2)}\n`;
    files.set(`${folder}/package.json`, text);
    if (name !== "cli") files.set(`${folder}/README.md`, led(read(`${folder}/README.md`), homepage, name));
    // The notices of the command are of what its bundle holds, and stand in its own file.
    if (name !== "cli") files.set(`${folder}/NOTICE.md`, notice(folder, whole));
  }
  return files;
}

/** A README whose last line leads to the reference of its package. */
function led(readme, homepage, name) {
  const page = `${homepage}/reference/${name}.html`;
  const rest = readme.replace(/\nEvery export .*\n$/, "");
  return `${rest}\nEvery export with all its parameters and fields is in [the reference](${page}).\n`;
}

function notice(folder, { dependencies = {}, name }) {
  const others = Object.keys(dependencies).filter((other) => !other.startsWith("@drawcord/"));
  const lines = others.map((other) => {
    const { license } = json(`${folder}/node_modules/${other}/package.json`);
    return `- ${other}: ${license}`;
  });
  const needs =
    lines.length === 0
      ? ["It needs no package of others."]
      : ["These packages are installed beside it, under their own licences:", "", ...lines];
  const text = [`# What ${name} holds of others`, "", "Nothing: all code in this package is Drawcord's own."];
  return `${[...text, "", ...needs].join("\n")}\n`;
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) {
  for (const [file, text] of packageFiles()) writeFileSync(join(root, file), text);
}
