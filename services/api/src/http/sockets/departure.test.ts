import { once } from "node:events";
import { createServer } from "node:http";
import { type AddressInfo, connect, type Socket } from "node:net";
import Fastify from "fastify";
import { afterEach, expect, it } from "vitest";
import { eventually } from "../../eventually.test-support.js";
import { watchReadiness } from "../readiness.js";
import { Departure } from "./departure.js";

const sockets: Socket[] = [];
afterEach(() => {
  for (const socket of sockets.splice(0)) socket.destroy();
});

async function start() {
  const departure = new Departure();
  const app = Fastify({
    serverFactory: (handler) => {
      const server = createServer(handler);
      departure.watch(server);
      return server;
    },
  });
  watchReadiness(app);
  app.get("/", () => "taken");
  await app.listen({ host: "127.0.0.1", port: 0 });
  const { port } = app.server.address() as AddressInfo;
  /** A connection, what came on it, and whether it has ended. */
  const open = async () => {
    const socket = connect(port, "127.0.0.1");
    sockets.push(socket);
    const seen = { text: "", isReset: false, ended: false };
    socket.on("error", () => {
      seen.isReset = true;
    });
    socket.on("data", (part) => {
      seen.text += part;
    });
    socket.on("close", () => {
      seen.ended = true;
    });
    await once(socket, "connect");
    return { socket, seen };
  };
  const leaving = { done: false };
  const leave = () =>
    departure.leave(app).then(() => {
      leaving.done = true;
    });
  return { app, open, leave, leaving };
}

const request = "GET / HTTP/1.1\r\nHost: a\r\n\r\n";
const pause = (time_ms: number) => new Promise((resolve) => setTimeout(resolve, time_ms));

it("answers what comes on a connection that was idle, once the listener is gone, and ends it then", async () => {
  const { app, open, leave } = await start();
  const { socket, seen } = await open();
  socket.write(request);
  await eventually(() => expect(seen.text).toContain("taken"));
  const left = leave();
  await eventually(() => expect(app.server.listening).toBe(false), 1);
  expect(seen.ended).toBe(false);
  seen.text = "";
  socket.write(request);
  await left;
  await eventually(() => expect(seen).toMatchObject({ ended: true, isReset: false }));
  expect(seen.text).toMatch(/^HTTP\/1\.1 200 [\s\S]*connection: close[\s\S]*taken$/);
});

it("closes connections that say nothing, whether or not they ever have", async () => {
  const { open, leave } = await start();
  const [spoken, silent] = [await open(), await open()];
  spoken.socket.write(request);
  await eventually(() => expect(spoken.seen.text).toContain("taken"));
  await leave();
  await eventually(() => expect([spoken.seen.ended, silent.seen.ended]).toEqual([true, true]));
});

it("waits for a request of which a part has come, whatever the first was", async () => {
  const { open, leave, leaving } = await start();
  const { socket, seen } = await open();
  socket.write(request + request.slice(0, 9));
  await eventually(() => expect(seen.text).toContain("taken"));
  const left = leave();
  await pause(1500);
  expect(leaving.done).toBe(false);
  socket.write(request.slice(9));
  await left;
  await eventually(() => expect(seen.text.match(/taken/g)).toHaveLength(2));
});

it("leaves at once where nobody is", async () => {
  const { leave } = await start();
  const started_ms = performance.now();
  await leave();
  expect(performance.now() - started_ms).toBeLessThan(1500);
});
