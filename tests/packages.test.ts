import { cp, mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { checkPackage, createPackageFromTarballData, type Problem } from "@arethetypeswrong/core";
import { editorSchema } from "@drawcord/review";
import { build as bundle } from "esbuild";
import { publint } from "publint";
import { formatMessage } from "publint/utils";
import { build } from "vite";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { runProgram } from "./support/built.js";
import { useExampleApp } from "./support/example-app.js";
import { fencedExamples } from "./support/examples.js";
import { libraries, type Package, packages, root } from "./support/packages.js";
import { ceilings, sizeOf, statedSizes } from "./support/size.js";

/** Each package as its user gets it: packed, looked at, installed in an empty folder, imported, type-checked, called. */
let folder: string;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "drawcord-packages-"));
  const manifest = JSON.parse(await readFile(join(root, "package.json"), "utf8")) as {
    packageManager: string;
  };
  const filter = ["--recursive", "--filter", "./packages/*"];
  const packed = await runProgram(
    "npx",
    ["--yes", manifest.packageManager, ...filter, "pack", "--pack-destination", folder],
    {
      cwd: root,
    },
  );
  expect(packed).toMatchObject({ status: 0 });
}, 120_000);

afterAll(() => rm(folder, { recursive: true, force: true }));

async function tarball({ specifier }: Package): Promise<string> {
  const stem = specifier.replace("@", "").replace("/", "-");
  const name = (await readdir(folder)).find(
    (file) => file.startsWith(stem) && /^-\d/.test(file.slice(stem.length)),
  );
  return join(folder, name ?? `${stem}.tgz`);
}

describe.each(packages)("$specifier, packed", (pkg) => {
  it("has nothing that publint finds", async () => {
    const data = await readFile(await tarball(pkg));
    const buffer = data.buffer.slice(data.byteOffset, data.byteOffset + data.byteLength) as ArrayBuffer;
    const { messages, pkg: manifest } = await publint({ pack: { tarball: buffer }, strict: true });
    expect(messages.map((message) => formatMessage(message, manifest, { color: false }))).toEqual([]);
  });

  it("holds its code and README, and no tests or build leftovers", async () => {
    const { stdout } = await runProgram("tar", ["-tzf", await tarball(pkg)]);
    const files = stdout.trim().split("\n");
    expect(files).toContain("package/README.md");
    for (const file of ["LICENSE", "CHANGELOG.md", "NOTICE.md"]) expect(files).toContain(`package/${file}`);
    // What is bundled is no code of its source map's any more.
    if (pkg.specifier === "drawcord") expect(files.filter((file) => file.endsWith(".map"))).toEqual([]);
    expect(files.filter((file) => /\.test\.|tsbuildinfo|\/test\/|tsconfig/.test(file))).toEqual([]);
  });
});

describe.each(libraries)("$specifier, packed", (pkg) => {
  it("has types that every way of importing ES modules finds", async () => {
    const data = createPackageFromTarballData(await readFile(await tarball(pkg)));
    const result = await checkPackage(data);
    expect(result.types).not.toBe(false);
    const problems = result.types === false ? [] : result.problems.filter(matters);
    expect(problems).toEqual([]);
  });
});

/** The packages are ES modules only: what a CommonJS file or the old resolution of Node 10 would meet is no fault. */
function matters(problem: Problem): boolean {
  return !("resolutionKind" in problem) || !["node10", "node16-cjs"].includes(problem.resolutionKind);
}

describe("installed in an empty folder", () => {
  let project: string;

  beforeAll(async () => {
    project = await mkdtemp(join(tmpdir(), "drawcord-project-"));
    const tarballs = await Promise.all(
      packages.map(async (pkg) => [pkg.specifier, `file:${await tarball(pkg)}`]),
    );
    const dependencies = Object.fromEntries(tarballs);
    const manifest = { name: "empty", private: true, type: "module", dependencies };
    await writeFile(join(project, "package.json"), JSON.stringify(manifest));
    const npm = ["install", "--prefer-offline", "--no-audit", "--no-fund", "--ignore-scripts"];
    const installed = await runProgram("npm", npm, { cwd: project });
    expect(installed).toMatchObject({ status: 0 });
  }, 240_000);

  afterAll(() => rm(project, { recursive: true, force: true }));

  const entries = libraries.flatMap(({ entries, specifier }) =>
    entries.map((entry) => `${specifier}${entry.slice(1)}`),
  );

  /** What each entry exports to Node, or how it fails; each is imported in a thread of its own, where nothing else is. */
  const exported = async (): Promise<Readonly<Record<string, readonly string[] | string>>> => {
    const code = `
import { isMainThread, parentPort, Worker, workerData } from "node:worker_threads";
if (isMainThread) {
  const told = {};
  for (const entry of ${JSON.stringify(entries)}) {
    told[entry] = await new Promise((resolve) => {
      const thread = new Worker(new URL(import.meta.url), { workerData: entry });
      thread.once("message", resolve).once("error", (error) => resolve(String(error)));
    });
  }
  console.log(JSON.stringify(told));
} else {
  parentPort.postMessage(Object.keys(await import(workerData)));
}`;
    await writeFile(join(project, "entries.mjs"), code);
    const { status, stdout, stderr } = await runProgram("node", ["entries.mjs"], { cwd: project });
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    return JSON.parse(stdout);
  };
  let told: ReturnType<typeof exported> | undefined;

  it.each(entries)("%s is imported by Node and exports what its source does", async (entry) => {
    told ??= exported();
    const source = Object.keys((await import(entry)) as object);
    expect([...((await told)[entry] ?? [])].sort()).toEqual(source.sort());
  });

  it("an import weighs what its README says, to a tenth, and no more than it may", async () => {
    const readmes = await Promise.all(libraries.map(({ readme }) => readFile(readme, "utf8")));
    const stated = readmes.flatMap(statedSizes);
    const told = stated.map(({ specifier, name }) => `${specifier} ${name}`);
    expect(told).toEqual(expect.arrayContaining(Object.keys(ceilings)));
    const measured = await Promise.all(
      stated.map(async ({ specifier, name, kB }) => {
        const now = await sizeOf(specifier, name, project);
        const most = ceilings[`${specifier} ${name}`] ?? Number.POSITIVE_INFINITY;
        const isTrue = Math.abs(now - kB) <= 0.1 * kB + 0.05 && now <= most;
        return isTrue
          ? []
          : [`${specifier} ${name}: ${now.toFixed(2)} kB; the README says ${kB}, and ${most} is the most`];
      }),
    );
    expect(measured.flat()).toEqual([]);
  });

  it("the examples of the READMEs are sound TypeScript", async () => {
    const readmes = [
      ...libraries.map(({ name, readme }) => [name, readme]),
      ["project", join(root, "README.md")],
    ];
    for (const [name, readme] of readmes) {
      const examples = fencedExamples(await readFile(readme!, "utf8"));
      expect(examples.length, `examples in ${readme}`).toBeGreaterThan(0);
      const files = examples.map((code, index) =>
        writeFile(join(project, `${name}-${index}.ts`), `${code}\nexport {};\n`),
      );
      await Promise.all(files);
    }
    const compilerOptions = {
      strict: true,
      exactOptionalPropertyTypes: true,
      noUncheckedIndexedAccess: true,
      noPropertyAccessFromIndexSignature: true,
      noImplicitOverride: true,
      noImplicitReturns: true,
      noFallthroughCasesInSwitch: true,
      noUncheckedSideEffectImports: true,
      verbatimModuleSyntax: true,
      isolatedModules: true,
      erasableSyntaxOnly: true,
      // The declarations are looked at too.
      skipLibCheck: false,
      module: "NodeNext",
      target: "ES2022",
      lib: ["ES2023", "DOM"],
      types: [],
      noEmit: true,
    };
    await writeFile(join(project, "tsconfig.json"), JSON.stringify({ compilerOptions, include: ["*.ts"] }));
    const tsc = join(root, "node_modules/typescript/bin/tsc");
    expect(await runProgram("node", [tsc, "-p", "."], { cwd: project })).toEqual({
      status: 0,
      stdout: "",
      stderr: "",
    });
  });

  it("an app on them is bundled by vite and runs in a browser under a strict policy, its worker too", async () => {
    const app = join(project, "app");
    await cp(join(root, "docs/example-app"), app, { recursive: true });
    const outDir = join(project, "built");
    await build({
      configFile: false,
      logLevel: "error",
      root: app,
      base: "./",
      build: { outDir },
      worker: { format: "es" },
    });
    await useExampleApp(outDir);
  }, 120_000);

  it("so it is by esbuild", async () => {
    const app = join(project, "app-by-esbuild");
    await cp(join(root, "docs/example-app"), app, { recursive: true });
    const page = await readFile(join(app, "index.html"), "utf8");
    await writeFile(join(app, "index.html"), page.replace("./app.ts", "./app.js"));
    const code = await readFile(join(app, "app.ts"), "utf8");
    await writeFile(join(app, "app.ts"), code.replace('"./app.ts"', '"./app.js"'));
    await bundle({
      entryPoints: [join(app, "app.ts")],
      outfile: join(app, "app.js"),
      bundle: true,
      format: "esm",
      platform: "browser",
      target: "es2022",
      logLevel: "error",
    });
    await useExampleApp(app);
  }, 120_000);

  it("drawcord is there, and answers", async () => {
    const path = join(project, "node_modules/.bin/drawcord");
    const version = await runProgram(path, ["--version"], { cwd: project });
    expect(version).toEqual({ status: 0, stdout: expect.stringMatching(/^\d+\.\d+\.\d+\n$/), stderr: "" });
    const runner = join(root, "shared/recipes/runner.recipe.yaml");
    const checked = await runProgram(path, ["check", runner], { cwd: project });
    expect(checked).toMatchObject({ status: 0, stderr: "" });
    expect(checked.stdout).toMatch(
      /\n0 errors|\n\d+ findings?.*, \d+ of \d+ rules ran; not long-stretch, large-area: no limit is set\n$/,
    );
  });

  it("a recipe begun there leads an editor to a schema that is there", async () => {
    const path = join(project, "node_modules/.bin/drawcord");
    const begun = await runProgram(path, ["init", "begun.recipe.yaml"], { cwd: project });
    expect(begun).toMatchObject({ status: 0, stderr: "" });
    const text = await readFile(join(project, "begun.recipe.yaml"), "utf8");
    const schema = /^# yaml-language-server: \$schema=(\S+)$/m.exec(text)![1]!;
    expect(schema).toBe("node_modules/drawcord/recipe.schema.json");
    const shipped: unknown = JSON.parse(await readFile(join(project, schema), "utf8"));
    expect(shipped).toEqual(JSON.parse(JSON.stringify(editorSchema())));
  });
});
