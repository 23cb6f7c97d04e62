// That each limit and each opening of the options reaches what keeps it. How each is kept is tested beside its own file.
import { once } from "node:events";
import { type AddressInfo, connect } from "node:net";
import { Writable } from "node:stream";
import type { FastifyBaseLogger, FastifyInstance, InjectOptions } from "fastify";
import { pino } from "pino";
import request from "supertest";
import { afterEach, describe, expect, it } from "vitest";
import { createApp } from "./app.js";
import { buildApp } from "./build-app.test-support.js";
import { tracingOf } from "./config/environment/tracing.js";
import { defaultExposure, type Exposure } from "./config/exposure.js";
import type { Limits } from "./config/limits.js";

let app: FastifyInstance;
afterEach(() => app.close());

async function start(limits: Partial<Limits> = {}, exposure: Partial<Exposure> = {}): Promise<void> {
  app = await buildApp({
    limits: { ...limits },
    exposure: { ...defaultExposure, ...exposure },
  });
}

/** The status and code of an answer, and whether it names its request. */
async function ask(options: InjectOptions | string) {
  const { statusCode, headers, body } = await app.inject(options);
  expect(headers["x-request-id"]).toMatch(/^[\w-]{8,}$/);
  return statusCode < 400 ? [statusCode] : [statusCode, JSON.parse(body).code];
}

const post = (payload: string) => ({
  method: "POST" as const,
  url: "/v1/attenuation",
  headers: { "content-type": "application/json" },
  payload,
});
const scene = '{"water_type":"IB","depth_m":5}';

describe("the sizes of a request", () => {
  it("are held to, up to the last byte", async () => {
    await start({ bodyBytes: scene.length });
    expect(await ask(post(scene))).toEqual([200]);
    expect(await ask(post(`${scene} `))).toEqual([413, "body_too_large"]);
  });

  it("hold for its URL, with the number in the problem", async () => {
    const url = "/v1/attenuation?water_type=IB&depth_m=5";
    await start({ urlCharacters: url.length });
    expect(await ask(url)).toEqual([200]);
    expect(await ask(`${url}0`)).toEqual([414, "url_too_long"]);
    const { detail } = (await app.inject(`${url}0`)).json();
    expect(detail).toMatch(new RegExp(`\\b${url.length}\\b`));
  });

  it("hold for its headers", async () => {
    await start({ headerBytes: 1000 });
    await app.listen({ host: "127.0.0.1", port: 0 });
    for (const [characters, status] of [
      [500, 200],
      [1000, 431],
    ] as const) {
      const socket = connect((app.server.address() as AddressInfo).port, "127.0.0.1");
      const padding = "a".repeat(characters);
      socket.write(`GET /v1/models HTTP/1.1\r\nHost: a\r\nConnection: close\r\nX-A: ${padding}\r\n\r\n`);
      const [first] = await once(socket, "data");
      expect(String(first)).toContain(`HTTP/1.1 ${status}`);
      socket.destroy();
    }
  });
});

// What Node.js calls them: https://nodejs.org/api/http.html#class-httpserver
it("the times and the number of connections are the server's", async () => {
  await start({
    headersTimeout_ms: 1001,
    requestTimeout_ms: 1002,
    connectionTimeout_ms: 1003,
    keepAliveTimeout_ms: 1004,
    connections: 1005,
  });
  const { headersTimeout, requestTimeout, timeout, keepAliveTimeout, maxConnections } = app.server;
  expect([headersTimeout, requestTimeout, timeout, keepAliveTimeout, maxConnections]).toEqual([
    1001, 1002, 1003, 1004, 1005,
  ]);
});

it("a request that does not arrive is looked after as often as is said, and answered with 408", async () => {
  await start({ headersTimeout_ms: 50, requestTimeout_ms: 60, timeoutCheck_ms: 20 });
  await app.listen({ host: "127.0.0.1", port: 0 });
  const socket = connect((app.server.address() as AddressInfo).port, "127.0.0.1");
  socket.write("GET /v1/models HTTP/1.1\r\n");
  const [first] = await once(socket, "data");
  expect(String(first)).toMatch(/^HTTP\/1\.1 408 /);
  socket.destroy();
});

it("a handler that takes too long is not waited for", async () => {
  await start({ handlerTimeout_ms: 40 });
  app.get("/test/takes-long", () => new Promise(() => {}));
  expect(await ask("/test/takes-long")).toEqual([503, "unavailable"]);
});

it("an escape that cannot be decoded is a problem like any other", async () => {
  await start();
  expect(await ask("/problems/%zz")).toEqual([400, "malformed_request"]);
});

describe("schemas", () => {
  it("only describe: neither what comes in nor what goes out is changed or refused by them", async () => {
    await start();
    const schema = {
      body: { type: "object", required: ["a"], properties: { a: { type: "number" } } },
      response: { 200: { type: "object", properties: { a: { type: "number" } } } },
    };
    app.post("/test/echo", { schema }, ({ body }) => ({ body, a: "text" }));
    const { statusCode, body } = await app.inject({ ...post('{"a":"1"}'), url: "/test/echo" });
    expect([statusCode, JSON.parse(body)]).toEqual([200, { body: { a: "1" }, a: "text" }]);
    expect((await app.inject({ ...post("{}"), url: "/test/echo" })).statusCode).toBe(200);
  });

  it("of the contract are known to every route", async () => {
    await start();
    expect(app.getSchema("Scene")).toBeDefined();
  });
});

it("a query is read by nobody but those who take one", async () => {
  await start();
  app.get("/test/query", ({ query }) => ({ query }));
  expect((await app.inject("/test/query?a=1&a=2")).json()).toEqual({ query: {} });
});

it("what is wrong with a body does not hide that nobody takes it", async () => {
  await start();
  const malformed = { ...post("{"), method: "PUT" as const };
  expect(await ask(malformed)).toEqual([405, "method_not_allowed"]);
  expect(await ask({ ...malformed, url: "/v1/nowhere" })).toEqual([404, "not_found"]);
});

describe("callers behind a proxy", () => {
  const from = (forwarded: string, proxy = "10.0.0.1") =>
    ask({ url: "/v1/models", remoteAddress: proxy, headers: { "x-forwarded-for": forwarded } });

  it("are told apart where the proxy is trusted", async () => {
    await start({ costPerWindow: 1 }, { trustedProxies: ["10.0.0.1"] });
    expect(await from("192.0.2.1")).toEqual([200]);
    expect(await from("192.0.2.2")).toEqual([200]);
    expect(await from("192.0.2.1")).toEqual([429, "too_many_requests"]);
    // Another proxy is believed nothing.
    expect(await from("192.0.2.3", "10.0.0.2")).toEqual([200]);
    expect(await from("192.0.2.4", "10.0.0.2")).toEqual([429, "too_many_requests"]);
  });

  it("are one caller where no proxy is trusted", async () => {
    await start({ costPerWindow: 1 });
    expect(await from("192.0.2.1")).toEqual([200]);
    expect(await from("192.0.2.2")).toEqual([429, "too_many_requests"]);
  });
});

describe("an answer", () => {
  it("is kept up to as many bytes as is said", async () => {
    for (const [answerCacheBytes, hits] of [
      [0, 0],
      [1e6, 1],
    ] as const) {
      await start({ answerCacheBytes });
      for (let round = 0; round < 2; round += 1) expect(await ask(post(scene))).toEqual([200]);
      const body = await app.metrics?.metrics();
      expect(body).toContain(`answer_cache_lookups_total{outcome="hit"} ${hits}`);
      await app.close();
    }
  });

  it("comes to pages of other origins, and the service counts, where that is said", async () => {
    await start({}, { corsOrigins: "*", metricsAt: undefined });
    const { headers } = await app.inject({ url: "/v1/models", headers: { origin: "https://a.example" } });
    expect(headers["access-control-allow-origin"]).toBe("*");
    expect(headers["x-content-type-options"]).toBe("nosniff");
    expect(app.metrics).toBeUndefined();
    expect(await ask("/metrics")).toEqual([404, "not_found"]);
  });

  it("of another form than is accepted is none", async () => {
    await start();
    expect(await ask({ url: "/v1/models", headers: { accept: "text/csv" } })).toEqual([
      406,
      "not_acceptable",
    ]);
  });

  it("that fails says nothing of the inside", async () => {
    await start();
    app.get("/test/breaks", () => {
      throw new Error("secret");
    });
    expect(await ask("/test/breaks")).toEqual([500, "internal_error"]);
  });
});

describe("the log", () => {
  it("has one line a request, in the trace where there are traces", async () => {
    const lines: string[] = [];
    const stream = new Writable({
      write(line, _, done) {
        lines.push(String(line));
        done();
      },
    });
    for (const endpoint of ["", "http://127.0.0.1:9"]) {
      const logger: FastifyBaseLogger = pino({ base: null }, stream);
      const tracing = tracingOf({ OTEL_EXPORTER_OTLP_ENDPOINT: endpoint, OTEL_TRACES_SAMPLER: "always_off" });
      app = await createApp({ logger, tracing });
      await app.ready();
      lines.length = 0;
      await request(app.server).get("/v1/models").expect(200);
      await app.close();
      const said = lines.map((line) => JSON.parse(line));
      expect(said).toMatchObject([{ msg: "request", route: "/v1/models", status: 200 }]);
      expect("trace_id" in said[0]).toBe(endpoint !== "");
    }
  });
});
