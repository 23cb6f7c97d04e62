// What becomes of an address that has more requests unanswered than its connections could have one by one.

import { once } from "node:events";
import { Agent, request as send } from "node:http";
import { type AddressInfo, connect, type Socket } from "node:net";
import request from "supertest";
import { afterEach, expect, it } from "vitest";
import type { createApp } from "../../app.js";
import { buildApp } from "../../build-app.test-support.js";
import { eventually } from "../../eventually.test-support.js";

let app: Awaited<ReturnType<typeof createApp>> | undefined;
afterEach(() => app?.close());

async function start(limits: object) {
  app = await buildApp({ limits: { ...limits } });
  await app.listen({ host: "127.0.0.1", port: 0 });
  const { port } = app.server.address() as AddressInfo;
  const open = async (localAddress: string): Promise<Socket> => {
    const socket = connect({ port, host: "127.0.0.1", localAddress });
    socket.on("error", () => {}).resume();
    await once(socket, "connect");
    return socket;
  };
  return { port, open };
}

const scene = '{"water_type":"IB","depth_m":7}';

function ask(from: { agent: Agent; port: number; localAddress: string }): Promise<number | undefined> {
  return new Promise((resolve, reject) => {
    const headers = { "content-type": "application/json" };
    const options = { ...from, host: "127.0.0.1", method: "POST", path: "/v1/attenuation", headers };
    const sent = send(options, (response) => {
      response.resume().on("end", () => resolve(response.statusCode));
    });
    sent.on("error", reject).end(scene);
  });
}

const many = (count: number) => "GET /health/live HTTP/1.1\r\nHost: a\r\n\r\n".repeat(count);

it("all its connections are closed and none is taken for a while, and others are served", async () => {
  const { port, open } = await start({ unansweredPerAddress: 8 });
  const silent = await open("127.0.0.2");
  const flooding = await open("127.0.0.2");
  flooding.write(many(12));
  await eventually(() => expect([silent.closed, flooding.closed]).toEqual([true, true]));
  const again = await open("127.0.0.2");
  await eventually(() => expect(again.closed).toBe(true));
  await request(`http://127.0.0.1:${port}`).get("/health/live").expect(200);
});

it("one that asks on all connections it may have, each time after the answer, is never taken for a flood", async () => {
  const connections = 64;
  const { port, open } = await start({
    connectionsPerAddress: connections,
    unansweredPerAddress: 2 * connections,
  });
  const silent = await open("127.0.0.2");
  const agent = new Agent({ keepAlive: true, maxSockets: connections - 1 });
  const asked = await Promise.all(
    Array.from({ length: 40 * connections }, () => ask({ agent, port, localAddress: "127.0.0.2" })),
  );
  expect(new Set(asked)).toEqual(new Set([200]));
  expect(silent.closed).toBe(false);
  silent.destroy();
  agent.destroy();
});

it("one connection that is ahead of itself costs the others nothing, many do", async () => {
  const { open } = await start({ unansweredPerConnection: 4 });
  const silent = await open("127.0.0.2");
  for (let nth = 0; nth < 3; nth += 1) {
    const ahead = await open("127.0.0.2");
    ahead.write(many(12));
    await eventually(() => expect(ahead.closed).toBe(true));
  }
  expect(silent.closed).toBe(false);
  for (let nth = 0; nth < 20 && !silent.closed; nth += 1) {
    const ahead = await open("127.0.0.2");
    ahead.write(many(12));
    await eventually(() => expect(ahead.closed).toBe(true));
  }
  await eventually(() => expect(silent.closed).toBe(true));
});
