// Makes a clone ready: installs the locked dependencies, then builds. Run before `npm start` and `npm test`. With `run` it fetches
// only what it takes to build and run (`dependencies`), without what tests and checks need (`devDependencies`).
// Both steps cost next to nothing when nothing changed.
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { withoutNpmSettings } from "./environment.mjs";

const root = join(dirname(fileURLToPath(import.meta.url)), "..");
const stampFile = join(root, "node_modules", ".setup-stamp");
const manifest = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
const [wanted = "all"] = process.argv.slice(2);
if (wanted !== "all" && wanted !== "run") fail(`takes "run", "all" or nothing, not "${wanted}"`);

/** @param {string} message */
function say(message) {
  console.log(`[setup] ${message}`);
}

/** @param {string} message @returns {never} */
function fail(message) {
  console.error(`[setup] ${message}`);
  process.exit(1);
}

/**
 * Runs a command in the repository's root and ends the process if it does not succeed.
 * @param {string} command
 * @param {string[]} args
 */
function run(command, args) {
  const { status, error } = spawnSync(command, args, {
    cwd: root,
    env: withoutNpmSettings(process.env),
    stdio: "inherit",
  });
  if (error) fail(`could not start ${command}: ${error.message}`);
  if (status !== 0) fail(`failed: ${[command, ...args].join(" ")}`);
}

function checkNode() {
  const least = Number(manifest.engines.node.replace(">=", ""));
  if (Number(process.versions.node.split(".")[0]) < least) {
    fail(`Node.js ${least} or newer is needed; this is ${process.versions.node} (${process.execPath}).`);
  }
}

/** The state of the world that the installed dependencies belong to. */
function currentStamp() {
  const lock = createHash("sha256")
    .update(readFileSync(join(root, "pnpm-lock.yaml")))
    .digest("hex");
  return [lock, process.version, process.platform, process.arch, manifest.packageManager].join(" ");
}

function install() {
  const stamp = currentStamp();
  const installed = existsSync(stampFile) ? readFileSync(stampFile, "utf8") : "";
  // Whoever has all has what it takes to run.
  if (installed === `all ${stamp}` || installed === `${wanted} ${stamp}`) return;
  say(`installing the locked dependencies with ${manifest.packageManager} (once for each lock file) ...`);
  run("npx", [
    "--yes",
    manifest.packageManager,
    "install",
    "--frozen-lockfile",
    ...(wanted === "run" ? ["--prod"] : []),
    // Nobody may be there to answer when an older node_modules has to be replaced.
    "--config.confirm-modules-purge=false",
  ]);
  writeFileSync(stampFile, `${wanted} ${stamp}`);
}

function build() {
  say("building what changed ...");
  run(process.execPath, [join(".ci", "write-operations.mjs")]);
  run(process.execPath, [join("packages", "quiz", "scripts", "write-player.mjs")]);
  run(process.execPath, [join("packages", "answers", "scripts", "write-build.mjs")]);
  run(process.execPath, [join("node_modules", "typescript", "bin", "tsc"), "-b"]);
  // The pages that the service shows, and the client that it gives to those who install it from there.
  run(process.execPath, [join("services", "api", "scripts", "write-pages.mjs")]);
  run(process.execPath, [
    join("packages", "sdk", "scripts", "pack.mjs"),
    "--into",
    join("services", "api", "client"),
  ]);
}

checkNode();
install();
build();
