// A mix of every operation for some time, while memory must not grow. `npm run prove`
// soaks for 30 minutes (SOAK_MINUTES): what is allowed to grow does not grow with the time.
import { readFileSync } from "node:fs";
import { Agent } from "node:http";
import { afterEach, describe, expect, it } from "vitest";
import { calculations, operations } from "../fuzz/description.js";
import { floorsOf, growthOf, medianOf } from "./growth.js";
import { ask, pause, type Service, start } from "./service.js";

const minutes = Number(process.env["SOAK_MINUTES"] ?? 30);
const readings = 120;
/** Until code is compiled and caches, which are bounded, have filled: that is no leak. */
const warmUp_ms = 10_000;

/** What has a service load a module beside this one. */
const imported = (name: string): string => `--import ${new URL(name, import.meta.url).href}`;

let service: Service | undefined;
afterEach(() => service?.process.kill("SIGKILL"));

/** Resident memory of a process, MB (Linux, proc(5)). */
function residentMb(pid: number): number {
  const [, kb] = /^VmRSS:\s+(\d+) kB$/m.exec(readFileSync(`/proc/${pid}/status`, "utf8")) ?? [];
  return Number(kb) / 1024;
}

/** What objects take, with those that nobody needs any more, MB, as the service itself says. */
async function heapMb(port: number): Promise<number> {
  const [, bytes] = /^nodejs_heap_size_used_bytes (\S+)$/m.exec((await ask(port, "/metrics")).text) ?? [];
  return Number(bytes) / 2 ** 20;
}

interface Right {
  path: string;
  body: object;
}
const right: Right[] = calculations.flatMap(({ post }) =>
  post.examples.map((body) => ({ path: post.path, body })),
);
const fixed = operations.filter(({ method, path }) => method === "GET" && !path.includes("{"));

/**
 * The `nth` request: of each few one is computed, one is wrong, one leads nowhere under a name never used before, and the
 * rest read what is fixed, so that there are many.
 */
function requestOf(nth: number, asked: readonly Right[]): { path: string; body?: object } {
  const turn = Math.floor(nth / 4);
  const { path, body } = asked[turn % asked.length] ?? { path: "", body: {} };
  switch (nth % 4) {
    case 0:
      return { path, body: "depth_m" in body ? { ...body, depth_m: 1 + (nth % 400) / 10 } : body };
    case 1:
      return { path, body: { ...body, [`made_up_${nth}`]: 1 } };
    case 2:
      return { path: `/nowhere/${nth}` };
    default:
      return { path: fixed[turn % fixed.length]?.path ?? "" };
  }
}

interface Soaked {
  asked: number;
  statuses: Map<number, number>;
  resident_mb: number[];
  heap_mb: number[];
}

/** Asks without a pause, from four clients. */
async function soak(
  { port, metricsPort, process: { pid = 0 } }: Service,
  time_ms: number,
  asking = right,
): Promise<Soaked> {
  const agent = new Agent({ keepAlive: true });
  const soaked: Soaked = { asked: 0, statuses: new Map(), resident_mb: [], heap_mb: [] };
  const end = performance.now() + time_ms;
  const client = async () => {
    while (performance.now() < end) {
      soaked.asked += 1;
      const { path, body } = requestOf(soaked.asked, asking);
      const { status } = await ask(port, path, body, agent);
      soaked.statuses.set(status, (soaked.statuses.get(status) ?? 0) + 1);
    }
  };
  const watch = async () => {
    while (performance.now() < end) {
      await pause(time_ms / readings);
      soaked.resident_mb.push(residentMb(pid));
      soaked.heap_mb.push(await heapMb(metricsPort));
    }
  };
  await Promise.all([watch(), client(), client(), client(), client()]);
  agent.destroy();
  return soaked;
}

/** How large each kind of memory is and how much it grew. */
function judge({ resident_mb, heap_mb }: Soaked) {
  return [resident_mb, floorsOf(heap_mb, 5)].map((series) => ({
    typical_mb: medianOf(series),
    growth_mb: growthOf(series),
  }));
}

const allowed_mb = (typical_mb: number) => 30 + 0.1 * typical_mb;

function report(title: string, { asked, statuses, resident_mb, heap_mb }: Soaked): void {
  const some = (series: number[]) =>
    series
      .filter((_, nth) => nth % 8 === 0)
      .map(Math.round)
      .join(" ");
  const counts = JSON.stringify(Object.fromEntries(statuses));
  console.info(`${title}: ${asked} requests, by status ${counts}`);
  console.info(
    `resident MB ${some(resident_mb)}\nheap floors MB ${some(floorsOf(heap_mb, 5).flatMap((mb) => Array(5).fill(mb)))}`,
  );
}

describe("memory", () => {
  it(
    `stays flat while the service answers for ${minutes} minutes`,
    async () => {
      service = await start({ LOG_LEVEL: "silent", NODE_OPTIONS: imported("collect.mjs") });
      await soak(service, warmUp_ms);
      const soaked = await soak(service, minutes * 60_000);
      report(`soak of ${minutes} min`, soaked);
      const statuses = [...soaked.statuses.keys()];
      expect(statuses).toEqual(expect.arrayContaining([200, 400, 404]));
      // Neither a failure nor a request without an answer.
      expect(statuses.filter((status) => status < 200 || status >= 500)).toEqual([]);
      for (const { growth_mb, typical_mb } of judge(soaked))
        expect(growth_mb, `at ${typical_mb} MB`).toBeLessThan(allowed_mb(typical_mb));
    },
    minutes * 60_000 + 60_000,
  );

  it("would be seen to grow if the service left something behind", async () => {
    const NODE_OPTIONS = `${imported("leak.mjs")} ${imported("collect.mjs")}`;
    service = await start({ LOG_LEVEL: "silent", NODE_OPTIONS });
    service.process.kill("SIGUSR2");
    // Light ones: heavy ones wait for threads, on a busy machine for so long that few readings are left.
    const light = right.filter(({ path }) => path.endsWith("/attenuation"));
    const soaked = await soak(service, 6000, light);
    report("soak of a service that leaks", soaked);
    for (const { growth_mb, typical_mb } of judge(soaked))
      expect(growth_mb, `at ${typical_mb} MB`).toBeGreaterThan(allowed_mb(typical_mb));
  });
});
