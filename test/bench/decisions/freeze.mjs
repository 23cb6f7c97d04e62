// Writes attenuation-79965e4.mjs: attenuation as that commit computes it, from the body of a request to the bytes of its answer, in
// one file without dependencies. It is what the times of decisions are divided by, so that no ratio gets better as attenuation gets
// slower. Never to be made of another commit. usage: node test/bench/decisions/freeze.mjs, in a clone that has the commit.
import { execFileSync } from "node:child_process";
import { existsSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { build } from "esbuild";

const COMMIT = "79965e4";
const root = fileURLToPath(new URL("../../../", import.meta.url));
const folder = mkdtempSync(join(tmpdir(), "attenuation-"));
const packageFile = (/** @type {string} */ name, /** @type {string} */ file) =>
  join(folder, "packages", name, "src", `${file}.ts`);

/** Finds sources where that commit has them; what its build would generate is not kept, and only names a version. @type {import("esbuild").Plugin} */
const sources = {
  name: "sources",
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^@sunfathom\// }, ({ path }) => {
      const [, name = "", file = "index"] = path.split("/");
      return { path: packageFile(name, file), sideEffects: false };
    });
    onResolve({ filter: /^\..*\.js$/ }, ({ path, importer }) => {
      const file = fileURLToPath(new URL(path, pathToFileURL(importer))).replace(/\.js$/, ".ts");
      return { path: file, sideEffects: false, ...(existsSync(file) ? {} : { namespace: "generated" }) };
    });
    onLoad({ filter: /model-version/, namespace: "generated" }, () => ({
      contents: `export const MODEL_VERSION = ${JSON.stringify(COMMIT)};`,
    }));
  },
};

const tar = execFileSync("git", ["archive", COMMIT, "packages"], { cwd: root, maxBuffer: 2 ** 30 });
execFileSync("tar", ["x", "-C", folder], { input: tar });
const entry = join(folder, "entry.ts");
writeFileSync(
  entry,
  `import { attenuation } from "${packageFile("answers", "operations/calculations/attenuation")}";
import { toBytes } from "${packageFile("answers", "shape/bytes")}";
/** @param {string} body */
export const attenuationBytes = (body) => toBytes(attenuation.reply(JSON.parse(body)));`,
);
await build({
  entryPoints: [entry],
  outfile: fileURLToPath(new URL(`attenuation-${COMMIT}.mjs`, import.meta.url)),
  bundle: true,
  minify: true,
  format: "esm",
  platform: "node",
  plugins: [sources],
  // Nothing that an integrator or a linter should read.
  banner: {
    js: `// @ts-nocheck: written by freeze.mjs beside this file from commit ${COMMIT}; not to be edited.`,
  },
});
rmSync(folder, { recursive: true });
