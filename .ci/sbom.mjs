// Writes a bill of materials of what the service runs with, and of what it gives to browsers: CycloneDX 1.6, in JSON, to the output or
// into the file named. From what is installed and locked, so that no registry is asked; the
// same each time on machines of one kind.
// @see https://cyclonedx.org/docs/1.6/json/
import { spawnSync } from "node:child_process";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { fileURLToPath } from "node:url";
import { withoutNpmSettings } from "./environment.mjs";

/** @typedef {{ version: string, path: string, dependencies?: Record<string, Listed> }} Listed */
/** @typedef {{ name: string, version: string, license?: string }} Manifest */

const root = fileURLToPath(new URL("..", import.meta.url));
const service = `${root}services/api/`;
const { packageManager } = manifestOf(root);
const { stdout, status } = spawnSync(
  "npx",
  ["--yes", packageManager, "--filter", "@sunfathom/api", "list", "--prod", "--depth", "Infinity", "--json"],
  { cwd: root, env: withoutNpmSettings(process.env), encoding: "utf8", maxBuffer: 256 * 1024 * 1024 },
);
if (status !== 0) throw new Error(`What is installed cannot be listed: ${stdout}`);

const lock = readFileSync(`${root}pnpm-lock.yaml`, "utf8");
/** @type {Map<string, { purl: string } & Record<string, unknown>>} */
const components = new Map();
/** @type {Map<string, Set<string>>} */
const needs = new Map();
const [listed] = JSON.parse(stdout);
const top = add(service);
walk(top, listed.dependencies ?? {});
// Packed for browsers by its makers, and served as it is.
const renderer = add(
  createRequire(`${service}package.json`)
    .resolve("openapi-explorer/package.json")
    .replace(/package\.json$/, ""),
);
needs.get(top)?.add(renderer);

/** @param {string} folder @returns {Manifest & Record<string, any>} */
function manifestOf(folder) {
  return JSON.parse(readFileSync(`${folder.replace(/\/?$/, "/")}package.json`, "utf8"));
}

/** @param {string} from @param {Record<string, Listed>} dependencies */
function walk(from, dependencies) {
  for (const { path, dependencies: inner = {} } of Object.values(dependencies)) {
    // Made for other machines than this one, and not installed.
    if (!existsSync(path)) continue;
    const purl = add(path);
    needs.get(from)?.add(purl);
    walk(purl, inner);
  }
}

/** Of a package whose manifest names none, by the title of its licence's text. @param {string} folder */
function licenceBeside(folder) {
  const file = `${folder}/LICENSE`;
  return existsSync(file) && readFileSync(file, "utf8").startsWith("MIT License") ? "MIT" : undefined;
}

/** @param {string} folder of a package @returns {string} its purl */
function add(folder) {
  const { name, version, license = licenceBeside(folder) } = manifestOf(folder);
  const purl = `pkg:npm/${name.replace("@", "%40")}@${version}`;
  if (components.has(purl)) return purl;
  const [, integrity] =
    new RegExp(
      `'?${escaped(name)}@${escaped(version)}'?:\\n    resolution: \\{integrity: sha512-([^,}]+)`,
    ).exec(lock) ?? [];
  components.set(purl, {
    type: "library",
    "bom-ref": purl,
    name,
    version,
    purl,
    ...(license === undefined
      ? {}
      : { licenses: [/[ ()]/.test(license) ? { expression: license } : { license: { id: license } }] }),
    ...(integrity === undefined
      ? {}
      : { hashes: [{ alg: "SHA-512", content: Buffer.from(integrity, "base64").toString("hex") }] }),
  });
  needs.set(purl, new Set());
  return purl;
}

/** @param {string} text */
function escaped(text) {
  return text.replace(/[.*+?^${}()|[\]\\/]/g, "\\$&");
}

const [application, ...parts] = [...components.values()];
const bill = {
  bomFormat: "CycloneDX",
  specVersion: "1.6",
  version: 1,
  metadata: { component: { ...application, type: "application" } },
  components: parts.sort(({ purl: a }, { purl: b }) => (a < b ? -1 : 1)),
  dependencies: [...needs]
    .map(([ref, on]) => ({ ref, dependsOn: [...on].sort() }))
    .sort(({ ref: a }, { ref: b }) => (a < b ? -1 : 1)),
};
const text = `${JSON.stringify(bill, null, 2)}\n`;
const [, , file] = process.argv;
if (file === undefined) process.stdout.write(text);
else writeFileSync(file, text);
