// Each operation of the service against bare servers; 304s; latency at half saturation; memory.
import { closeSync, mkdtempSync, openSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { startFlags } from "../../support/start-flags.mjs";
import { ASKING_CORE, memoryOf, processorTimeOf, runJson, settled, startServer } from "../process.mjs";
import { median } from "../statistics.mjs";

const here = fileURLToPath(new URL(".", import.meta.url));
const SERVER = fileURLToPath(new URL("../../../services/api/dist/server.js", import.meta.url));
/** As `npm start` and the container run it. */
const COMMAND = [process.execPath, ...startFlags, SERVER];
/** No more than one client may have heavy requests waiting, beyond which the service rightly refuses. */
const CONNECTIONS = 12;

/**
 * The whole service as it runs, with its log on and its limit counted but set where one asker does not meet it. Load shedding is
 * off in all: a server that waits while another has the core takes itself for overloaded.
 */
export const FULL_STACK = {
  PORT: "0",
  RATE_LIMIT_COST: "1000000000",
  ANSWER_CACHE_BYTES: "0",
};

/** @typedef {Awaited<ReturnType<typeof startServer>>} Server */

/** @param {Server} server @param {{ operation: string, get?: boolean, seconds: number }} what */
function load({ address }, what) {
  const question = JSON.stringify({ address, connections: CONNECTIONS, ...what });
  return runJson(ASKING_CORE, [process.execPath, join(here, "load.mjs"), question]);
}

/**
 * @param {{ operation: string, rounds: number, seconds: number, warmUp_s: number, get?: boolean }[]} plan
 * @param {{ operation: string, seconds: number }} latency
 */
export async function measureService(plan, latency) {
  const folder = mkdtempSync(join(tmpdir(), "bench-"));
  const logs = ["full", "fastify"].map((name) => openSync(join(folder, name), "w"));
  const bare = await startServer([process.execPath, join(here, "bare-http.mjs")]);
  const fastify = await startServer([process.execPath, join(here, "bare-fastify.mjs")], {}, logs[1]);
  const full = await startServer(COMMAND, FULL_STACK, logs[0]);
  try {
    await settled(full.pid);
    const idle = memoryOf(full.pid);
    const rows = plan.map((row) => compare(row, { full, bare, fastify }));
    const busy = memoryOf(full.pid);
    const saturation =
      rows.find(({ operation, get }) => operation === latency.operation && !get)?.perSecond.full ?? 0;
    const rate = Math.max(1, saturation / 2);
    const halfOf = (/** @type {Server} */ { address }) => {
      const question = JSON.stringify({ address, ...latency, rate });
      return runJson(ASKING_CORE, [process.execPath, join(here, "latency.mjs"), question]);
    };
    return {
      rows,
      half: { ...latency, ...halfOf(full) },
      /** What the machine itself adds: as many requests a second of a server that has little to do. */
      halfOfBare: halfOf(bare),
      memory: { idle, busy },
    };
  } finally {
    await Promise.all([bare, fastify, full].map((server) => server.stop()));
    for (const log of logs) closeSync(log);
    rmSync(folder, { recursive: true });
  }
}

/**
 * @param {{ operation: string, rounds: number, seconds: number, warmUp_s: number, get?: boolean }} row
 * @param {Record<"full" | "bare" | "fastify", Server>} servers
 */
function compare({ operation, rounds, seconds, warmUp_s, get = false }, { full, bare, fastify }) {
  /** @type {Record<string, number[]>} */
  const found = { full: [], bare: [], fastify: [] };
  /** @type {Record<string, number[]>} */
  const processor_us = { full: [], bare: [], fastify: [] };
  let askerBusy = 0;
  // What is compiled while the first answers are given is no part of the figures.
  load(full, { operation, get, seconds: warmUp_s });
  for (const server of get ? [fastify] : [fastify, bare]) load(server, { operation, get, seconds });
  for (let round = 0; round < rounds; round++) {
    const order = Object.entries(get ? { full, fastify } : { full, bare, fastify });
    for (const [name, server] of round % 2 === 0 ? order : order.reverse()) {
      const before = processorTimeOf(server.pid);
      const result = load(server, { operation, get, seconds });
      processor_us[name].push((1e6 * (processorTimeOf(server.pid) - before)) / result.requests);
      found[name].push(result.perSecond);
      askerBusy = Math.max(askerBusy, result.askerBusy);
    }
  }
  const against = (/** @type {number[]} */ others) =>
    others.length === 0 ? undefined : median(found.full.map((value, round) => value / others[round]));
  const lessTimeThan = (/** @type {number[]} */ others) =>
    others.length === 0 ? undefined : median(processor_us.full.map((value, round) => others[round] / value));
  const perSecond = Object.fromEntries(
    Object.entries(found)
      .filter(([, values]) => values.length > 0)
      .map(([name, values]) => [name, median(values)]),
  );
  return {
    operation,
    get,
    perSecond,
    toBare: against(found.bare),
    toFastify: against(found.fastify),
    /** The same by the processor time of a request, which others on the machine disturb less. */
    toBareByTime: lessTimeThan(processor_us.bare),
    toFastifyByTime: lessTimeThan(processor_us.fastify),
    processor_us: median(processor_us.full),
    askerBusy,
  };
}

/** From the start of the process to the first yes of `/health/ready`. @param {number} times */
export async function startUp(times) {
  /** @type {number[]} */
  const ready_ms = [];
  for (let n = 0; n < times; n++) {
    const begun = performance.now();
    const server = await startServer(COMMAND, FULL_STACK);
    while (!(await fetch(`${server.address}/health/ready`)).ok)
      await new Promise((resolve) => setTimeout(resolve, 2));
    ready_ms.push(performance.now() - begun);
    await server.stop();
  }
  return { ready_ms };
}
