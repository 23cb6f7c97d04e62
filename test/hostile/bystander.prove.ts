// What a bystander notices while another client asks for all that it may: on every core, and on one. From another address
// of the loopback network each, since a client is an address. Times are of the built service, as `npm start` runs it.
import { request } from "node:http";
import { availableParallelism } from "node:os";
import { afterEach, describe, expect, it } from "vitest";
import { pause, type Service, start } from "../lifecycle/service.js";

const attacker = "127.0.0.2";
const bystander = "127.0.0.3";
/** For each of the two, alone and beside the other. */
const rounds = 120;

let service: Service | undefined;
afterEach(() => service?.process.kill("SIGKILL"));

/** As much as a scene may ask for. */
const heavy = (n: number) => ({
  water_type: "9C",
  min_depth_m: 0.1,
  max_depth_m: 100,
  wind_speed_m_s: 3 + (n % 997) / 1000,
  filter_change_underwater: "flip",
  lamps: Array.from({ length: 6 }, (_, k) => ({ flux_lm: 3000 + k, distance_m: 0.8 + k / 100 })),
});

const light = (n: number) => ({ water_type: "IB", depth_m: 5 + n / 100 });

interface Told {
  status: number;
  took_ms: number;
  retryAfter: string | undefined;
}

function send(port: number, from: string, path: string, body?: object): Promise<Told> {
  const begun = performance.now();
  return new Promise((resolve) => {
    const over = (status: number, retryAfter?: string) =>
      resolve({ status, took_ms: performance.now() - begun, retryAfter });
    const asked = request(
      {
        port,
        path,
        localAddress: from,
        agent: false,
        method: body === undefined ? "GET" : "POST",
        headers: { "content-type": "application/json" },
      },
      (response) => {
        response.on("end", () => over(response.statusCode ?? 0, response.headers["retry-after"])).resume();
        response.on("error", () => over(0));
      },
    );
    asked.on("error", () => over(0));
    asked.end(body === undefined ? undefined : JSON.stringify(body));
  });
}

const at = (values: readonly number[], share: number): number =>
  [...values].sort((a, b) => a - b)[Math.floor(share * (values.length - 1))] ?? Number.NaN;

/** What the bystander meets: light answers and health checks, one after the other. */
async function look(port: number): Promise<{ light: Told[]; health: Told[] }> {
  const seen = { light: [] as Told[], health: [] as Told[] };
  for (let n = 0; n < rounds; n += 1) {
    seen.light.push(await send(port, bystander, "/v1/attenuation", light(n)));
    seen.health.push(await send(port, bystander, "/health/live"));
    await pause(20);
  }
  return seen;
}

/** Keeps 30 heavy requests under way, whatever comes of them, until told to stop. */
function attack(port: number) {
  const statuses = new Map<number, number>();
  let goesOn = true;
  const hands = Array.from({ length: 30 }, async (_, hand) => {
    for (let n = 0; goesOn; n += 1) {
      const { status } = await send(port, attacker, "/v1/dive-advice", heavy(hand * 31 + n * 7));
      statuses.set(status, (statuses.get(status) ?? 0) + 1);
      if (status !== 200) await pause(50);
    }
  });
  return {
    statuses,
    stop: async () => {
      goesOn = false;
      await Promise.all(hands);
    },
  };
}

describe.each([
  ["every core", availableParallelism()],
  ["one core", 1],
])("on %s", (_, cores) => {
  it("a bystander is answered in time while one client does its worst", async () => {
    service = await start({ RATE_LIMIT_COST: "30000", WORKERS: String(cores) }, "ignore");
    const { port, process: child } = service;
    if (cores === 1) await pinned(child.pid ?? 0);
    for (let n = 0; n < 50; n += 1) await send(port, bystander, "/v1/attenuation", light(n + 1000));
    const alone = await look(port);
    const under = attack(port);
    await pause(3000);
    const beside = await look(port);
    await under.stop();
    const times = (told: readonly Told[]) => told.map(({ took_ms }) => took_ms);
    const figures = {
      alone_p50_ms: at(times(alone.light), 0.5),
      beside_p50_ms: at(times(beside.light), 0.5),
      beside_p99_ms: at(times(beside.light), 0.99),
      health_p99_ms: at(times(beside.health), 0.99),
      attacker: Object.fromEntries(under.statuses),
    };
    console.log(figures);
    for (const { status } of [...beside.light, ...beside.health]) expect(status).toBe(200);
    // Whatever the attacker is refused with, it is never that a whole request was late.
    expect([...under.statuses.keys()].every((status) => [200, 429, 503].includes(status))).toBe(true);
    expect(figures.beside_p50_ms).toBeLessThan(3 * figures.alone_p50_ms);
    expect(figures.beside_p99_ms).toBeLessThan(250);
    expect(figures.health_p99_ms).toBeLessThan(250);
  }, 300_000);
});

/** Leaves a process and all its threads one core. */
async function pinned(pid: number): Promise<void> {
  const { execFileSync } = await import("node:child_process");
  execFileSync("taskset", ["--all-tasks", "--cpu-list", "--pid", "0", String(pid)]);
}
