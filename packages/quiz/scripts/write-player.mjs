// Writes src/generated/player.ts: the player of practice packages as one script and one style sheet, which the packages carry. Run
// before every build (see .ci/setup.mjs); the file is not committed, since it follows from the sources.
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

const path = (/** @type {string} */ name) => fileURLToPath(new URL(`../src/${name}`, import.meta.url));

/** @param {string} entry */
async function bundled(entry) {
  const { outputFiles } = await build({
    entryPoints: [path(`scorm/player/${entry}`)],
    bundle: true,
    minify: true,
    write: false,
    // Older platforms show packages in frames of their own age, and a page that is opened from a disk loads no modules.
    format: "iife",
    target: "es2018",
    charset: "utf8",
    legalComments: "none",
    conditions: ["source"],
    logLevel: "warning",
  });
  return outputFiles[0]?.text ?? "";
}

const text = `// Written by scripts/write-player.mjs; not committed.

export const PLAYER_SCRIPT: string = ${JSON.stringify(await bundled("main.ts"))};

export const PLAYER_STYLE: string = ${JSON.stringify(await bundled("player.css"))};
`;
const target = path("generated/player.ts");
mkdirSync(path("generated"), { recursive: true });
if (!existsSync(target) || readFileSync(target, "utf8") !== text) writeFileSync(target, text);
