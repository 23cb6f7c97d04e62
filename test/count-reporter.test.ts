// The closing line decides whether a change may land, so what could slip past it goes through a real test run.
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterEach, beforeEach, expect, it } from "vitest";

const repository = join(dirname(fileURLToPath(import.meta.url)), "..");
let root: string;

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), "count-reporter-"));
});

afterEach(() => rmSync(root, { recursive: true }));

it("counts a file that cannot be loaded, a hook that throws and a late error as failures", () => {
  const files = {
    "plain.test.js": `it("passes", () => {}); it("fails", () => { throw new Error("on purpose"); });`,
    "import.test.js": `import "./nowhere.js"; it("never runs", () => {});`,
    "hook.test.js": `describe("suite", () => {
      beforeAll(() => { throw new Error("on purpose"); });
      it("never runs", () => {});
    });`,
    "late.test.js": `it("ends before its error", async () => {
      Promise.reject(new Error("late"));
      await new Promise((done) => setTimeout(done, 50));
    });`,
  };
  for (const [name, text] of Object.entries(files)) writeFileSync(join(root, name), text);

  const vitest = join(repository, "node_modules/vitest/vitest.mjs");
  const reporter = join(repository, ".ci/count-reporter.mjs");
  const args = [vitest, "run", "--globals", "--root", root, "--reporter", "default", "--reporter", reporter];
  const { status, stdout } = spawnSync(process.execPath, args, { encoding: "utf8" });

  expect(status).toBe(1);
  const lines = stdout.split("\n");
  expect(lines.slice(-2)).toEqual(["2 passed, 4 failed, 1 skipped", ""]);
  expect(lines.filter((line) => line.startsWith("failed: ")).sort()).toEqual([
    "failed: hook.test.js > suite: on purpose",
    expect.stringMatching(/^failed: import\.test\.js > the file itself: .*nowhere\.js/),
    "failed: outside any test: late",
    "failed: plain.test.js > fails: on purpose",
  ]);
});
