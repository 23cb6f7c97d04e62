// Breaks the decisions one place at a time and asks whether the golden figures notice: `node test/golden/mutants.mjs [folder ...]`
// within packages/planner/src, all of it by itself; with `--numbers` named numbers alone. Every named number is made a quarter larger, every comparison turned round.
// Prints what was not noticed, and a line a folder for README.md beside this file.
import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

// The bundler that the client's size is measured with.
const { build } = createRequire(new URL("../../packages/sdk/package.json", import.meta.url))("esbuild");

const here = fileURLToPath(new URL(".", import.meta.url));
const source = fileURLToPath(new URL("../../packages/planner/src/", import.meta.url));
const asked = process.argv.slice(2).filter((argument) => argument !== "--numbers");
const isNumbersOnly = process.argv.includes("--numbers");
const timeout_ms = 240_000;

const turned = { "<": ">=", ">": "<=", "<=": ">", ">=": "<", "===": "!==", "!==": "===" };

/** Words and data hold no decision. */
const isDecision = (file) =>
  /\.ts$/.test(file) && !/\.test(-support)?\.ts$|^(messages|result|reference|generated)\b|^index/.test(file);

/** @returns what can be broken in a text: where, what stands there and what is put in its place */
function mutantsOf(text) {
  const found = [];
  for (const match of text.matchAll(/^(?:export )?const \w+ = ([-0-9.*/e ]+);/gm)) {
    const at = match.index + match[0].lastIndexOf(match[1]);
    found.push({ at, old: match[1], replacement: `(${match[1]}) * 1.25` });
  }
  if (isNumbersOnly) return withLines(found, text);
  for (const match of text.matchAll(/ (<|>|<=|>=|===|!==) /g)) {
    const line = text.slice(text.lastIndexOf("\n", match.index) + 1, match.index);
    if (/^\s*(\*|\/\*|\/\/)|\/\//.test(line)) continue;
    found.push({ at: match.index + 1, old: match[1], replacement: turned[match[1]] });
  }
  return withLines(found, text);
}

function withLines(found, text) {
  return found.map((mutant) => ({ ...mutant, line: text.slice(0, mutant.at).split("\n").length }));
}

const folder = mkdtempSync(join(tmpdir(), "golden-"));
const program = join(folder, "program.mjs");

/** One program with everything that answers, and a file of the planner as `broken` says. */
async function write(broken) {
  const stdin = {
    resolveDir: here,
    contents: `
      export { answer, operations } from "../../packages/answers/src/operations/in-english.test-support.js";
      export { differences, recorded } from "./recorded.js";`,
  };
  const put = {
    name: "broken",
    setup: (on) =>
      on.onLoad({ filter: /planner\/src\/.*\.ts$/ }, ({ path }) =>
        broken?.path === path ? { contents: broken.text, loader: "ts" } : undefined,
      ),
  };
  await build({
    stdin,
    bundle: true,
    format: "esm",
    platform: "node",
    conditions: ["source"],
    outfile: program,
    plugins: [put],
    logLevel: "error",
  });
}

const runner = join(folder, "run.mjs");
writeFileSync(
  runner,
  `import { readFileSync } from "node:fs";
const { answer, operations, differences, recorded } = await import(${JSON.stringify(program)});
const read = (name) => JSON.parse(readFileSync(${JSON.stringify(here)} + "kept/" + name + ".json", "utf8"));
const scenes = { Scene: read("scenes"), MountingScene: read("mounting-scenes") };
const first = process.argv[2];
const order = [...operations].sort((a, b) => Number(b.name === first) - Number(a.name === first));
for (const { name, request } of order) {
  const kept = read(name);
  for (const [scene, raw] of Object.entries(scenes[request])) {
    const [found] = differences(kept[scene], recorded(answer(name, raw)));
    if (found === undefined) continue;
    process.stdout.write(name + " " + scene + found);
    process.exit(1);
  }
}
`,
);

/** @returns whether the figures differ; a program that fails or never ends is noticed, too */
function isNoticed(first) {
  return spawnSync(process.execPath, [runner, first], { timeout: timeout_ms, stdio: "ignore" }).status !== 0;
}

const files = readdirSync(source, { recursive: true, encoding: "utf8" })
  .filter((file) => isDecision(file) && (asked.length === 0 || asked.some((start) => file.startsWith(start))))
  .sort();

await write();
if (isNoticed("")) throw new Error("The figures differ before anything is broken.");

const counts = new Map();
for (const file of files) {
  const path = join(source, file);
  const text = readFileSync(path, "utf8");
  const [room] = file.split("/");
  const count = counts.get(room) ?? { broken: 0, noticed: 0 };
  counts.set(room, count);
  for (const { at, old, replacement, line } of mutantsOf(text)) {
    await write({ path, text: text.slice(0, at) + replacement + text.slice(at + old.length) });
    count.broken++;
    if (isNoticed(room)) count.noticed++;
    else console.log(`not noticed: ${file}:${line} ${old} as ${replacement}`);
  }
}
for (const [room, { broken, noticed }] of counts) console.log(`| ${room} | ${broken} | ${noticed} |`);
rmSync(folder, { recursive: true });
