import process from "node:process";
import { defineConfig } from "vitest/config";
import base from "./vitest.config.js";

/** The changes of one package, which `npm run mutants` names, are judged by that package's own tests. */
export default defineConfig({
  ...base,
  test: { ...base.test, include: [`packages/${process.env["DRAWCORD_MUTANTS"]}/test/**/*.test.ts`] },
});
