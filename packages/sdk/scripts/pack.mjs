// Builds the package as it is published into dist/package, and packs it: `pnpm --filter @sunfathom/sdk pack:tarball`.
import { execFileSync } from "node:child_process";
import { cpSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { copyDeclarations } from "./pack/declarations.mjs";
import { publishedManifest } from "./pack/manifest.mjs";
import { packModules } from "./pack/modules.mjs";
import { provenance } from "./pack/provenance.mjs";

const home = new URL("../", import.meta.url);
const target = new URL("dist/package/", home);
const path = (/** @type {string} */ name, base = target) => fileURLToPath(new URL(name, base));

rmSync(target, { recursive: true, force: true });
mkdirSync(target, { recursive: true });

const metafile = await packModules(path("dist/"));
copyDeclarations(path("dist/", home), path("dist/"));
const manifest = JSON.parse(readFileSync(new URL("package.json", home), "utf8"));
writeFileSync(path("package.json"), `${JSON.stringify(publishedManifest(manifest), undefined, 2)}\n`);
writeFileSync(path("PROVENANCE.json"), `${JSON.stringify(provenance(manifest, metafile), undefined, 2)}\n`);
cpSync(new URL("README.md", home), path("README.md"));
cpSync(new URL("../../LICENSE", home), path("LICENSE"));
// The offline entry holds numbers made from a table whose terms ask for its notice wherever they go.
cpSync(new URL("../optics/tables/NOTICE-sensor.txt", home), path("NOTICE.txt"));

const packed = execFileSync("npm", ["pack", "--json", "--pack-destination", path("dist/", home)], {
  cwd: path("."),
  encoding: "utf8",
});
console.log(path(`dist/${JSON.parse(packed)[0].filename}`, home));
