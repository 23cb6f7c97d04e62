// What a page loads of the client: bundled, minified, and packed as servers send it.
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";

const sdk = fileURLToPath(new URL("../../packages/sdk/", import.meta.url));
const { buildSync } = createRequire(join(sdk, "package.json"))("esbuild");

/** @param {string} entry */
function sizeOf(entry) {
  const folder = mkdtempSync(join(tmpdir(), "bench-"));
  const outfile = join(folder, "bundle.js");
  buildSync({
    entryPoints: [join(sdk, "dist", entry)],
    bundle: true,
    minify: true,
    format: "esm",
    platform: "browser",
    target: "es2022",
    outfile,
    logLevel: "error",
  });
  const bundle = readFileSync(outfile);
  rmSync(folder, { recursive: true });
  return { minified_kB: bundle.length / 1000, gzip_kB: gzipSync(bundle, { level: 9 }).length / 1000 };
}

export const bundleSizes = () => ({ client: sizeOf("index.js"), offline: sizeOf("offline/index.js") });
