import type { FastifyInstance } from "fastify";
import request from "supertest";
import { afterEach, describe, expect, it } from "vitest";
import { createApp } from "../app.js";
import { defaultExposure, type Exposure } from "../exposure.js";
import { unhurried } from "../unhurried.test-support.js";

let app: FastifyInstance;
afterEach(() => app.close());

async function start(exposure: Partial<Exposure> = {}): Promise<void> {
  app = await createApp(undefined, unhurried, { ...defaultExposure, ...exposure });
  await app.ready();
}

describe("every answer", () => {
  it.each(["/v1/models", "/v1/attenuation", "/v1/unheard-of", "/health/live", "/openapi.json"])(
    "of %s tells browsers to make nothing of it but data",
    async (path) => {
      await start();
      const { headers } = await request(app.server).get(path);
      // Content Security Policy Level 3, section 6.1.3 and 6.4.2.
      expect(headers["content-security-policy"]).toBe("default-src 'none';frame-ancestors 'none'");
      expect(headers["x-content-type-options"]).toBe("nosniff");
      expect(headers["referrer-policy"]).toBe("no-referrer");
      expect(headers).not.toHaveProperty("x-powered-by");
      expect(headers).not.toHaveProperty("server");
      expect(headers).not.toHaveProperty("strict-transport-security");
    },
  );
});

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
    await preflight("https://shop.example").expect(405);
  });

  it("read answers where they are named, and others do not", async () => {
    await start({ corsOrigins: ["https://shop.example", "https://course.example"] });
    const { headers } = await ask("https://shop.example").expect(200);
    expect(headers["access-control-allow-origin"]).toBe("https://shop.example");
    expect(headers["vary"]).toMatch(/Origin/i);
    expect(headers["access-control-expose-headers"]).toContain("ETag");
    expect(headers).not.toHaveProperty("access-control-allow-credentials");
    const asked = await preflight("https://course.example").expect(204);
    expect(asked.headers["access-control-allow-methods"]).toBe("GET, HEAD, POST");
    expect(asked.headers["access-control-allow-headers"]).toContain("Content-Type");
    for (const other of ["https://shop.example.evil.example", "http://shop.example", "null"]) {
      expect((await ask(other)).headers).not.toHaveProperty("access-control-allow-origin");
      expect((await preflight(other)).headers).not.toHaveProperty("access-control-allow-origin");
    }
  });

  it("read problems, too", async () => {
    await start({ corsOrigins: "*" });
    const { headers } = await request(app.server).get("/v1/attenuation").set("Origin", "https://any.example");
    expect(headers["access-control-allow-origin"]).toBe("*");
  });

  it("do not change which methods there are", async () => {
    await start({ corsOrigins: "*" });
    const { headers } = await request(app.server).delete("/v1/models").expect(405);
    expect(headers["allow"]).toBe("GET, HEAD");
  });
});
