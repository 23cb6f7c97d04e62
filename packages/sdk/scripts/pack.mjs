// Builds the package as it is published into dist/package, and packs it. `--into FOLDER` leaves the tarball there alone, under a
// version that names its contents, and does nothing where it is there already: from there the service gives it to whoever
// installs its client.
import { execFileSync } from "node:child_process";
import { cpSync, existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { packCommonJs } from "./pack/commonjs.mjs";
import { copyDeclarations } from "./pack/declarations.mjs";
import { fingerprint } from "./pack/fingerprint.mjs";
import { publishedManifest } from "./pack/manifest.mjs";
import { packModules } from "./pack/modules.mjs";
import { provenance } from "./pack/provenance.mjs";

const home = new URL("../", import.meta.url);
const target = new URL("dist/package/", home);
const path = (/** @type {string} */ name, base = target) => fileURLToPath(new URL(name, base));

const { into } = parseArgs({ options: { into: { type: "string" } } }).values;
const own = JSON.parse(readFileSync(new URL("package.json", home), "utf8"));
const manifest = { ...own, version: into === undefined ? own.version : `${own.version}-c${fingerprint()}` };
const destination = into === undefined ? path("dist/", home) : resolve(into);
if (into !== undefined) {
  if (existsSync(join(destination, `sunfathom-sdk-${manifest.version}.tgz`))) process.exit();
  rmSync(destination, { recursive: true, force: true });
}
mkdirSync(destination, { recursive: true });
rmSync(target, { recursive: true, force: true });
mkdirSync(target, { recursive: true });

const metafile = await packModules(path("dist/"));
copyDeclarations(path("dist/", home), path("dist/"));
packCommonJs(path("dist/"));
writeFileSync(path("package.json"), `${JSON.stringify(publishedManifest(manifest), undefined, 2)}\n`);
writeFileSync(path("PROVENANCE.json"), `${JSON.stringify(provenance(manifest, metafile), undefined, 2)}\n`);
cpSync(new URL("README.md", home), path("README.md"));
cpSync(new URL("../../LICENSE", home), path("LICENSE"));
// The offline entry holds numbers made from tables whose terms ask for a notice wherever they go.
cpSync(new URL("../../NOTICE", home), path("NOTICE"));

const packed = execFileSync("npm", ["pack", "--json", "--pack-destination", destination], {
  cwd: path("."),
  encoding: "utf8",
});
console.log(join(destination, JSON.parse(packed)[0].filename));
