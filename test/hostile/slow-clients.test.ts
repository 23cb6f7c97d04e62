// Clients that send or read as slowly as they can, many at a time, from this machine to itself alone. Others are still
// served, and every slow connection is closed in bounded time. SLOW_CLIENTS asks for more of them.
import { connect, type Socket } from "node:net";
import type { FastifyInstance } from "fastify";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { createApp } from "../../services/api/src/app.js";
import { unhurried } from "../../services/api/src/unhurried.test-support.js";
import { head, portOf, raw } from "./wire.js";

const count = Number(process.env["SLOW_CLIENTS"] ?? 40);

const limits = {
  ...unhurried,
  requestsPerWindow: 0,
  headersTimeout_ms: 700,
  requestTimeout_ms: 1200,
  timeoutCheck_ms: 100,
  connectionTimeout_ms: 3000,
  sendTimeout_ms: 1500,
};

let app: FastifyInstance;
let port: number;
beforeAll(async () => {
  app = await createApp({ limits });
  // More than kernels buffer for a connection, so that whoever does not read it holds it up.
  const long = Buffer.alloc(6 * 1024 * 1024, "a");
  app.get("/test/long", (_, reply) => reply.header("content-type", "text/plain").send(long));
  await app.listen({ host: "127.0.0.1", port: 0 });
  port = portOf(app);
});
afterAll(() => app.close());

/** A connection that sends `first` and then something of `rest` every 100 ms, for as long as it can. */
function trickle(first: string, rest: () => string): Socket {
  const socket = connect(port, "127.0.0.1", () => socket.write(first));
  const timer = setInterval(() => socket.write(rest()), 100);
  socket.on("error", () => {});
  socket.on("close", () => clearInterval(timer));
  return socket.resume();
}

/** A connection that asks for a long answer and never reads it. */
function unread(): Socket {
  const socket = connect(port, "127.0.0.1", () => socket.write("GET /test/long HTTP/1.1\r\nHost: a\r\n\r\n"));
  socket.on("error", () => {});
  return socket.pause();
}

/** Connections as the service counts them: data still in the kernel hides their end from whoever does not read. */
const open = () =>
  new Promise<number>((resolve, reject) =>
    app.server.getConnections((error, n) => (error ? reject(error) : resolve(n))),
  );

async function whileAttackedBy(attack: () => Socket, bound_ms: number): Promise<void> {
  const slow = Array.from({ length: count }, attack);
  await vi.waitFor(async () => expect(await open()).toBeGreaterThanOrEqual(count / 2), {
    timeout: 3000,
    interval: 10,
  });
  const body = '{"water_type":"IB","depth_m":5}';
  const served = head("Content-Type: application/json", `Content-Length: ${body.length}`);
  for (let round = 0; round < 5; round += 1) {
    const { statuses, time_ms } = await raw(port, [served, body]);
    expect(statuses).toEqual([200]);
    expect(time_ms).toBeLessThan(1000);
  }
  const deadline = performance.now() + bound_ms;
  while ((await open()) > 0 && performance.now() < deadline)
    await new Promise((resolve) => setTimeout(resolve, 50));
  const left = await open();
  for (const socket of slow) socket.destroy();
  expect(left).toBe(0);
}

describe(`${count} clients at a time`, () => {
  it("that send headers byte by byte", async () => {
    await whileAttackedBy(() => trickle("GET /v1/models HTTP/1.1\r\nHost: a\r\nX-Slow: ", () => "a"), 4000);
  }, 20_000);

  it("that send header after header", async () => {
    await whileAttackedBy(() => trickle("GET /v1/models HTTP/1.1\r\nHost: a\r\n", () => "X-A: b\r\n"), 4000);
  }, 20_000);

  it("that send a body byte by byte", async () => {
    await whileAttackedBy(
      () => trickle(head("Content-Type: application/json", "Content-Length: 100000"), () => " "),
      5000,
    );
  }, 20_000);

  it("that send chunk after chunk", async () => {
    await whileAttackedBy(
      () => trickle(head("Content-Type: application/json", "Transfer-Encoding: chunked"), () => "1\r\n \r\n"),
      5000,
    );
  }, 20_000);

  it("that connect and say nothing", async () => {
    await whileAttackedBy(() => trickle("", () => ""), 6000);
  }, 20_000);

  it("that do not read what they asked for", async () => {
    await whileAttackedBy(unread, 6000);
  }, 20_000);

  it("that ask once and then, slowly, again", async () => {
    await whileAttackedBy(() => trickle("GET /v1/models HTTP/1.1\r\nHost: a\r\n\r\nGET /", () => "x"), 6000);
  }, 20_000);
});

describe("connections", () => {
  it("may be as many as the limit, and no more", async () => {
    const small = await createApp({ limits: { ...limits, connections: 3 } });
    await small.listen({ host: "127.0.0.1", port: 0 });
    const held = await Promise.all(
      Array.from(
        { length: 3 },
        () =>
          new Promise<Socket>((resolve) => {
            const socket = connect(portOf(small), "127.0.0.1", () => resolve(socket));
            socket.on("error", () => {});
          }),
      ),
    );
    const request = "GET /health/live HTTP/1.1\r\nHost: a\r\nConnection: close\r\n\r\n";
    expect((await raw(portOf(small), [request])).statuses).toEqual([]);
    held[0]?.destroy();
    await new Promise((resolve) => setTimeout(resolve, 50));
    expect((await raw(portOf(small), [request])).statuses).toEqual([200]);
    for (const socket of held) socket.destroy();
    await small.close();
  });
});
