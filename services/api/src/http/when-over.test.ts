import { once } from "node:events";
import { type AddressInfo, connect, type Socket } from "node:net";
import Fastify from "fastify";
import { expect, it, vi } from "vitest";
import { whenOver } from "./when-over.js";

/** A service that tells of each request, once it is over, whether its answer had left; `/held/…` is answered by hand. */
async function start() {
  const app = Fastify();
  const over: [string, boolean][] = [];
  const held: (() => void)[] = [];
  const connections: Socket[] = [];
  app.server.on("connection", (socket: Socket) => connections.push(socket));
  app.addHook("onRequest", (request, reply, done) => {
    whenOver(request, reply, () => over.push([request.url, reply.raw.writableFinished]));
    done();
  });
  app.get("/held/:name", (_, reply) => {
    held.push(() => reply.send("at last"));
  });
  app.get("/quick", () => "quick");
  await app.listen({ host: "127.0.0.1", port: 0 });
  const socket = connect((app.server.address() as AddressInfo).port, "127.0.0.1");
  await once(socket, "connect");
  const ask = (...paths: string[]) =>
    socket.write(paths.map((path) => `GET ${path} HTTP/1.1\r\nHost: a\r\n\r\n`).join(""));
  return { app, over, held, connections, socket, ask };
}

it("a request is over once its answer has left, and not again when its connection closes", async () => {
  const { app, over, socket, ask } = await start();
  for (const count of [1, 2, 3]) {
    ask("/quick");
    await vi.waitFor(() => expect(over).toHaveLength(count));
  }
  socket.destroy();
  await app.close();
  expect(over).toEqual(Array(3).fill(["/quick", true]));
});

it("requests sent at once are over each at its own time, however their connection ends", async () => {
  const { app, over, held, connections, socket, ask } = await start();
  ask("/held/a", "/held/b", "/held/c", "/quick");
  await vi.waitFor(() => expect(held).toHaveLength(3));
  expect(over).toEqual([]);
  held[0]?.();
  await vi.waitFor(() => expect(over).toEqual([["/held/a", true]]));
  // One listener of ours, and those that the server has on any connection.
  const idle = connect((app.server.address() as AddressInfo).port, "127.0.0.1");
  await vi.waitFor(() => expect(connections).toHaveLength(2));
  const [busy = 0, other = 0] = connections.map((connection) => connection.listenerCount("close"));
  expect(busy - other).toBeLessThanOrEqual(2);
  socket.destroy();
  idle.destroy();
  await vi.waitFor(() => expect(over).toHaveLength(4));
  await app.close();
  expect(over.slice(1).sort()).toEqual([
    ["/held/b", false],
    ["/held/c", false],
    ["/quick", false],
  ]);
});
