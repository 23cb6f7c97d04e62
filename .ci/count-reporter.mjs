import { writeSync } from "node:fs";

/** @import { Reporter, TestModule } from "vitest/node" */

/**
 * Closes a test run with one plain line, `N passed, N failed`, and `, N skipped` when some were.
 * A file that could not be loaded, a hook that threw and an error outside any test each count as one failure.
 * @implements {Reporter}
 */
export default class CountReporter {
  #line = "0 passed, 0 failed";

  onInit() {
    // Not at the end of the run: the coverage table is still to come then.
    process.once("exit", () => writeSync(1, `${this.#line}\n`));
  }

  /**
   * @param {ReadonlyArray<TestModule>} modules
   * @param {ReadonlyArray<unknown>} unhandledErrors
   */
  onTestRunEnd(modules, unhandledErrors) {
    let passed = 0;
    let failed = unhandledErrors.length;
    let skipped = 0;
    for (const module of modules) {
      for (const test of module.children.allTests()) {
        const { state } = test.result();
        if (state === "passed") passed += 1;
        else if (state === "skipped") skipped += 1;
        else failed += 1;
      }
      const suites = [module, ...module.children.allSuites()];
      failed += suites.filter((suite) => suite.errors().length > 0).length;
    }
    this.#line = `${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ""}`;
  }
}
