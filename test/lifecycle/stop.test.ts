// How the process ends, and what it outlives.

import { openSync } from "node:fs";
import { Agent } from "node:http";
import { connect } from "node:net";
import { afterEach, describe, expect, it } from "vitest";
import { eventually } from "../../services/api/src/eventually.test-support.js";
import { ask, pause, type Reply, type Service, start } from "./service.js";

let service: Service | undefined;
afterEach(() => {
  service?.process.kill("SIGKILL");
  service = undefined;
});

const scene = { water_type: "3C", min_depth_m: 1, max_depth_m: 25 };

describe("SIGTERM under load", () => {
  it("denies readiness first, so that a load balancer loses no request, and ends with status 0 in time", async () => {
    service = await start({ DRAIN_MS: "1500", GRACE_MS: "600000" });
    const { port, process: child, ended } = service;
    const replies: Reply[] = [];
    let ready = true;
    const client = async () => {
      while (ready) replies.push(await ask(port, "/v1/filter-choice", scene));
    };
    const balancer = async () => {
      while (ready) {
        await pause(50);
        ready = (await ask(port, "/health/ready")).status === 200;
      }
      // Not ready, but it takes what comes all the same: asked at once, since on a busy machine the drain is over before the clients are.
      return Promise.all([ask(port, "/health/live"), ask(port, "/v1/filter-choice", scene)]);
    };
    const late = balancer();
    const all = Array.from({ length: 3 }, client);
    // The first waits for a thread to have loaded what it needs.
    while (replies.length === 0) await pause(20);
    const before = replies.length;
    child.kill("SIGTERM");
    replies.push(...(await late));
    await Promise.all(all);
    expect(before).toBeGreaterThan(0);
    expect(replies.length).toBeGreaterThan(before + 2);
    expect(replies.filter(({ status }) => status !== 200)).toEqual([]);
    // As soon as nothing is left: at the end of the grace it would be 1.
    expect(await ended).toEqual({ code: 0, signal: null });
  });

  // What was sent on a connection that the service had taken must be answered: nobody knows whether to send it again.
  it.each(["0", "700"])(
    "answers whatever comes on connections that are kept, until it takes none, after a drain of %s ms",
    async (DRAIN_MS) => {
      const seen = { answered: 0, lost: [] as Reply[] };
      for (let round = 0; round < 2; round += 1) {
        service = await start({ DRAIN_MS, GRACE_MS: "600000" });
        const { port, process: child, ended } = service;
        const agents = Array.from({ length: 12 }, () => new Agent({ keepAlive: true, maxSockets: 1 }));
        const client = async (agent: Agent, nth: number) => {
          for (;;) {
            const body = nth % 2 === 0 ? { water_type: "IB", depth_m: 5 } : undefined;
            const reply = await ask(port, body ? "/v1/attenuation" : "/v1/models", body, agent);
            if (!reply.connected) return;
            if (reply.status === 200) seen.answered += 1;
            else seen.lost.push(reply);
            // Some send at once again, some after a moment in which their connections are idle.
            if (nth % 3 !== 0) await pause(nth);
          }
        };
        const all = agents.map(client);
        while (seen.answered < 500 * (round + 1)) await pause(10);
        child.kill("SIGTERM");
        await Promise.all(all);
        expect(await ended).toEqual({ code: 0, signal: null });
        for (const agent of agents) agent.destroy();
      }
      expect(seen.lost).toEqual([]);
    },
    120_000,
  );

  it.each(["0", "700"])(
    "answers every heavy request that it has taken, after a drain of %s ms",
    async (DRAIN_MS) => {
      service = await start({ DRAIN_MS, GRACE_MS: "600000" });
      const { port, process: child, ended } = service;
      const seen = { answered: 0, lost: [] as Reply[] };
      let scenes = 0;
      const client = async (agent: Agent) => {
        for (;;) {
          scenes += 1;
          const heavy = { ...scene, wind_speed_m_s: 3 + scenes / 1e4 };
          const reply = await ask(port, "/v1/filter-choice", heavy, agent);
          if (!reply.connected) return;
          if (reply.status === 200) seen.answered += 1;
          else seen.lost.push(reply);
        }
      };
      // As many as one client may have under way and in line.
      const agents = Array.from({ length: 12 }, () => new Agent({ keepAlive: true, maxSockets: 1 }));
      const all = agents.map(client);
      while (seen.answered < 24) await pause(10);
      child.kill("SIGTERM");
      await Promise.all(all);
      expect(await ended).toEqual({ code: 0, signal: null });
      for (const agent of agents) agent.destroy();
      expect(seen.lost).toEqual([]);
    },
    120_000,
  );

  it("answers a request that had begun to arrive", async () => {
    service = await start({ DRAIN_MS: "0", GRACE_MS: "600000" });
    const body = JSON.stringify({ water_type: "IB", depth_m: 5 });
    const socket = connect(service.port, "127.0.0.1");
    let text = "";
    socket.on("data", (part) => {
      text += part;
    });
    const head = `POST /v1/attenuation HTTP/1.1\r\nHost: a\r\nContent-Type: application/json\r\nContent-Length: ${body.length}`;
    socket.write(`${head}\r\n\r\n${body.slice(0, 10)}`);
    await pause(200);
    service.process.kill("SIGTERM");
    await pause(300);
    const { port } = service;
    await eventually(async () => expect((await ask(port, "/health/live")).connected).toBe(false));
    socket.write(body.slice(10));
    expect(await service.ended).toEqual({ code: 0, signal: null });
    expect(text).toMatch(/^HTTP\/1\.1 200 /);
    expect(text).toMatch(/^connection: close\r$/im);
  });

  it("waits for no client longer than the grace", async () => {
    service = await start({ DRAIN_MS: "0", GRACE_MS: "500" });
    const { port, process: child, ended } = service;
    const socket = connect(port, "127.0.0.1");
    socket.on("error", () => {});
    socket.write(
      "POST /v1/attenuation HTTP/1.1\r\nHost: a\r\nContent-Type: application/json\r\nContent-Length: 99\r\n\r\n{",
    );
    await pause(200);
    child.kill("SIGTERM");
    // By the grace: where the request's own time limit had closed the connection before it, it would be 0.
    expect(await ended).toEqual({ code: 1, signal: null });
    socket.destroy();
  });

  it("asked for twice means now", async () => {
    service = await start({ DRAIN_MS: "60000" });
    service.process.kill("SIGTERM");
    await pause(100);
    service.process.kill("SIGTERM");
    expect(await service.ended).toEqual({ code: 1, signal: null });
  });
});

// /dev/full refuses every write as a full disk does: ENOSPC (Linux, full(4)).
describe("where nothing can be written", () => {
  it.each(["out", "err", "both"])("(%s) the service goes on answering, and ends in order", async (which) => {
    const full = openSync("/dev/full", "w");
    const [out, err] = [which === "err" ? "ignore" : full, which === "out" ? "ignore" : full] as const;
    service = await start({ LOG_LEVEL: "trace", DRAIN_MS: "0" }, ["ignore", out, err]);
    const { port } = service;
    for (let round = 0; round < 50; round += 1) expect((await ask(port, "/v1/models")).status).toBe(200);
    expect((await ask(port, "/v1/attenuation", scene)).status).toBe(200);
    service.process.kill("SIGTERM");
    expect(await service.ended).toEqual({ code: 0, signal: null });
  });

  it("because nobody reads any more, it goes on too", async () => {
    service = await start({ LOG_LEVEL: "trace", DRAIN_MS: "0" }, ["ignore", "pipe", "pipe"]);
    const { port, process: child } = service;
    child.stdout?.destroy();
    child.stderr?.destroy();
    for (let round = 0; round < 50; round += 1) expect((await ask(port, "/v1/models")).status).toBe(200);
    child.kill("SIGTERM");
    expect(await service.ended).toEqual({ code: 0, signal: null });
  });
});
