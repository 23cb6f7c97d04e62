// Asks the registry for advisories on what the service and the packages run with, and fails on a high or critical one.
// Where the registry cannot be asked, it says so and fails nothing: a machine without it could never pass.
// Arguments go to the audit, such as --registry=...
import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { withoutNpmSettings } from "./environment.mjs";

/** @typedef {{ severity: string, module_name: string, title: string, vulnerable_versions: string, url: string }} Advisory */

const { packageManager } = JSON.parse(readFileSync(new URL("../package.json", import.meta.url), "utf8"));
const { stdout, stderr, error } = spawnSync(
  "npx",
  ["--yes", packageManager, "audit", "--prod", "--json", ...process.argv.slice(2)],
  {
    env: withoutNpmSettings(process.env),
    encoding: "utf8",
    timeout: 120_000,
    maxBuffer: 64 * 1024 * 1024,
  },
);

/** @type {{ advisories?: Record<string, Advisory>, error?: { message: string } }} */
const report = readReport(stdout);
if (report.error !== undefined) {
  console.log(`[audit] NOT DONE, the registry cannot be asked: ${report.error.message}`);
  process.exit(0);
}
if (report.advisories === undefined) {
  console.error(`[audit] broke: ${error?.message ?? `${stdout}${stderr}`.trim()}`);
  process.exit(1);
}

const advisories = Object.values(report.advisories);
for (const { severity, module_name, vulnerable_versions, title, url } of advisories)
  console.log(`[audit] ${severity}: ${module_name} ${vulnerable_versions}: ${title} ${url}`);
const grave = advisories.filter(({ severity }) => severity === "high" || severity === "critical");
console.log(`[audit] ${advisories.length} advisories, ${grave.length} of them high or critical`);
process.exitCode = grave.length > 0 ? 1 : 0;

/** @param {string} text */
function readReport(text) {
  try {
    return JSON.parse(text);
  } catch {
    return {};
  }
}
