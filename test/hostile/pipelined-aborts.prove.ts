// Callers that send many requests in one packet, to every route, and hang up before the answers have left. What each held
// must be given back at once: `npm run prove` tries it for 10 minutes (PIPELINE_MINUTES). In a heap
// that is small enough for what is kept too long to end the process.
import { readdirSync, readFileSync } from "node:fs";
import { connect } from "node:net";
import { afterEach, describe, expect, it } from "vitest";
import { operations } from "../fuzz/description.js";
import { growthOf, medianOf } from "../lifecycle/growth.js";
import { ask, askFrom, pause, type Service, start } from "../lifecycle/service.js";

const minutes = Number(process.env["PIPELINE_MINUTES"] ?? 10);
const heap_mb = 160;
const attackers = 4;
const readings = 60;

let service: Service | undefined;
afterEach(() => service?.process.kill("SIGKILL"));

function requestOf(method: string, path: string, body?: object): string {
  const json = body === undefined ? "" : JSON.stringify(body);
  const framing =
    body === undefined
      ? ""
      : `Content-Type: application/json\r\nContent-Length: ${Buffer.byteLength(json)}\r\n`;
  return `${method} ${path} HTTP/1.1\r\nHost: a\r\n${framing}\r\n${json}`;
}

/** One request to every route that there is, described or not, and to some that there are not. */
const requests: string[] = [
  ...operations.flatMap(({ method, path, examples }) =>
    method === "POST"
      ? examples.map((body) => requestOf(method, path, body))
      : [requestOf(method, path.replace("{name}", "not-found"))],
  ),
  ...[
    "/",
    "/docs",
    "/docs/",
    "/docs/static/openapi-explorer.min.js",
    "/docs/static/pages.css",
    "/docs/guides/booking",
    "/docs/static/icon.svg",
    "/openapi.yaml",
    "/changelog",
    "/v1",
    "/openapi.json",
    "/sdk",
    "/sdk/latest",
    "/nowhere",
    "/problems/%zz",
  ].map((path) => requestOf("GET", path)),
  // Files in other forms than the first.
  ...[
    "/v1/pictures/red-in-post?format=png&width_px=1600",
    "/v1/slates?format=png",
    "/v1/grades?format=cdl",
  ].map((path) => requestOf("POST", path, { water_type: "IB", depth_m: 10 })),
  requestOf("HEAD", "/docs/static/openapi-explorer.min.js"),
  requestOf("OPTIONS", "/v1/attenuation"),
  requestOf("POST", "/v1/attenuation", {}),
];

/** From one request to more than any connection may have unanswered; the service closes what sends those. */
const counts = [1, 4, 16, 300];

/** Sends one request so often in one write, and hangs up a moment later. */
function abort(port: number, request: string, count: number, after_ms: number): Promise<void> {
  return new Promise((resolve) => {
    const socket = connect(port, "127.0.0.1", () => {
      socket.write(request.repeat(count));
      setTimeout(() => socket.resetAndDestroy(), after_ms);
    });
    // Nothing is read, so that answers wait.
    socket.pause();
    socket.on("error", () => {});
    socket.on("close", () => resolve());
  });
}

/** What a process has open (Linux, proc(5)). */
const openFiles = (pid: number) => readdirSync(`/proc/${pid}/fd`).length;

function residentMb(pid: number): number {
  const [, kb] = /^VmRSS:\s+(\d+) kB$/m.exec(readFileSync(`/proc/${pid}/status`, "utf8")) ?? [];
  return Number(kb) / 1024;
}

/** Aborts on every route in turn, for so long; a bystander must be served throughout. */
async function attack({ port, process: { pid = 0 } }: Service, time_ms: number) {
  const end = performance.now() + time_ms;
  const seen = { aborted: 0, files: [] as number[], resident_mb: [] as number[], health: [] as number[] };
  const attacker = async (nth: number) => {
    for (let turn = nth; performance.now() < end; turn += attackers) {
      const request = requests[turn % requests.length] ?? "";
      const count = counts[Math.floor(turn / requests.length) % counts.length] ?? 1;
      await abort(port, request, count, (turn * 7) % 30);
      seen.aborted += 1;
    }
  };
  const watch = async () => {
    while (performance.now() < end) {
      await pause(time_ms / readings);
      // From another address, as the attackers' own may be taken no connection of for a while.
      seen.health.push(await askFrom(port, "127.0.0.2", "/health/live"));
      seen.files.push(openFiles(pid));
      seen.resident_mb.push(residentMb(pid));
    }
  };
  await Promise.all([watch(), ...Array.from({ length: attackers }, (_, nth) => attacker(nth))]);
  return seen;
}

/** Waits until no more is open than `most`, for some seconds at the most. */
async function settledFiles(pid: number, most: number): Promise<number> {
  for (let tries = 0; openFiles(pid) > most && tries < 100; tries += 1) await pause(100);
  return openFiles(pid);
}

/** What is open once the threads are up, which open files of their own behind the start: the same for a second. */
async function filesAtRest(pid: number): Promise<number> {
  let [open, same] = [openFiles(pid), 0];
  for (let tries = 0; same < 10 && tries < 200; tries += 1) {
    await pause(100);
    const now = openFiles(pid);
    same = now === open ? same + 1 : 0;
    open = now;
  }
  return open;
}

const limits = { LOG_LEVEL: "silent", NODE_OPTIONS: `--max-old-space-size=${heap_mb}` };

describe("requests that are sent together and abandoned", () => {
  it(
    `leave no file open and no memory taken, on any route, for ${minutes} minutes`,
    async () => {
      service = await start(limits);
      const { pid = 0 } = service.process;
      const before = await filesAtRest(pid);
      await attack(service, 8000);
      const { aborted, files, resident_mb, health } = await attack(service, minutes * 60_000);
      const grown_mb = growthOf(resident_mb);
      const typical_mb = medianOf(resident_mb);
      console.info(
        `${aborted} connections aborted; files ${before} before, at most ${Math.max(...files)}; ` +
          `${Math.round(typical_mb)} MB, grown by ${Math.round(grown_mb)} MB`,
      );
      expect(aborted).toBeGreaterThan(requests.length);
      expect(new Set(health)).toEqual(new Set([200]));
      expect(await settledFiles(pid, before + attackers)).toBeLessThanOrEqual(before + attackers);
      expect(Math.max(...files)).toBeLessThan(before + 50);
      expect(grown_mb, `at ${typical_mb} MB`).toBeLessThan(30 + 0.1 * typical_mb);
      expect(service.process.exitCode).toBeNull();
    },
    minutes * 60_000 + 120_000,
  );

  // Each held a file: 900 stayed open after three connections.
  it("to the documentation leave no file open, however many they are", async () => {
    service = await start(limits);
    const { port } = service;
    const { pid = 0 } = service.process;
    const before = await filesAtRest(pid);
    for (const count of [16, 300, 300, 300])
      await abort(port, requestOf("GET", "/docs/static/openapi-explorer.min.js"), count, 100);
    expect(await settledFiles(pid, before)).toBeLessThanOrEqual(before);
  });

  // Each held its package, and the connection, for a minute.
  it("for packages leave nothing behind that a small heap could not hold", async () => {
    service = await start(limits);
    const { port, ended } = service;
    const [package_] = requests.filter((text) => text.startsWith("POST /v1/quiz-packages"));
    if (package_ === undefined) throw new Error("There is no example of a package.");
    for (let round = 0; round < 15; round += 1)
      await Promise.all(Array.from({ length: 4 }, () => abort(port, package_, 16, 200)));
    expect((await ask(port, "/health/live")).status).toBe(200);
    expect(await Promise.race([ended, pause(100)])).toBeUndefined();
  }, 120_000);
});
