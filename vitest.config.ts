import { defineConfig } from "vitest/config";
import CountReporter from "./.ci/count-reporter.mjs";

// Packages name their TypeScript under the export condition "source", so that tests run on it and never on a stale build.
// "module", which Vite adds by itself, stands for files that bundlers can read and Node often cannot.
const conditions = ["source", "node", "development|production"];

export default defineConfig({
  resolve: { conditions },
  ssr: { resolve: { conditions } },
  test: {
    projects: [
      // Pure functions leave nothing behind, and each test of the service starts its own: they share a process and its modules, which
      // takes half the time.
      {
        extends: true,
        test: {
          name: "shared",
          include: [
            "packages/{optics,planner,contract,words,answers,quiz,pictures}/src/**/*.test.ts",
            "services/*/src/**/*.test.ts",
          ],
          isolate: false,
        },
      },
      {
        extends: true,
        test: {
          name: "whole",
          include: ["packages/sdk/src/**/*.test.ts", "test/**/*.test.ts"],
        },
      },
    ],
    // A test that starts a service waits for it most of the time, so the thread that gives out the files needs no core of its own.
    maxWorkers: "100%",
    // Laws are tried on many scenes, and services started: a busy machine takes its time. Nothing is meant to reach these limits.
    testTimeout: 120_000,
    hookTimeout: 120_000,
    reporters: ["default", new CountReporter()],
    coverage: {
      provider: "v8",
      include: ["packages/*/src/**/*.ts", "services/*/src/**/*.ts"],
      exclude: ["**/*.{test,prove}.ts", "**/generated/**"],
    },
  },
});
