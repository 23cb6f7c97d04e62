// A mix of requests for some time, at the end of which memory must not have grown. `npm test` soaks for a few seconds;
// SOAK_MINUTES asks for more.
import { readFileSync } from "node:fs";
import { Agent } from "node:http";
import { afterEach, expect, it } from "vitest";
import { ask, pause, type Service, start } from "./service.js";

const minutes = Number(process.env["SOAK_MINUTES"] ?? 0.08);
const time_ms = minutes * 60_000;

let service: Service | undefined;
afterEach(() => service?.process.kill("SIGKILL"));

/** Resident memory of a process, MB (Linux, proc(5)). */
function residentMb(pid: number): number {
  const [, kb] = /^VmRSS:\s+(\d+) kB$/m.exec(readFileSync(`/proc/${pid}/status`, "utf8")) ?? [];
  return Number(kb) / 1024;
}

it(
  `answers for ${minutes} minutes in flat memory`,
  async () => {
    service = await start({ LOG_LEVEL: "silent" });
    const { port, process: child } = service;
    const pid = child.pid ?? 0;
    const agent = new Agent({ keepAlive: true });
    const statuses = new Map<number, number>();
    let asked = 0;
    const end = performance.now() + time_ms;
    const client = async (nth: number) => {
      while (performance.now() < end) {
        asked += 1;
        const depth_m = 1 + ((asked * 7) % 400) / 10;
        const path =
          ["/v1/attenuation", "/v1/exposure-loss", "/v1/mixed-light", "/v1/filter-choice"][asked % 4] ?? "";
        // Of each few one is wrong, and one leads nowhere under a name never used before.
        const reply =
          asked % 11 === 0
            ? await ask(port, `/nowhere/${nth}/${asked}`, undefined, agent)
            : await ask(
                port,
                path,
                asked % 7 === 0 ? { depth_m, [`made_up_${asked}`]: 1 } : { water_type: "II", depth_m },
                agent,
              );
        statuses.set(reply.status, (statuses.get(reply.status) ?? 0) + 1);
      }
    };
    const readings: number[] = [];
    const watch = (async () => {
      while (performance.now() < end) {
        await pause(Math.max(200, time_ms / 60));
        readings.push(residentMb(pid));
      }
    })();
    await Promise.all([watch, ...Array.from({ length: 4 }, (_, nth) => client(nth))]);
    agent.destroy();
    console.info(
      `soak: ${minutes} min, ${asked} requests, by status ${JSON.stringify([...statuses])}, MB ${readings.map(Math.round).join(" ")}`,
    );
    expect([...statuses.keys()].sort()).toEqual([200, 400, 404]);
    // The middle of the last third against that of the second: what leaks grows on.
    const third = Math.floor(readings.length / 3);
    const middle = (part: number[]) => [...part].sort((a, b) => a - b)[Math.floor(part.length / 2)] ?? 0;
    const [before, after] = [middle(readings.slice(third, 2 * third)), middle(readings.slice(2 * third))];
    expect(after).toBeLessThan(before * 1.15 + 15);
  },
  time_ms + 60_000,
);
