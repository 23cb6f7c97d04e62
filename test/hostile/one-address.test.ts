// One address that sends what costs it little and the service much: others are served as if it was not there. Held in
// processor time of the thread that answers, between a bystander's request and its answer: what else this machine has to do
// does not count. (Linux: proc(5).)
import { type ChildProcess, spawn } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { afterEach, describe, expect, it } from "vitest";
import { askFrom, pause, type Service, start } from "../lifecycle/service.js";

const attacker = "127.0.0.2";
const bystander = "127.0.0.3";
/**
 * Without bounds each of them takes from three to twenty seconds, or the process. On a machine with much else to do the
 * bystander reads its answer late, and what the thread has done meanwhile is measured with it.
 */
const most_ms = 1000;
/** As many connections as one address may have, almost. */
const connections = 240;

let service: Service | undefined;
let flood: ChildProcess | undefined;
afterEach(() => {
  flood?.kill("SIGKILL");
  service?.process.kill("SIGKILL");
});

/** Of the thread that answers, ms. */
function answering_ms(pid: number): number {
  return Number(readFileSync(`/proc/${pid}/task/${pid}/schedstat`, "utf8").split(" ")[0]) / 1e6;
}

/** Of all threads, ms. */
const whole_ms = (pid: number) =>
  readdirSync(`/proc/${pid}/task`).reduce(
    (sum, task) => sum + Number(readFileSync(`/proc/${pid}/task/${task}/schedstat`, "utf8").split(" ")[0]),
    0,
  ) / 1e6;

function residentMb(pid: number): number {
  return Number(/^VmRSS:\s+(\d+) kB$/m.exec(readFileSync(`/proc/${pid}/status`, "utf8"))?.[1]) / 1024;
}

/** Sends `bytes` on so many connections at once, and reads what comes. */
function send(port: number, count: number, bytes: (nth: number) => string): void {
  flood = spawn(process.execPath, [fileURLToPath(new URL("flood.test-support.mjs", import.meta.url))], {
    stdio: ["pipe", "ignore", "inherit"],
  });
  const parts = Array.from({ length: count }, (_, nth) => bytes(nth));
  flood.stdin?.end(JSON.stringify({ port, from: attacker, parts }));
}

const post = (path: string, body: string) =>
  `POST ${path} HTTP/1.1\r\nHost: a\r\nContent-Type: application/json\r\nContent-Length: ${Buffer.byteLength(body)}\r\n\r\n${body}`;
const get = (target: string) => `GET ${target} HTTP/1.1\r\nHost: a\r\n\r\n`;
const chunked = (target: string, count: number) =>
  `POST ${target} HTTP/1.1\r\nHost: a\r\nContent-Type: application/json\r\nTransfer-Encoding: chunked\r\n\r\n${"1\r\n \r\n".repeat(count)}`;
const strangers = (count: number) =>
  `{${Array.from({ length: count }, (_, n) => `"k${n.toString(36)}":1`).join(",")}}`;
/** As many requests of one connection may wait. */
const ahead = 16;

const attacks: [string, number, (nth: number) => string][] = [
  [
    "light scenes, as many ahead as may be",
    connections,
    (nth) =>
      Array.from({ length: ahead }, (_, n) =>
        get(`/v1/white-balance?water_type=IB&depth_m=${5 + nth / 100 + n / 1e5}`),
      ).join(""),
  ],
  ["scenes with fifty errors", connections, () => post("/v1/dive-advice", strangers(700)).repeat(ahead)],
  ["names by the thousand", 60, () => post("/v1/attenuation", strangers(22_000))],
  [
    "lists in lists",
    60,
    () => post("/v1/attenuation", `{"lamps":${"[".repeat(120_000)}${"]".repeat(120_000)}}`),
  ],
  ["chunks of one byte", 60, () => chunked("/v1/attenuation", 250_000)],
  ["chunks of one byte to where nobody reads them", 60, () => chunked("/nowhere", 250_000)],
  ["chunks of one byte with a GET", 60, () => chunked("/v1/models", 250_000).replace("POST", "GET")],
  ["requests by the thousand in a packet", connections, () => get("/v1/models").repeat(2000)],
];

describe("one address that sends", () => {
  it.each(attacks)(
    "%s keeps nobody else waiting, and takes no memory",
    async (_, count, bytes) => {
      service = await start({ RATE_LIMIT_COST: "30000", NODE_OPTIONS: "--max-old-space-size=160" });
      const { port, process: child } = service;
      const { pid = 0 } = child;
      // What is new to the compiler takes longer than anything sent here should.
      for (let n = 0; n < 60; n += 1)
        expect(await askFrom(port, bystander, `/v1/white-balance?water_type=IB&depth_m=${n + 0.1}`)).toBe(
          200,
        );
      const before_mb = residentMb(pid);
      send(port, count, bytes);
      const waited_ms: number[] = [];
      let most_mb = 0;
      const end = performance.now() + 5000;
      while (performance.now() < end) {
        const begun_ms = answering_ms(pid);
        expect(await askFrom(port, bystander, "/health/live")).toBe(200);
        waited_ms.push(answering_ms(pid) - begun_ms);
        most_mb = Math.max(most_mb, residentMb(pid));
        await pause(10);
      }
      console.info(
        `answered within ${Math.round(Math.max(...waited_ms))} ms of its thread's time (${Math.round(whole_ms(pid))} ms of all threads' in all), ${Math.round(most_mb - before_mb)} MB more`,
      );
      expect(child.exitCode).toBeNull();
      expect(Math.max(...waited_ms)).toBeLessThan(most_ms);
      expect(most_mb - before_mb).toBeLessThan(250);
    },
    60_000,
  );
});
