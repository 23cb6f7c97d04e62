// The clock is turned by hand, so nothing waits: how the whole service fares is in test/hostile/slow-clients.test.ts.
import { once } from "node:events";
import { type AddressInfo, connect, type Socket } from "node:net";
import Fastify, { type FastifyInstance } from "fastify";
import { afterEach, beforeEach, expect, it, vi } from "vitest";
import { limitSending } from "./send-limit.js";

const timeout_ms = 1000;
/** More than kernels buffer for a connection, so that whoever does not read it holds it up. */
const long = Buffer.alloc(16 * 1024 * 1024, "a");

beforeEach(() => {
  vi.useFakeTimers({ toFake: ["setTimeout", "clearTimeout"] });
});
afterEach(() => {
  vi.useRealTimers();
});

/** A service that limits sending, its address once it listens, and the connection that it serves first. */
function make() {
  const app = Fastify();
  limitSending(app, timeout_ms);
  app.get("/long", (_, reply) => reply.header("content-type", "text/plain").send(long));
  app.get("/short", () => "short");
  const serving = new Promise<Socket>((resolve) => app.server.once("connection", resolve));
  return { app, serving };
}

async function listen(app: FastifyInstance): Promise<number> {
  await app.listen({ host: "127.0.0.1", port: 0 });
  return (app.server.address() as AddressInfo).port;
}

async function ask(port: number, path: string): Promise<Socket> {
  const socket = connect(port, "127.0.0.1");
  socket.on("error", () => {});
  await once(socket, "connect");
  socket.write(`GET ${path} HTTP/1.1\r\nHost: a\r\n\r\n`);
  return socket;
}

it("cuts off whoever does not read, once the time is over and no sooner", async () => {
  const { app, serving } = make();
  const socket = await ask(await listen(app), "/long");
  const served = await serving;
  // Its beginning is there, and no more is read.
  await once(socket, "readable");
  expect(vi.getTimerCount()).toBe(1);
  vi.advanceTimersByTime(timeout_ms - 1);
  expect(served.destroyed).toBe(false);
  vi.advanceTimersByTime(1);
  expect(served.destroyed).toBe(true);
  socket.destroy();
  await app.close();
});

it("lets whoever has read the whole answer ask again on the same connection, however much later", async () => {
  const { app } = make();
  const answered = new Promise<void>((resolve) => {
    app.server.once("request", (_, response) => response.once("finish", () => setImmediate(resolve)));
  });
  const socket = await ask(await listen(app), "/short");
  await once(socket, "data");
  await answered;
  vi.advanceTimersByTime(10 * timeout_ms);
  socket.write("GET /short HTTP/1.1\r\nHost: a\r\n\r\n");
  const [again] = await once(socket, "data");
  expect(String(again)).toMatch(/^HTTP\/1\.1 200 OK/);
  socket.destroy();
  await app.close();
});

// Node.js gives a connection to one answer at a time, so the second of these has none yet when it is sent.
it("cuts off whoever does not read an answer that had to wait for another on its connection", async () => {
  const { app, serving } = make();
  let answerFirst = () => {};
  app.get("/first", (_, reply) => {
    answerFirst = () => reply.send("first");
  });
  const second = new Promise<void>((resolve) => {
    app.addHook("onSend", async (request) => {
      if (request.url === "/long") resolve();
    });
  });
  const socket = await ask(await listen(app), "/first");
  socket.write("GET /long HTTP/1.1\r\nHost: a\r\n\r\n");
  await second;
  answerFirst();
  await once(socket, "readable");
  vi.advanceTimersByTime(timeout_ms);
  expect((await serving).destroyed).toBe(true);
  socket.destroy();
  await app.close();
});
