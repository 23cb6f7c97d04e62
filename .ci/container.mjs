// Tries what the Dockerfile says where no container can be built: its steps one by one, each stage in a root of its own that lies over this
// machine's, with the Node.js that is here instead of its base image; then the service as the container runs it, as a user without rights
// on a root that nobody can write to. Needs Linux and root, for mounts that only this process sees: `npm run container`.
import { spawn, spawnSync } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, statSync } from "node:fs";
import { createRequire } from "node:module";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { withoutNpmSettings } from "./environment.mjs";

/**
 * As the reader of Dockerfiles gives it, as far as it is read here.
 * @typedef {object} Instruction
 * @property {() => string} getKeyword
 * @property {() => { getValue: () => string }[]} getArguments
 * @property {() => string | null} getArgumentsContent
 * @property {() => { getValue: () => string | null } | null} [getFromFlag] of a COPY
 */

const root = fileURLToPath(new URL("..", import.meta.url));
const file = join(root, "services/api/Dockerfile");
// As npm installs it for the tests of the same file.
const { DockerfileParser } = createRequire(join(root, "test/package.json"))("dockerfile-ast");

/** @type {Instruction[]} */
const instructions = DockerfileParser.parse(readFileSync(file, "utf8")).getInstructions();
/** Set in the process that has mounts of its own. */
const home = process.env["SUNFATHOM_CONTAINER"] ?? "";
if (home === "") {
  const began = performance.now();
  const folder = mkdtempSync(join(tmpdir(), "container-"));
  const words = ["--mount", process.execPath, fileURLToPath(import.meta.url)];
  const env = { ...withoutNpmSettings(process.env), SUNFATHOM_CONTAINER: folder };
  const { status, error } = spawnSync("unshare", words, { stdio: "inherit", env });
  rmSync(folder, { recursive: true, force: true });
  if (error || status !== 0) {
    say("failed, or cannot be tried here: it takes Linux, root and unshare");
    process.exit(1);
  }
  say(`every step went well, in ${Math.round((performance.now() - began) / 1000)} s`);
  process.exit(0);
}

/** Where a path of a stage is. @param {string} stage @param {string} path */
const within = (stage, path) => join(home, stage, "root", path);
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
      layOver();
      return;
    case "WORKDIR":
      workdir = textOf(instruction);
      mkdirSync(within(stage, workdir), { recursive: true });
      return;
    case "ENV":
      for (const word of words) environment[word.split("=", 1)[0] ?? ""] = word.replace(/^[^=]+=/, "");
      return;
    case "COPY":
      copy(instruction.getFromFlag?.()?.getValue() ?? undefined, words);
      return;
    case "RUN":
      say(textOf(instruction).replace(/\s*\\\n\s*/g, " "));
      inside("root", ["sh", "-c", textOf(instruction)], { ...process.env, ...environment });
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

/** Lays a root for the stage over this machine's: what is written stays in it. */
function layOver() {
  const folder = join(home, stage);
  for (const name of ["upper", "work", "root"]) mkdirSync(join(folder, name), { recursive: true });
  const layers = `lowerdir=/,upperdir=${folder}/upper,workdir=${folder}/work`;
  run("mount", ["-t", "overlay", "overlay", "-o", layers, within(stage, "/")]);
  for (const path of ["/proc", "/dev"]) run("mount", ["--rbind", path, within(stage, path)]);
}

/** @param {string | undefined} from @param {string[]} words */
function copy(from, words) {
  const sources = words.slice(0, -1);
  const target = within(stage, resolve(workdir, words.at(-1) ?? ""));
  if (from !== undefined) {
    for (const path of sources) {
      const source = within(from, path);
      run("cp", ["-a", statSync(source).isDirectory() ? `${source}/.` : source, target]);
    }
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
  const packing = [
    "-c",
    'target="$1"; shift; tar -c "$@" . | tar -x -C "$target"',
    "sh",
    target,
    ...excluded,
  ];
  run("sh", packing, root);
}

/** Starts the service as the container does, asks it, and ends it. */
async function tryService() {
  run("mount", ["-o", "remount,ro", within(stage, "/")]);
  // The machine may be busy, which says nothing of the container.
  const ofRun = { PORT: String(await freePort()), ANSWER_TIMEOUT_S: "600" };
  const env = { PATH: process.env["PATH"], ...environment, ...ofRun };
  if (inside(user, ["node", "-e", "fs.mkdtempSync(os.tmpdir() + path.sep)"], env, true) === 0)
    throw new Error("What should be read only can be written to.");
  const child = spawn("chroot", withinRoot(user, command("CMD")), {
    env,
    stdio: ["ignore", "pipe", "inherit"],
  });
  const ended = new Promise((done) => child.once("exit", (code, signal) => done(signal ?? code)));
  await Promise.race([
    new Promise((done) => child.stdout.once("data", done)),
    ended.then((how) => Promise.reject(new Error(`The service ended with ${how} before it listened.`))),
  ]);
  inside(user, command("HEALTHCHECK"), env);
  say("the health check finds it well");
  const scene = "visibility_m=25&water_hue=blue&sun_elevation_deg=50&min_depth_m=5&max_depth_m=18";
  for (const path of [
    `/v1/filter-choice?${scene}&fields=brief`,
    `/v1/pictures/light-with-depth?${scene}&format=png`,
    "/sdk/latest",
    "/docs",
  ]) {
    const answer = await fetch(`http://127.0.0.1:${env.PORT}${path}`);
    const bytes = (await answer.arrayBuffer()).byteLength;
    if (!answer.ok || bytes === 0) throw new Error(`${path} was answered with ${answer.status}.`);
    say(`${answer.status}, ${bytes} bytes: ${path.split("?", 1)[0]}`);
  }
  for (const name of ["LICENSE", "NOTICE"])
    if (!existsSync(within(stage, join(workdir, name)))) throw new Error(`${name} is not in the container.`);
  child.kill("SIGTERM");
  const how = await ended;
  if (how !== 0) throw new Error(`Asked to stop, the service ended with ${how}.`);
}

/**
 * Runs a command in the stage's root. @param {string} as @param {string[]} words @param {NodeJS.ProcessEnv} env
 * @param {boolean} [mayFail]
 */
function inside(as, words, env, mayFail = false) {
  const { status, error } = spawnSync("chroot", withinRoot(as, words), {
    env,
    stdio: ["ignore", "inherit", "inherit"],
  });
  if (error || (status !== 0 && !mayFail)) throw new Error(`failed: ${words.join(" ")}`, { cause: error });
  return status;
}

/** What chroot is told. @param {string} as @param {string[]} words */
function withinRoot(as, words) {
  // Of the image's users only this one is known: 1000, as Node.js' images number it.
  if (as !== "root" && as !== "node") throw new Error(`The user is ${as}, whom only the image knows.`);
  const rights = [
    "setpriv",
    "--reuid",
    "1000",
    "--regid",
    "1000",
    "--clear-groups",
    "--no-new-privs",
    "--bounding-set=-all",
  ];
  const there = ["sh", "-c", 'cd "$0" && exec "$@"', workdir, ...words];
  return [within(stage, "/"), ...(as === "node" ? rights : []), ...there];
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

/** @param {string} program @param {string[]} words @param {string} [cwd] */
function run(program, words, cwd) {
  const { status, error } = spawnSync(program, words, { cwd, stdio: ["ignore", "inherit", "inherit"] });
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
