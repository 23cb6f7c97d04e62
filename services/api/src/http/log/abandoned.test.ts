import { once } from "node:events";
import { createServer } from "node:http";
import { type AddressInfo, connect } from "node:net";
import { Writable } from "node:stream";
import Fastify, { type FastifyBaseLogger } from "fastify";
import { pino } from "pino";
import { expect, it } from "vitest";
import { eventually } from "../../eventually.test-support.js";
import { limitPipelines } from "../sockets/pipelines.js";
import { logAbandoned } from "./abandoned.js";
import { LineShare } from "./line-share.js";
import { OneLineLog } from "./log-controller.js";

const share = new LineShare({ cost: 0, window_s: 1 }, undefined);
const peerOf = () => ({ client: "a", site: "a", isProxy: false });

/** A service whose answers to `/slow/…` come never, and what it logs. */
async function start() {
  const lines: Record<string, unknown>[] = [];
  const stream = new Writable({
    write(line, _, done) {
      lines.push(JSON.parse(String(line)));
      done();
    },
  });
  const logger: FastifyBaseLogger = pino({ base: null }, stream);
  const app = Fastify({
    loggerInstance: logger,
    logController: new OneLineLog(share),
    serverFactory: (handler) =>
      createServer(
        limitPipelines(handler, { ofConnection: 16, ofAddress: 1000, peerOf, onTooMany: () => {} }),
      ),
  });
  logAbandoned(app, share);
  app.get("/slow/:name", () => new Promise(() => {}));
  app.get("/quick", () => "all of it");
  await app.listen({ host: "127.0.0.1", port: 0 });
  const { port } = app.server.address() as AddressInfo;
  lines.length = 0;
  return { app, lines, port };
}

const ask = (path: string) => `GET ${path} HTTP/1.1\r\nHost: a\r\n\r\n`;

it("a request whose caller hangs up has its line, with its route and not its path", async () => {
  const { app, lines, port } = await start();
  const started = performance.now();
  const socket = connect(port, "127.0.0.1", () => socket.write(ask("/slow/secret")));
  await once(app.server, "request");
  await new Promise((resolve) => setTimeout(resolve, 50));
  socket.destroy();
  await eventually(() => expect(lines).toHaveLength(1));
  const most_ms = performance.now() - started;
  expect(lines).toMatchObject([
    { level: 30, method: "GET", route: "/slow/:name", msg: expect.stringContaining("closed before") },
  ]);
  expect(JSON.stringify(lines)).not.toContain("secret");
  // In milliseconds, to a tenth; from the head of the request on.
  const ms = Number(lines[0]?.["ms"]);
  expect(ms).toBeGreaterThan(40);
  expect(ms).toBeLessThan(most_ms);
  const tenths = ms * 10;
  expect(tenths).toBeCloseTo(Math.round(tenths), 6);
  await app.close();
});

it("a request that was answered has no such line, whether its connection goes on or ends", async () => {
  const { app, lines, port } = await start();
  const socket = connect(port, "127.0.0.1", () => socket.write(ask("/quick")));
  await once(socket, "data");
  socket.end();
  await once(socket, "close");
  await app.close();
  expect(lines.map(({ msg }) => msg)).toEqual(["request"]);
});

// RFC 9112, section 9.3.2: a client may send its next requests before the answer to its first.
it("requests that were sent behind another, and wait for it, have a line each when their caller hangs up", async () => {
  const { app, lines, port } = await start();
  const warned: string[] = [];
  const warn = ({ message }: Error) => warned.push(message);
  process.on("warning", warn);
  const behind = 15;
  const answered = new Promise<void>((resolve) => {
    let count = 0;
    app.server.on("request", () => {
      count += 1;
      if (count === behind + 1) setImmediate(resolve);
    });
  });
  const socket = connect(port, "127.0.0.1", () =>
    socket.write(ask("/slow/first") + ask("/quick").repeat(behind - 1) + ask("/made/up")),
  );
  await answered;
  socket.destroy();
  await eventually(() => expect(lines).toHaveLength(behind + 1));
  await app.close();
  process.off("warning", warn);
  // Of a path that leads nowhere not even the path.
  const routes = ["/slow/:name", ...Array(behind - 1).fill("/quick"), "none"];
  expect(lines.map(({ route }) => route)).toEqual(routes);
  expect(new Set(lines.map(({ request_id }) => request_id)).size).toBe(behind + 1);
  expect(lines.filter(({ msg }) => !String(msg).startsWith("connection closed"))).toEqual([]);
  // So many listeners to one connection would look like a leak.
  expect(warned).toEqual([]);
});

it("requests that were sent behind another, and answered, have no such line when their caller hangs up", async () => {
  const { app, lines, port } = await start();
  const socket = connect(port, "127.0.0.1", () => socket.write(ask("/quick").repeat(3)));
  await eventually(() => expect(lines).toHaveLength(3));
  socket.destroy();
  await once(socket, "close");
  await app.close();
  expect(lines.map(({ msg }) => msg)).toEqual(["request", "request", "request"]);
});
