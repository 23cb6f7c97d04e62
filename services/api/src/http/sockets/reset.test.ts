// Callers that send and reset their connections at once: when such a connection is taken, it has no address any more.
import { type AddressInfo, connect } from "node:net";
import { Writable } from "node:stream";
import { pino } from "pino";
import request from "supertest";
import { afterEach, expect, it } from "vitest";
import type { createApp } from "../../app.js";
import { buildApp } from "../../build-app.test-support.js";

let app: Awaited<ReturnType<typeof createApp>> | undefined;
afterEach(() => app?.close());

it.each(["/health/live", "/v1/models", "/nowhere"])(
  "%s asked for on connections that are reset at once fails nowhere",
  async (path) => {
    const failed: string[] = [];
    const stream = new Writable({
      write(line, _, done) {
        failed.push(String(line));
        done();
      },
    });
    app = await buildApp({ logger: pino({ base: null, level: "error" }, stream) });
    await app.listen({ host: "127.0.0.1", port: 0 });
    const { port } = app.server.address() as AddressInfo;
    const gone = Array.from(
      { length: 100 },
      () =>
        new Promise((resolve) => {
          const socket = connect(port, "127.0.0.1", () => {
            socket.write(`GET ${path} HTTP/1.1\r\nHost: a\r\n\r\n`, () => socket.resetAndDestroy());
          });
          socket.on("error", () => {}).on("close", resolve);
        }),
    );
    await Promise.all(gone);
    // Whoever comes behind them is answered when they have been.
    await request(`http://127.0.0.1:${port}`).get("/health/live").expect(200);
    expect(failed).toEqual([]);
  },
);
