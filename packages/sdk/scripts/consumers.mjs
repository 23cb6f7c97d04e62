// Installs the packed tarball in fresh projects, as integrators do, and holds it to its promise there: package linters,
// types in old and new compilers, small pages by every bundler, the same bytes in every runtime; and what others make of the service's description and documentation. Run by `npm run consumers`; needs a registry.
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { createApp } from "@sunfathom/api";
import { browserChecks } from "./consumers/browser.mjs";
import { bundlerChecks } from "./consumers/bundlers.mjs";
import { documentationChecks } from "./consumers/documentation.mjs";
import { exampleChecks } from "./consumers/examples.mjs";
import { generatorChecks } from "./consumers/generators.mjs";
import { linterChecks } from "./consumers/linters.mjs";
import { runtimeChecks } from "./consumers/runtimes.mjs";
import { typeChecks } from "./consumers/types.mjs";
import { workerChecks } from "./consumers/worker.mjs";

/**
 * @typedef {object} Place what every check can use
 * @property {string} tarball
 * @property {string} folder where projects can be laid
 * @property {string} baseUrl of the running service
 * @property {string} expected what the program prints in the runtime that runs the service
 *
 * @typedef {{ name: string, run: (place: Place) => Promise<string> }} Check gives what it found; throws where that is wrong
 */

const pack = fileURLToPath(new URL("pack.mjs", import.meta.url));
const tarball = execFileSync(process.execPath, [pack], { encoding: "utf8" }).trim();
const folder = mkdtempSync(join(tmpdir(), "consumers-"));
// Pages of every origin may ask, as the one in the browser does.
const exposure = { corsOrigins: "*", trustedProxies: [], metrics: false };
const app = await createApp({ exposure });
const baseUrl = await app.listen({ host: "127.0.0.1", port: 0 });

/** A part of their names, to run some alone: `npm run consumers -- Chromium`. */
const [, , wanted = ""] = process.argv;
let passed = 0;
let failed = 0;
let absent = 0;
/** @type {Place} */
const place = { tarball, folder, baseUrl, expected: "" };
const checks = [
  ...linterChecks,
  ...typeChecks,
  ...bundlerChecks,
  ...runtimeChecks,
  ...workerChecks,
  ...exampleChecks,
  ...generatorChecks,
  ...browserChecks,
  ...documentationChecks,
].filter(({ name }) => name.includes(wanted));
for (const { name, run } of checks) {
  const start = performance.now();
  try {
    const found = await run(place);
    if (found.startsWith("ABSENT")) absent += 1;
    else passed += 1;
    const seconds = ((performance.now() - start) / 1000).toFixed(1);
    console.log(
      `[consumers] ${found.startsWith("ABSENT") ? "NOT RUN" : "ok"} ${name}: ${found} (${seconds} s)`,
    );
  } catch (error) {
    failed += 1;
    console.error(`[consumers] FAILED ${name}: ${error instanceof Error ? error.message : error}`);
  }
}
await app.close();
rmSync(folder, { recursive: true, force: true });
console.log(`[consumers] ${passed} held, ${failed} failed, ${absent} not run for want of their program`);
process.exitCode = failed === 0 ? 0 : 1;
