import type { FastifyInstance } from "fastify";
import request from "supertest";
import { afterEach, describe, expect, it } from "vitest";
import { createApp } from "../app.js";
import { buildApp } from "../build-app.test-support.js";
import { defaultExposure, type Exposure } from "../config/exposure.js";
import { unhurried } from "../unhurried.test-support.js";

let app: FastifyInstance;
afterEach(() => app.close());

async function start(exposure: Partial<Exposure> = {}): Promise<void> {
  app = await buildApp({ exposure: { ...defaultExposure, ...exposure } });
  await app.ready();
}

const namesIn = (header: unknown): string[] => String(header).toLowerCase().split(/,\s*/);

// The protocol: https://fetch.spec.whatwg.org/#http-cors-protocol
describe("pages of other origins", () => {
  const ask = (origin: string) => request(app.server).get("/v1/models").set("Origin", origin);
  const preflight = (origin: string) =>
    request(app.server)
      .options("/v1/attenuation")
      .set("Origin", origin)
      .set("Access-Control-Request-Method", "POST")
      .set("Access-Control-Request-Headers", "content-type");

  it("get nothing unless they are named", async () => {
    await start();
    const { headers } = await ask("https://shop.example").expect(200);
    expect(headers).not.toHaveProperty("access-control-allow-origin");
    const asked = await preflight("https://shop.example").expect(204);
    expect(Object.keys(asked.headers).filter((name) => name.startsWith("access-control"))).toEqual([]);
  });

  it("read answers where they are named, and others do not", async () => {
    await start({ corsOrigins: ["https://shop.example", "https://course.example"] });
    const { headers } = await ask("https://shop.example").expect(200);
    expect(headers["access-control-allow-origin"]).toBe("https://shop.example");
    expect(headers["vary"]).toMatch(/Origin/i);
    expect(headers).not.toHaveProperty("access-control-allow-credentials");
    const asked = await preflight("https://course.example").expect(204);
    expect(asked.headers["access-control-allow-methods"]).toBe("GET, HEAD, POST, QUERY");
    expect(asked.headers["access-control-allow-headers"]).toContain("Content-Type");
    for (const other of ["https://shop.example.evil.example", "http://shop.example", "null"]) {
      expect((await ask(other)).headers).not.toHaveProperty("access-control-allow-origin");
      expect((await preflight(other)).headers).not.toHaveProperty("access-control-allow-origin");
    }
  });

  // What the client sends beyond the safelist of the protocol, and reads of an answer beside its body.
  it.each([
    "authorization",
    "content-type",
    "if-none-match",
    "x-request-id",
    // https://www.w3.org/TR/trace-context/
    "traceparent",
    "tracestate",
  ])("may send %s", async (name) => {
    await start({ corsOrigins: "*" });
    const asked = await preflight("https://shop.example")
      .set("Access-Control-Request-Headers", name)
      .expect(204);
    expect(namesIn(asked.headers["access-control-allow-headers"])).toContain(name);
  });

  it.each([
    ["an answer", "/v1/models", {}, 200],
    ["an answer that still holds", "/v1/models", { "If-None-Match": "*" }, 304],
    ["a problem", "/v1/attenuation", {}, 400],
    ["a refusal for the rate", "/v1/models", {}, 429],
  ] as const)("read tag, request id and limits of %s", async (_what, path, headers, status) => {
    const limits = status === 429 ? { ...unhurried, costPerWindow: 1 } : unhurried;
    app = await createApp({ limits, exposure: { ...defaultExposure, corsOrigins: "*" } });
    await app.ready();
    const asked = () => request(app.server).get(path).set("Origin", "https://shop.example").set(headers);
    if (status === 429) await asked();
    const answer = await asked().expect(status);
    // All of them, for requests without credentials (https://fetch.spec.whatwg.org/#cors-exposed-header-name).
    expect(answer.headers["access-control-expose-headers"]).toBe("*");
    expect(answer.headers).not.toHaveProperty("access-control-allow-credentials");
    const told = ["ratelimit", "ratelimit-policy", "x-request-id"];
    for (const name of status === 429 ? [...told, "retry-after"] : told)
      expect(answer.headers).toHaveProperty(name);
  });

  it("are told that a path is not there by the request itself, not before it", async () => {
    await start({ corsOrigins: "*" });
    const asked = request(app.server).options("/v1/nowhere").set("Origin", "https://shop.example");
    await asked.set("Access-Control-Request-Method", "GET").expect(204);
    await request(app.server).options("/v1/nowhere").set("Origin", "https://shop.example").expect(404);
  });

  it("read problems, too", async () => {
    await start({ corsOrigins: "*" });
    const { headers } = await request(app.server).get("/v1/attenuation").set("Origin", "https://any.example");
    expect(headers["access-control-allow-origin"]).toBe("*");
  });

  it("do not change which methods there are", async () => {
    await start({ corsOrigins: "*" });
    const { headers } = await request(app.server).delete("/v1/models").expect(405);
    expect(headers["allow"]).toBe("GET, HEAD, OPTIONS");
  });
});
