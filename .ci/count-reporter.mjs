import { writeSync } from "node:fs";
import { stripVTControlCharacters } from "node:util";

/** @import { Reporter, TestModule } from "vitest/node" */

/**
 * The first line of an error, without colours.
 * @param {any} error
 */
const said = (error) => stripVTControlCharacters(String(error?.message ?? error)).split("\n", 1)[0];

/**
 * Closes a test run with a line for each failure and one plain line, `N passed, N failed`, and `, N skipped` when some were.
 * A file that could not be loaded, a hook that threw and an error outside any test each count as one failure.
 * @implements {Reporter}
 */
export default class CountReporter {
  #line = "0 passed, 0 failed";
  /** @type {string[]} */
  #failures = [];

  onInit() {
    // Not at the end of the run: the coverage table is still to come then.
    process.once("exit", () => writeSync(1, `${[...this.#failures, this.#line].join("\n")}\n`));
  }

  /**
   * @param {ReadonlyArray<TestModule>} modules
   * @param {ReadonlyArray<unknown>} unhandledErrors
   */
  onTestRunEnd(modules, unhandledErrors) {
    let passed = 0;
    let skipped = 0;
    this.#failures = unhandledErrors.map((error) => `failed: outside any test: ${said(error)}`);
    /**
     * @param {TestModule} module
     * @param {string} name
     * @param {ReadonlyArray<unknown> | undefined} errors
     */
    const failed = (module, name, errors) =>
      this.#failures.push(
        `failed: ${module.relativeModuleId} > ${name}: ${said(errors?.[0] ?? "never ran")}`,
      );
    for (const module of modules) {
      for (const test of module.children.allTests()) {
        const { state, errors } = test.result();
        if (state === "passed") passed += 1;
        else if (state === "skipped") skipped += 1;
        else failed(module, test.fullName, errors);
      }
      if (module.errors().length > 0) failed(module, "the file itself", module.errors());
      for (const suite of module.children.allSuites())
        if (suite.errors().length > 0) failed(module, suite.fullName, suite.errors());
    }
    this.#line = `${passed} passed, ${this.#failures.length} failed${skipped > 0 ? `, ${skipped} skipped` : ""}`;
  }
}
