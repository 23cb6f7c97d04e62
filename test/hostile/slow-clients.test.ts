// Clients that send or read as slowly as they can, many at a time, from this machine to itself alone. Others are still
// served, and every slow connection is closed in bounded time. `npm run prove` sends 500 (SLOW_CLIENTS), which are held to the
// service's own limits: under shorter ones the first would be gone before the last has come.
import { connect, type Socket } from "node:net";
import { isProof } from "@sunfathom/fixtures/is-proof";
import type { FastifyInstance } from "fastify";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { createApp } from "../../services/api/src/app.js";
import { unhurried } from "../../services/api/src/unhurried.test-support.js";
import { head, portOf, raw } from "./wire.js";

const count = isProof ? Number(process.env["SLOW_CLIENTS"] ?? 500) : 40;
/** How many of them must be there at once; in a short run some may have been closed on a busy machine. */
const together = isProof ? count : count / 2;

const short = {
  headersTimeout_ms: 700,
  requestTimeout_ms: 1200,
  timeoutCheck_ms: 100,
  connectionTimeout_ms: 3000,
  sendTimeout_ms: 1500,
};
const limits = { ...unhurried, costPerWindow: 0, ...(isProof ? {} : short) };
const { headersTimeout_ms, requestTimeout_ms, sendTimeout_ms, timeoutCheck_ms } = limits;
/** What a busy machine may be late by. */
const late_ms = 3000;
const timeout_ms = isProof ? 180_000 : 20_000;

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

/** How many were told that what they send is no HTTP: those attack nobody. */
let malformed = 0;

/** A connection that sends `first` and then something of `rest` every 100 ms, for as long as it can. */
function trickle(first: string, rest: () => string): Socket {
  let timer: NodeJS.Timeout;
  // Not before it is connected: what is written earlier would arrive first.
  const socket = connect(port, "127.0.0.1", () => {
    socket.write(first);
    timer = setInterval(() => socket.write(rest()), 100);
  });
  socket.on("data", (part) => {
    if (part.toString("latin1").startsWith("HTTP/1.1 400")) malformed += 1;
  });
  socket.on("error", () => {});
  socket.on("close", () => clearInterval(timer));
  return socket;
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

/** @param limit_ms after which the service may close an attacker */
async function whileAttackedBy(attack: () => Socket, limit_ms: number): Promise<void> {
  const slow = Array.from({ length: count }, attack);
  await vi.waitFor(async () => expect(await open()).toBeGreaterThanOrEqual(together), {
    timeout: limit_ms + late_ms,
    interval: 10,
  });
  const here = performance.now();
  const body = '{"water_type":"IB","depth_m":5}';
  const served = head(json, `Content-Length: ${body.length}`);
  const times_ms: number[] = [];
  for (let round = 0; round < 5; round += 1) {
    const { statuses, time_ms } = await raw(port, [served, body]);
    expect(statuses).toEqual([200]);
    times_ms.push(time_ms);
  }
  expect(Math.max(...times_ms)).toBeLessThan(1000);
  const deadline = here + limit_ms + timeoutCheck_ms + late_ms;
  while ((await open()) > 0 && performance.now() < deadline)
    await new Promise((resolve) => setTimeout(resolve, 50));
  const left = await open();
  const closed_ms = performance.now() - here;
  console.info(
    `others served in ${Math.round(Math.max(...times_ms))} ms, all closed in ${Math.round(closed_ms)} ms`,
  );
  for (const socket of slow) socket.destroy();
  expect(left).toBe(0);
  expect(malformed).toBe(0);
}

const get = "GET /v1/models HTTP/1.1\r\nHost: a\r\n";
const json = "Content-Type: application/json";
const attacks: [string, () => Socket, number][] = [
  ["send headers byte by byte", () => trickle(`${get}X-Slow: `, () => "a"), headersTimeout_ms],
  ["send header after header", () => trickle(get, () => "X-A: b\r\n"), headersTimeout_ms],
  [
    "send a body byte by byte",
    () => trickle(head(json, "Content-Length: 100000"), () => " "),
    requestTimeout_ms,
  ],
  [
    "send chunk after chunk",
    () => trickle(head(json, "Transfer-Encoding: chunked"), () => "1\r\n \r\n"),
    requestTimeout_ms,
  ],
  ["connect and say nothing", () => trickle("", () => ""), headersTimeout_ms],
  ["do not read what they asked for", unread, sendTimeout_ms],
  ["ask once and then, slowly, again", () => trickle(`${get}\r\nGET /`, () => "x"), headersTimeout_ms],
];

describe(`${count} clients at a time`, () => {
  it.each(attacks)("that %s", (_, attack, limit_ms) => whileAttackedBy(attack, limit_ms), timeout_ms);
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
