// One address that asks without end for what costs next to nothing, or is refused: others' health stays in time, on every core
// and on one. From another address of the loopback network each, since a client is an address.
import { type ChildProcess, execFileSync, spawn } from "node:child_process";
import { once } from "node:events";
import { availableParallelism } from "node:os";
import { fileURLToPath } from "node:url";
import { afterEach, describe, expect, it } from "vitest";
import { askFrom, pause, type Service, start } from "../lifecycle/service.js";

const attacker = "127.0.0.2";
const bystander = "127.0.0.3";
/** Almost as many connections as an address may have, and requests ahead as one may. */
const connections = 240;
const ahead = 16;
const look_ms = 8000;
const most_ms = 250;

let service: Service | undefined;
let flood: ChildProcess | undefined;
afterEach(() => {
  flood?.kill("SIGKILL");
  service?.process.kill("SIGKILL");
});

const line = (method: string, target: string, headers = "") =>
  `${method} ${target} HTTP/1.1\r\nHost: a\r\n${headers}\r\n`;
const strangers = (count: number) =>
  `{${Array.from({ length: count }, (_, n) => `"k${n.toString(36)}":1`).join(",")}}`;
const refused = (body: string) =>
  `${line("POST", "/v1/dive-advice", `Content-Type: application/json\r\nContent-Length: ${body.length}\r\n`)}${body}`;

const floods: [string, { part: string; ahead?: number; resets?: boolean }][] = [
  ["whether the process lives", { part: line("GET", "/health/live") }],
  ["whether it is ready", { part: line("GET", "/health/ready") }],
  ["what has not changed", { part: line("GET", "/v1/models", "If-None-Match: *\r\n") }],
  ["what is not there", { part: line("GET", "/nowhere/at/all") }],
  ["with fifty errors", { part: refused(strangers(50)) }],
  ["with as many errors as fit, two at a time", { part: refused(strangers(700)), ahead: 2 }],
  [
    "for leave to ask",
    {
      part: line(
        "OPTIONS",
        "/v1/dive-advice",
        "Origin: https://a.example\r\nAccess-Control-Request-Method: POST\r\n",
      ),
    },
  ],
  ["with escapes that cannot be decoded", { part: line("GET", "/v1/%zz") }],
  ["what is no HTTP", { part: "X\r\n\r\n", ahead: 1 }],
  ["and resets each connection", { part: line("GET", "/health/live"), resets: true }],
];

async function connectionTimes(port: number): Promise<number[]> {
  const times: number[] = [];
  for (const end = performance.now() + look_ms; performance.now() < end; ) {
    const begun = performance.now();
    expect(await askFrom(port, bystander, "/health/live")).toBe(200);
    times.push(performance.now() - begun);
    await pause(10);
  }
  return times.sort((a, b) => a - b);
}

describe.each([
  ["every core", availableParallelism()],
  ["one core", 1],
])("on %s, one address asks without end", (_, cores) => {
  it.each(floods)("%s", async (_, { part, ahead: own = ahead, resets = false }) => {
    service = await start({ RATE_LIMIT_COST: "30000", WORKERS: String(cores) });
    const { port, process: child } = service;
    if (cores === 1) execFileSync("taskset", ["--all-tasks", "--cpu-list", "--pid", "0", String(child.pid)]);
    for (let n = 0; n < 200; n += 1) await askFrom(port, bystander, "/health/live");
    flood = spawn(process.execPath, [fileURLToPath(new URL("endless.test-support.mjs", import.meta.url))], {
      stdio: ["pipe", "ignore", "inherit"],
    });
    flood.stdin?.end(JSON.stringify({ port, from: attacker, connections, ahead: own, part, resets }));
    await once(flood, "spawn");
    await pause(1500);
    const times = await connectionTimes(port);
    const at = (share: number) => Math.round(times[Math.floor(share * (times.length - 1))] ?? Number.NaN);
    console.info(`${times.length} health checks: p50 ${at(0.5)} ms, p99 ${at(0.99)} ms`);
    expect(child.exitCode).toBeNull();
    expect(at(0.99)).toBeLessThan(most_ms);
  });
});
