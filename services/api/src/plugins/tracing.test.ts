import { connect } from "node:net";
import { Writable } from "node:stream";
import type { FastifyInstance } from "fastify";
import { pino } from "pino";
import request from "supertest";
import { afterEach, describe, expect, it } from "vitest";
import { createApp } from "../app.js";
import { tracingOf } from "../config/environment/tracing.js";
import { defaultExposure } from "../config/exposure.js";
import { unhurried } from "../unhurried.test-support.js";
import { type Receiver, receive } from "./otlp-receiver.test-support.js";

let app: FastifyInstance;
let receiver: Receiver;
let logged: string[];
afterEach(async () => {
  await app.close();
  receiver.close();
});

async function start(more: Record<string, string> = {}, answers = 200): Promise<void> {
  receiver = await receive(answers);
  const tracing = tracingOf({ OTEL_EXPORTER_OTLP_ENDPOINT: receiver.endpoint, ...more });
  logged = [];
  const log = new Writable({
    write(line, _, done) {
      logged.push(String(line));
      done();
    },
  });
  const limits = { ...unhurried, costPerWindow: 6 };
  app = await createApp({ logger: pino({ base: null }, log), limits, exposure: defaultExposure, tracing });
  app.get("/test/breaks", () => {
    throw new Error("broken");
  });
  app.get("/test/takes-long", () => new Promise(() => {}));
  await app.listen({ host: "127.0.0.1", port: 0 });
}

const get = (path: string) => request(app.server).get(path);

// https://opentelemetry.io/docs/specs/semconv/http/http-spans/ (stable): names and attributes.
describe("the span of a request", () => {
  it("has route, method, path and status under their names, and is a server's", async () => {
    await start();
    await get("/v1/models?").expect(200);
    await get("/v1/attenuation?depth_m=secret").expect(400);
    await get("/made-up").expect(404);
    await get("/problems/invalid-scene").expect(200);
    await get("/test/breaks").expect(500);
    await get("/v1/models").expect(429);
    await app.close();
    const told = receiver.spans.map(({ name, kind, status, attributes }) => ({
      name,
      kind,
      status: status.code ?? 0,
      ...attributes,
    }));
    const span = (path: string, route: string | undefined, status: number) => ({
      name: route === undefined ? "GET" : `GET ${route}`,
      kind: 2,
      "http.request.method": "GET",
      "url.scheme": "http",
      "url.path": path,
      ...(route === undefined ? {} : { "http.route": route }),
      "http.response.status_code": status,
    });
    expect(told).toEqual([
      { ...span("/v1/models", "/v1/models", 200), status: 0 },
      { ...span("/v1/attenuation", "/v1/attenuation", 400), status: 0 },
      { ...span("/made-up", undefined, 404), status: 0 },
      { ...span("/problems/invalid-scene", "/problems/:name", 200), status: 0 },
      { ...span("/test/breaks", "/test/breaks", 500), status: 2, "error.type": "500" },
      { ...span("/v1/models", "/v1/models", 429), status: 0 },
    ]);
  });

  it("takes as long as the answer, and says who sent it", async () => {
    await start({
      OTEL_SERVICE_NAME: "advice",
      OTEL_RESOURCE_ATTRIBUTES: "deployment.environment.name=a%20b",
    });
    const before = Date.now();
    await request(app.server).post("/v1/attenuation").send({ water_type: "IB", depth_m: 5 }).expect(200);
    const after = Date.now();
    await app.close();
    const [span] = receiver.spans;
    const [from, to] = [Number(span?.startTimeUnixNano) / 1e6, Number(span?.endTimeUnixNano) / 1e6];
    expect(from).toBeGreaterThanOrEqual(before - 1);
    expect(to).toBeGreaterThan(from);
    expect(to).toBeLessThanOrEqual(after + 50);
    expect(span?.resource).toEqual({ "service.name": "advice", "deployment.environment.name": "a b" });
  });

  it("has a path no longer than one that leads somewhere", async () => {
    await start();
    await get(`/${"a".repeat(3000)}`).expect(404);
    await app.close();
    expect(receiver.spans[0]?.attributes["url.path"]).toHaveLength(256);
  });

  it("ends with the connection of a caller who does not wait", async () => {
    await start();
    const { port } = app.server.address() as { port: number };
    const socket = connect(port, "127.0.0.1", () =>
      socket.write("GET /test/takes-long HTTP/1.1\r\nHost: a\r\n\r\n"),
    );
    await new Promise((resolve) => setTimeout(resolve, 200));
    socket.destroy();
    await new Promise((resolve) => setTimeout(resolve, 200));
    await app.close();
    expect(receiver.spans[0]).toMatchObject({ status: { code: 2 }, attributes: { "error.type": "aborted" } });
  });

  it("ends so, too, where its answer still waited for another on the connection", async () => {
    await start();
    const { port } = app.server.address() as { port: number };
    const asked = ["/test/takes-long", "/v1/models"].map((path) => `GET ${path} HTTP/1.1\r\nHost: a\r\n\r\n`);
    const socket = connect(port, "127.0.0.1", () => socket.write(asked.join("")));
    await new Promise((resolve) => setTimeout(resolve, 200));
    socket.destroy();
    await new Promise((resolve) => setTimeout(resolve, 200));
    await app.close();
    const told = receiver.spans.map(({ name, attributes }) => [name, attributes["error.type"]]);
    expect(told).toEqual([
      ["GET /test/takes-long", "aborted"],
      ["GET /v1/models", "aborted"],
    ]);
  });
});

// https://www.w3.org/TR/trace-context/#traceparent-header: the examples of section 3.2.
describe("a trace", () => {
  const trace = "0af7651916cd43dd8448eb211c80319c";
  const span = "b7ad6b7169203331";

  it("is the one that the caller names, and goes on in the log", async () => {
    await start();
    await get("/v1/models").set("traceparent", `00-${trace}-${span}-01`).expect(200);
    await app.close();
    expect(receiver.spans).toHaveLength(1);
    expect(receiver.spans[0]).toMatchObject({ traceId: trace, parentSpanId: span });
    expect(receiver.spans[0]?.spanId).toMatch(/^(?!0{16}|b7ad6b7169203331)[0-9a-f]{16}$/);
    expect(logged.map((line) => JSON.parse(line))).toContainEqual(
      expect.objectContaining({ msg: "request", trace_id: trace }),
    );
  });

  it.each([
    ["that the caller does not keep", `00-${trace}-${span}-00`, {}, 0],
    ["begun here, of none", undefined, { OTEL_TRACES_SAMPLER: "parentbased_always_off" }, 0],
    ["that the caller keeps", `00-${trace}-${span}-01`, { OTEL_TRACES_SAMPLER: "parentbased_always_off" }, 1],
    ["in any case", `00-${trace}-${span}-00`, { OTEL_TRACES_SAMPLER: "always_on" }, 1],
    // The share is an argument of the samplers by ratio alone.
    [
      "in any case, whatever the share",
      undefined,
      { OTEL_TRACES_SAMPLER: "always_on", OTEL_TRACES_SAMPLER_ARG: "0" },
      1,
    ],
    [
      "begun here, whatever the share",
      undefined,
      { OTEL_TRACES_SAMPLER: "parentbased_always_on", OTEL_TRACES_SAMPLER_ARG: "0" },
      1,
    ],
    ["in no case", `00-${trace}-${span}-01`, { OTEL_TRACES_SAMPLER: "always_off" }, 0],
    [
      "of a share of none",
      undefined,
      { OTEL_TRACES_SAMPLER: "traceidratio", OTEL_TRACES_SAMPLER_ARG: "0" },
      0,
    ],
    [
      "of a share of all",
      undefined,
      { OTEL_TRACES_SAMPLER: "parentbased_traceidratio", OTEL_TRACES_SAMPLER_ARG: "1.0" },
      1,
    ],
  ] as const)("is sent or not, as is said: %s", async (_, parent, environment, count) => {
    await start(environment);
    const asked = get("/v1/models");
    await (parent === undefined ? asked : asked.set("traceparent", parent)).expect(200);
    await app.close();
    expect(receiver.spans).toHaveLength(count);
  });

  // Section 3.2.2: what is malformed is ignored, and a new trace begun.
  it.each([
    `00-${"0".repeat(32)}-${span}-01`,
    `00-${trace}-${"0".repeat(16)}-01`,
    `ff-${trace}-${span}-01`,
    `00-${trace.toUpperCase()}-${span}-01`,
    `00-${trace}-${span}-01-more`,
    "nonsense",
    "",
  ])("is a new one where the caller's is %j", async (parent) => {
    await start();
    await get("/v1/models").set("traceparent", parent).expect(200);
    await app.close();
    expect(receiver.spans[0]?.traceId).toMatch(/^[0-9a-f]{32}$/);
    expect(receiver.spans[0]?.traceId).not.toBe(trace);
    expect(receiver.spans[0]?.parentSpanId ?? "").toBe("");
  });
});

describe("a collector", () => {
  it("is spoken to in JSON, at its path and with its headers", async () => {
    await start({ OTEL_EXPORTER_OTLP_HEADERS: "x-tenant=shop%201,authorization=Basic%20abc" });
    await get("/v1/models").expect(200);
    await app.close();
    expect(receiver.requests).toHaveLength(1);
    expect(receiver.requests[0]).toMatchObject({
      url: "/v1/traces",
      headers: { "content-type": "application/json", "x-tenant": "shop 1", authorization: "Basic abc" },
    });
    expect(logged.join("")).not.toContain("traces");
  });

  it("that refuses costs a line of the log, and no answer", async () => {
    await start({}, 400);
    await get("/v1/models").expect(200);
    await app.close();
    expect(logged.map((line) => JSON.parse(line))).toContainEqual(
      expect.objectContaining({ level: 40, msg: "traces were not taken", spans: 1 }),
    );
  });

  it("that says nothing holds up the end no longer than three seconds", async () => {
    await start({}, 0);
    await get("/v1/models").expect(200);
    const asked = performance.now();
    await app.close();
    expect(receiver.spans).toHaveLength(1);
    expect(performance.now() - asked).toBeGreaterThan(2900);
    expect(performance.now() - asked).toBeLessThan(5000);
  });

  it("that is not there costs no answer either", async () => {
    await start();
    receiver.close();
    for (let round = 0; round < 3; round += 1) await get("/v1/models").expect(200);
    await app.close();
  });
});
