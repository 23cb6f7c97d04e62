import { once } from "node:events";
import { createServer, type ServerResponse } from "node:http";
import { type AddressInfo, connect, type Socket } from "node:net";
import { Readable } from "node:stream";
import Fastify from "fastify";
import { afterEach, describe, expect, it } from "vitest";
import { eventually } from "../../eventually.test-support.js";
import { EndingMessage } from "./ending-message.js";
import { limitPipelines } from "./pipelines.js";

const peerOf = () => ({ client: "a", site: "a", isProxy: false });
const closing: (() => unknown)[] = [];
afterEach(async () => {
  for (const close of closing.splice(0).reverse()) await close();
});

/** A service that tells of each request, once it is over, whether its answer had left; `/held/…` is answered by hand. */
async function start(most = 16, ofAddress = 1000) {
  const over: [string, boolean][] = [];
  const held: (() => void)[] = [];
  const connections: Socket[] = [];
  let tooMany = 0;
  let read = 0;
  let handled = 0;
  const app = Fastify({
    serverFactory: (handler) =>
      createServer(
        { IncomingMessage: EndingMessage },
        limitPipelines(
          (request, response) => {
            handled += 1;
            handler(request, response);
          },
          {
            ofConnection: most,
            ofAddress,
            peerOf: () => ({ client: "a", site: "a", isProxy: false }),
            onTooMany: () => (tooMany += 1),
          },
        ),
      ).on("request", () => (read += 1)),
  });
  app.server.on("connection", (socket: Socket) => connections.push(socket));
  app.addHook("onRequest", (request, reply, done) => {
    reply.raw.once("close", () => over.push([request.url, reply.raw.writableFinished]));
    done();
  });
  app.get("/held/:name", (_, reply) => {
    held.push(() => reply.send("at last"));
  });
  app.get("/quick", () => "quick");
  await app.listen({ host: "127.0.0.1", port: 0 });
  closing.push(() => app.close());
  const { port } = app.server.address() as AddressInfo;
  const open = async () => {
    const socket = connect(port, "127.0.0.1");
    socket.on("error", () => {});
    closing.push(() => socket.destroy());
    await once(socket, "connect");
    return socket;
  };
  const socket = await open();
  const ask = (...paths: string[]) =>
    socket.write(paths.map((path) => `GET ${path} HTTP/1.1\r\nHost: a\r\n\r\n`).join(""));
  return {
    app,
    over,
    held,
    connections,
    socket,
    ask,
    open,
    tooMany: () => tooMany,
    read: () => read,
    handled: () => handled,
  };
}

describe("a request", () => {
  it("is over once its answer has left, and not again when its connection closes", async () => {
    const { over, socket, ask } = await start();
    for (const count of [1, 2, 3]) {
      ask("/quick");
      await eventually(() => expect(over).toHaveLength(count));
    }
    socket.destroy();
    await new Promise((resolve) => setTimeout(resolve, 50));
    expect(over).toEqual(Array(3).fill(["/quick", true]));
  });

  it("sent behind others is over at its own time, however the connection ends", async () => {
    const { over, held, connections, socket, ask, open } = await start();
    ask("/held/a", "/held/b", "/held/c", "/quick");
    await eventually(() => expect(held).toHaveLength(3));
    expect(over).toEqual([]);
    held[0]?.();
    await eventually(() => expect(over).toEqual([["/held/a", true]]));
    // One listener of ours, and those that the server has on any connection.
    await open();
    await eventually(() => expect(connections).toHaveLength(2));
    const [busy = 0, other = 0] = connections.map((connection) => connection.listenerCount("close"));
    expect(busy - other).toBeLessThanOrEqual(2);
    socket.destroy();
    await eventually(() => expect(over).toHaveLength(4));
    expect(over.slice(1).sort()).toEqual([
      ["/held/b", false],
      ["/held/c", false],
      ["/quick", false],
    ]);
  });

  it("that is answered after its connection has closed harms nobody", async () => {
    const { over, held, socket, ask, open } = await start();
    ask("/held/a", "/held/b");
    await eventually(() => expect(held).toHaveLength(2));
    socket.destroy();
    await eventually(() => expect(over).toHaveLength(2));
    for (const answer of held) answer();
    await new Promise((resolve) => setTimeout(resolve, 20));
    const other = await open();
    other.write("GET /quick HTTP/1.1\r\nHost: a\r\n\r\n");
    expect(String((await once(other, "data"))[0])).toMatch(/^HTTP\/1\.1 200 /);
  });
});

describe("a stream that is sent behind another answer", () => {
  it("is destroyed when the connection closes, and what it holds is given back", async () => {
    const { app, held, socket, ask, over } = await startWithStreams();
    ask("/held/first", "/stream", "/stream");
    await eventually(() => expect(held).toHaveLength(1));
    await eventually(() => expect(app.streams).toHaveLength(2));
    socket.destroy();
    await eventually(() => expect(over).toHaveLength(3));
    await eventually(() => expect(app.streams.map(({ destroyed }) => destroyed)).toEqual([true, true]));
  });

  async function startWithStreams() {
    const streams: Readable[] = [];
    const over: string[] = [];
    const held: (() => void)[] = [];
    const app = Object.assign(
      Fastify({
        serverFactory: (handler) =>
          createServer(
            limitPipelines(handler, { ofConnection: 16, ofAddress: 1000, peerOf, onTooMany: () => {} }),
          ),
      }),
      { streams },
    );
    app.addHook("onRequest", (request, reply, done) => {
      reply.raw.once("close", () => over.push(request.url));
      done();
    });
    app.get("/held/first", (_, reply) => {
      held.push(() => reply.send("at last"));
    });
    app.get("/stream", (_, reply) => {
      // Far more than anything buffers.
      const stream = Readable.from(endless(), { objectMode: false });
      streams.push(stream);
      return reply.send(stream);
    });
    await app.listen({ host: "127.0.0.1", port: 0 });
    closing.push(() => app.close());
    const socket = connect((app.server.address() as AddressInfo).port, "127.0.0.1");
    socket.on("error", () => {});
    await once(socket, "connect");
    const ask = (...paths: string[]) =>
      socket.write(paths.map((path) => `GET ${path} HTTP/1.1\r\nHost: a\r\n\r\n`).join(""));
    return { app, held, socket, ask, over };
  }
});

async function* endless(): AsyncGenerator<Buffer> {
  for (;;) yield Buffer.alloc(16 * 1024);
}

describe("requests of one connection", () => {
  it("may wait for their answers up to the limit", async () => {
    const { held, socket, ask, tooMany } = await start(3);
    let text = "";
    socket.on("data", (part) => {
      text += part;
    });
    ask("/held/a", "/held/b", "/held/c");
    await eventually(() => expect(held).toHaveLength(3));
    for (const answer of held) answer();
    await eventually(() => expect(text.match(/200 OK/g)).toHaveLength(3));
    // What is answered does not count any more.
    ask("/quick", "/quick", "/quick");
    await eventually(() => expect(text.match(/200 OK/g)).toHaveLength(6));
    expect(tooMany()).toBe(0);
  });

  it("beyond the limit end the connection, are not worked at, and are told of once", async () => {
    const { over, held, socket, ask, tooMany } = await start(3);
    // A reset is an end, too.
    const end = new Promise((resolve) => socket.once("close", resolve));
    ask(...Array.from({ length: 2000 }, (_, nth) => `/held/${nth}`));
    await end;
    await eventually(() => expect(over).toHaveLength(3));
    expect(held).toHaveLength(3);
    expect(tooMany()).toBe(1);
  });
});

it("an answer that waits knows that its connection has closed, as one that has it does", async () => {
  const responses: ServerResponse[] = [];
  const server = createServer(
    limitPipelines((_, response) => responses.push(response), {
      ofConnection: 16,
      ofAddress: 1000,
      peerOf,
      onTooMany: () => {},
    }),
  ).listen(0, "127.0.0.1");
  await once(server, "listening");
  closing.push(() => server.close());
  const socket = connect((server.address() as AddressInfo).port, "127.0.0.1", () =>
    socket.write("GET / HTTP/1.1\r\nHost: a\r\n\r\n".repeat(2)),
  );
  await eventually(() => expect(responses).toHaveLength(2));
  socket.destroy();
  await eventually(() => expect(responses.map(({ destroyed }) => destroyed)).toEqual([true, true]));
});

describe("requests beyond the limit", () => {
  it("are not even read: nothing behind the one that was too many is", async () => {
    const { socket, ask, over, read } = await start(4);
    socket.resume();
    ask("/held/a", ...Array(2000).fill("/quick"));
    await once(socket, "close");
    await eventually(() => expect(over).toHaveLength(4));
    // The one that is too many, and the one whose reading ends it.
    expect(read()).toBeLessThanOrEqual(6);
  });

  it("are those of all connections of an address together", async () => {
    const { open, held, tooMany, handled } = await start(16, 3);
    const sockets = [await open(), await open(), await open(), await open()];
    for (const socket of sockets) socket.write("GET /held/a HTTP/1.1\r\nHost: a\r\n\r\n");
    await eventually(() => expect(tooMany()).toBe(1));
    expect(handled()).toBe(3);
    for (const answer of held) answer();
    const next = await open();
    next.write("GET /quick HTTP/1.1\r\nHost: a\r\n\r\n");
    const [answer] = await once(next, "data");
    expect(String(answer)).toContain("quick");
  });
});
