// Children pinned to a core: one core for what is measured, the other for who asks.
import { spawn, spawnSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { availableParallelism } from "node:os";

export const MEASURED_CORE = 1;
export const ASKING_CORE = 0;

export const canPin = existsSync("/usr/bin/taskset") && availableParallelism() >= 2;

/** @param {number} core @param {string[]} command */
function pinned(core, command) {
  return canPin ? ["taskset", "-c", String(core), ...command] : command;
}

/** Numerical libraries otherwise take every core. */
const ONE_THREAD = { OMP_NUM_THREADS: "1", OPENBLAS_NUM_THREADS: "1", MKL_NUM_THREADS: "1" };

/**
 * Runs a program to its end and reads the JSON that it prints.
 * @param {number} core @param {string[]} command @param {{ mayFail?: boolean }} [options]
 */
export function runJson(core, command, { mayFail = false } = {}) {
  const [file, ...args] = pinned(core, command);
  const { status, stdout, stderr } = spawnSync(file, args, {
    encoding: "utf8",
    env: { ...process.env, ...ONE_THREAD },
    maxBuffer: 64 * 1024 * 1024,
  });
  if (status === 0) return JSON.parse(stdout);
  if (mayFail) return undefined;
  throw new Error(`${command.join(" ")} failed: ${stderr}`);
}

/**
 * Starts a server that prints the address it listens on.
 * @param {string[]} command @param {Record<string, string>} env @param {number | "ignore"} log where its error output goes
 * @returns {Promise<{ address: string, pid: number, stop: () => Promise<void>, started_ms: number }>}
 */
export async function startServer(command, env = {}, log = "ignore") {
  const [file, ...args] = pinned(MEASURED_CORE, command);
  const begun = performance.now();
  const child = spawn(file, args, { env: { ...process.env, ...env }, stdio: ["ignore", "pipe", log] });
  const ended = new Promise((resolve) => child.once("exit", resolve));
  const address = await new Promise((resolve, reject) => {
    let text = "";
    child.stdout.on("data", (part) => {
      text += part;
      const found = /http:\/\/[\d.]+:\d+/.exec(text);
      if (found) resolve(found[0]);
    });
    child.once("exit", (code) => reject(new Error(`${command.join(" ")} ended with ${code}: ${text}`)));
  });
  const started_ms = performance.now() - begun;
  const stop = async () => {
    child.kill("SIGINT");
    await ended;
  };
  return { address: String(address), pid: child.pid ?? 0, stop, started_ms };
}

/** Of the kernel's clock for processor time, a second: fixed on Linux for what it tells programs. */
const TICKS = 100;
/** An idle server still looks after its timers: so much processor time in a second. */
const IDLE_S = 0.03;

/** Processor time that a process has used, s. @param {number} pid */
export function processorTimeOf(pid) {
  const stat = readFileSync(`/proc/${pid}/stat`, "utf8");
  const fields = stat.slice(stat.lastIndexOf(")") + 2).split(" ");
  return (Number(fields[11]) + Number(fields[12])) / TICKS;
}

/** Waits until a process that nobody asks has nothing left to do: what is prepared after the start is no part of a request. */
export async function settled(/** @type {number} */ pid) {
  for (let before = -1, now = processorTimeOf(pid); now - before > IDLE_S; now = processorTimeOf(pid)) {
    before = now;
    await new Promise((resolve) => setTimeout(resolve, 1000));
  }
}

/** What a process takes now, and has taken at most, MB; from the kernel. @param {number} pid */
export function memoryOf(pid) {
  const status = readFileSync(`/proc/${pid}/status`, "utf8");
  const of = (/** @type {string} */ name) =>
    Math.round(Number(new RegExp(`${name}:\\s+(\\d+)`).exec(status)?.[1]) / 1024);
  return { now_MB: of("VmRSS"), most_MB: of("VmHWM") };
}
