// Tries what the Dockerfile says where no container can be built: its steps one by one, in folders of their own outside the repository, with
// the Node.js that is here instead of its base image; then the service as the container runs it, as a user without rights on a root that
// nobody can write to. Needs Linux and root, for mounts that only this process sees: `npm run container`.
import { spawn, spawnSync } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { createRequire } from "node:module";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { withoutNpmSettings } from "./environment.mjs";

/** @import { Copy, Instruction } from "dockerfile-ast" */

const root = fileURLToPath(new URL("..", import.meta.url));
const file = join(root, "services/api/Dockerfile");
// As npm installs it for the tests of the same file.
const { DockerfileParser } = createRequire(join(root, "test/package.json"))("dockerfile-ast");

/** @type {Instruction[]} */
const instructions = DockerfileParser.parse(readFileSync(file, "utf8")).getInstructions();
const workdirs = [...new Set(instructions.filter((one) => one.getKeyword() === "WORKDIR").map(textOf))];

/** Set in the process that has mounts of its own. */
const home = process.env["SUNFATHOM_CONTAINER"];
if (home === undefined) {
  const began = performance.now();
  const folder = mkdtempSync(join(tmpdir(), "container-"));
  const made = workdirs.filter((path) => !existsSync(path));
  const words = ["--mount", process.execPath, fileURLToPath(import.meta.url)];
  const env = { ...withoutNpmSettings(process.env), SUNFATHOM_CONTAINER: folder };
  const { status, error } = spawnSync("unshare", words, { stdio: "inherit", env });
  for (const path of [...made, folder]) rmSync(path, { recursive: true, force: true });
  if (error || status !== 0) {
    say("failed, or cannot be tried here: it takes Linux, root and unshare");
    process.exit(1);
  }
  say(`every step went well, in ${Math.round((performance.now() - began) / 1000)} s`);
  process.exit(0);
}

/** Where a stage's folders are. @param {string} stage @param {string} path */
const within = (stage, path) => join(home, stage, path);
/** @type {Record<string, string>} */
const environment = {};
let stage = "";
let workdir = "/";
let user = "root";
for (const instruction of instructions) step(instruction);
await tryService();

/** @param {Instruction} instruction */
function step(instruction) {
  const words = instruction.getArguments().map((one) => one.getValue());
  switch (instruction.getKeyword()) {
    case "FROM":
      stage = words[2] ?? "final";
      say(`stage ${stage}, on this machine in place of ${words[0]}`);
      for (const path of workdirs) {
        mkdirSync(within(stage, path), { recursive: true });
        mkdirSync(path, { recursive: true });
        run("mount", ["--bind", within(stage, path), path]);
      }
      return;
    case "WORKDIR":
      workdir = textOf(instruction);
      return;
    case "ENV":
      for (const word of words) environment[word.split("=", 1)[0] ?? ""] = word.replace(/^[^=]+=/, "");
      return;
    case "COPY":
      copy(/** @type {Copy} */ (instruction).getFromFlag()?.getValue() ?? undefined, words);
      return;
    case "RUN":
      say(textOf(instruction).replace(/\s*\\\n\s*/g, " "));
      run("sh", ["-c", textOf(instruction)], { cwd: workdir, env: { ...process.env, ...environment } });
      return;
    case "USER":
      user = textOf(instruction);
      return;
    case "EXPOSE":
    case "HEALTHCHECK":
    case "CMD":
      return;
    default:
      throw new Error(`${instruction.getKeyword()} is not known here: teach .ci/container.mjs about it.`);
  }
}

/** @param {string | undefined} from @param {string[]} words */
function copy(from, words) {
  const sources = words.slice(0, -1);
  const target = resolve(workdir, words.at(-1) ?? "");
  if (from !== undefined) {
    for (const path of sources)
      run("cp", [
        "-a",
        path.endsWith("/") || isFolder(from, path) ? `${within(from, path)}/.` : within(from, path),
        target,
      ]);
    return;
  }
  if (sources.join() !== ".") throw new Error("Only the whole context is copied here.");
  // What the ignore file lets in: of a name in any folder, or of a path from the top.
  const ignored = readFileSync(`${file}.dockerignore`, "utf8")
    .split("\n")
    .filter((line) => line !== "");
  const anywhere = ignored.filter((line) => line.startsWith("**/")).map((line) => line.slice(3));
  const fromTop = ignored.filter((line) => !line.startsWith("**/")).map((line) => `./${line}`);
  const excluded = [
    "--anchored",
    ...fromTop.map((path) => `--exclude=${path}`),
    "--no-anchored",
    ...anywhere.map((name) => `--exclude=${name}`),
  ];
  run("sh", ["-c", 'target="$1"; shift; tar -c "$@" . | tar -x -C "$target"', "sh", target, ...excluded], {
    cwd: root,
  });
}

/** @param {string} from @param {string} path */
function isFolder(from, path) {
  return existsSync(join(within(from, path), "."));
}

/** Starts the service as the container does, asks it, and ends it. */
async function tryService() {
  const port = await freePort();
  const [id] = user === "node" ? ["1000"] : [];
  if (id === undefined) throw new Error(`The user is ${user}, whom only the image knows.`);
  for (const path of ["/", tmpdir(), ...workdirs]) {
    if (path !== "/") run("mount", ["--bind", path, path]);
    run("mount", ["-o", "remount,bind,ro", path]);
  }
  const env = { PATH: process.env["PATH"], ...environment, PORT: String(port) };
  const asUser = ["--reuid", id, "--regid", id, "--clear-groups", "--no-new-privs", "--bounding-set=-all"];
  const wrote = spawnSync("setpriv", [...asUser, "sh", "-c", `touch ${workdir}/a || touch /tmp/a`], { env });
  if (wrote.status === 0) throw new Error("What should be read only can be written to.");
  const [program, ...words] = command("CMD");
  const child = spawn("setpriv", [...asUser, program ?? "", ...words], {
    cwd: workdir,
    env,
    stdio: ["ignore", "pipe", "inherit"],
  });
  const ended = new Promise((done) => child.once("exit", (code, signal) => done(signal ?? code)));
  await Promise.race([
    new Promise((done) => child.stdout.once("data", done)),
    ended.then((how) => Promise.reject(new Error(`The service ended with ${how} before it listened.`))),
  ]);
  const address = `http://127.0.0.1:${port}`;
  const [probe, ...probing] = command("HEALTHCHECK");
  run("setpriv", [...asUser, probe ?? "", ...probing], { cwd: workdir, env });
  say("the health check finds it well");
  for (const path of [
    "/v1/filter-choice?visibility_m=25&water_hue=blue&sun_elevation_deg=50&min_depth_m=5&max_depth_m=18&fields=brief",
    "/v1/pictures/light-with-depth?visibility_m=25&water_hue=blue&sun_elevation_deg=50&min_depth_m=5&max_depth_m=18&format=png",
    "/sdk/latest",
    "/docs",
  ]) {
    const answer = await fetch(address + path);
    const bytes = (await answer.arrayBuffer()).byteLength;
    if (!answer.ok || bytes === 0) throw new Error(`${path} was answered with ${answer.status}.`);
    say(`${answer.status}, ${bytes} bytes: ${path.split("?", 1)[0]}`);
  }
  for (const name of ["LICENSE", "NOTICE"]) {
    if (!existsSync(join(workdir, name))) throw new Error(`${name} is not in the container.`);
  }
  child.kill("SIGTERM");
  const how = await ended;
  if (how !== 0) throw new Error(`Asked to stop, the service ended with ${how}.`);
}

/** A command in the exec form. @param {string} keyword @returns {string[]} */
function command(keyword) {
  const last = instructions.filter((one) => one.getKeyword() === keyword).at(-1);
  const text = last?.getArgumentsContent() ?? "";
  return JSON.parse(text.slice(text.indexOf("[")));
}

/** @param {Instruction} instruction @returns {string} */
function textOf(instruction) {
  return instruction.getArgumentsContent() ?? "";
}

/** @param {string} program @param {string[]} words @param {import("node:child_process").SpawnSyncOptions} [options] */
function run(program, words, options = {}) {
  const { status, error } = spawnSync(program, words, {
    stdio: ["ignore", "inherit", "inherit"],
    ...options,
  });
  if (error || status !== 0) throw new Error(`failed: ${[program, ...words].join(" ")}`, { cause: error });
}

/** @returns {Promise<number>} a port that was free a moment ago */
function freePort() {
  return new Promise((done) => {
    const server = createServer().listen(0, "127.0.0.1", () => {
      const address = server.address();
      server.close(() => done(typeof address === "object" && address !== null ? address.port : 0));
    });
  });
}

/** @param {string} message */
function say(message) {
  console.log(`[container] ${message}`);
}
