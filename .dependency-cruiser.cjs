// Imports between packages only ever go down this list; `may` says what each package may import.
const may = {
  base: [],
  grid: ["base"],
  draw: ["base", "grid"],
  yarn: ["base"],
  ground: ["base", "grid"],
  units: ["base", "grid", "ground"],
  chart: ["base", "grid", "ground", "units"],
  check: ["base", "grid", "yarn", "ground", "units"],
  causes: ["base", "grid", "ground", "units", "check"],
  files: ["base", "grid", "draw", "yarn", "ground", "units", "check", "causes"],
  review: ["base", "yarn", "units", "check", "causes", "files"],
  page: ["base"],
  sheet: ["base", "grid", "draw", "yarn", "ground", "units", "check", "causes", "files", "review", "page"],
  follow: ["base", "grid", "draw", "yarn", "ground", "units", "check", "causes", "files", "review", "page"],
  lesson: ["base", "grid", "yarn", "ground", "units", "check", "causes", "files", "review", "page", "sheet"],
  cli: [
    "base",
    "grid",
    "draw",
    "yarn",
    "ground",
    "units",
    "chart",
    "check",
    "causes",
    "files",
    "review",
    "page",
    "sheet",
    "follow",
    "lesson",
  ],
};

const between = Object.entries(may).map(([name, allowed]) => ({
  name: `${name}-imports`,
  severity: "error",
  comment: `@drawcord/${name} may import ${allowed.join(", ") || "no other package"}`,
  from: { path: `^packages/${name}/src/` },
  to: {
    path: "^packages/[^/]+/",
    pathNot: [...allowed, name].map((other) => `^packages/${other}/`),
  },
}));

module.exports = {
  forbidden: [
    ...between,
    { name: "no-cycle", severity: "error", from: {}, to: { circular: true } },
    {
      name: "browser",
      severity: "error",
      comment: "these packages run unchanged in a browser",
      from: {
        path: "^packages/((base|grid|draw|yarn|ground|units|chart|check|causes|files|review|sheet|follow|lesson)/src/|page/src/(?!print))",
      },
      to: { dependencyTypes: ["core"] },
    },
    { name: "resolvable", severity: "error", from: {}, to: { couldNotResolve: true } },
  ],
  options: {
    doNotFollow: { path: "node_modules" },
    exclude: { path: "(^|/)(dist|coverage)/" },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: {
      exportsFields: ["exports"],
      conditionNames: ["@drawcord/source", "import", "types", "node", "default"],
    },
  },
};
