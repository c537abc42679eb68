import { defaultServerConditions } from "vite";
import { defineConfig } from "vitest/config";

export default defineConfig({
  // Tests see the sources of the workspace, not what was last built.
  ssr: { resolve: { conditions: ["@drawcord/source", ...defaultServerConditions] } },
  test: {
    include: ["packages/*/test/**/*.test.ts", "tests/**/*.test.ts"],
    globalSetup: ["tests/scripts/bundles.mjs"],
    setupFiles: ["tests/support/seed.ts"],
    // By default one core is left idle, and on two that is half of them.
    maxWorkers: "100%",
    // Modules are loaded once for all files of a worker: a test leaves nothing behind.
    isolate: false,
    testTimeout: 120_000,
    hookTimeout: 120_000,
    coverage: {
      provider: "v8",
      include: ["packages/*/src/**/*.ts"],
      reporter: ["text"],
    },
  },
});
