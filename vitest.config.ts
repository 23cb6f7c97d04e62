import { availableParallelism } from "node:os";
import { configDefaults, defineConfig } from "vitest/config";
import { boundImports } from "./.ci/bound-imports.mjs";
import CountReporter from "./.ci/count-reporter.mjs";

// Packages name their TypeScript under the export condition "source", so that tests run on it and never on a stale build.
// "module", which Vite adds by itself, stands for files that bundlers can read and Node often cannot.
const conditions = ["source", "node", "development|production"];

/** Tests that wait for a browser most of the time: whatever comes last, they would still be under way. */
const played = ["test/scorm/{play,by-hand}.test.ts"];
/** Tests that put modules in the place of others. */
const replacing = ["test/{languages,units}.test.ts", "test/oracle/*.test.ts"];

export default defineConfig({
  plugins: [boundImports()],
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
      // So do those that cross packages. By their name they come before the others: the long ones are among them, and many short
      // ones fill both cores to the end.
      {
        extends: true,
        test: {
          name: "across",
          include: ["packages/sdk/src/**/*.test.ts", "test/**/*.test.ts"],
          exclude: [...configDefaults.exclude, ...played, ...replacing],
          isolate: false,
        },
      },
      { extends: true, test: { name: "a browser", include: played, isolate: false } },
      // A process each.
      { extends: true, test: { name: "apart", include: replacing } },
    ],
    // A test that starts a service waits for it most of the time: one more process than there are cores keeps them busy.
    maxWorkers: availableParallelism() + 1,
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
