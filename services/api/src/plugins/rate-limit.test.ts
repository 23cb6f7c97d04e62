import type { FastifyInstance } from "fastify";
import request from "supertest";
import { afterEach, describe, expect, it } from "vitest";
import { createApp } from "../app.js";
import { defaultExposure } from "../exposure.js";
import { unhurried } from "../unhurried.test-support.js";

let app: FastifyInstance;
afterEach(() => app.close());

async function start(limits: object, exposure: object = {}): Promise<void> {
  app = await createApp({
    limits: { ...unhurried, ...limits },
    exposure: { ...defaultExposure, ...exposure },
  });
  await app.ready();
}

const get = (path: string) => request(app.server).get(path);

describe("the limit on requests", () => {
  // draft-ietf-httpapi-ratelimit-headers-10, section 3 and 4: a policy with its quota and window in seconds; what is left
  // and for how long. Both are Structured Fields (RFC 9651): a quoted name with parameters.
  it("says on each answer what is left, takes the last request and refuses the one past it", async () => {
    await start({ requestsPerWindow: 3, window_s: 60 });
    for (const left of [2, 1, 0]) {
      const { headers } = await get("/v1/models").expect(200);
      expect(headers["ratelimit-policy"]).toBe('"default";q=3;w=60');
      expect(headers["ratelimit"]).toMatch(new RegExp(`^"default";r=${left};t=(60|59)$`));
    }
    const { headers, body } = await get("/v1/models").expect(429);
    expect(headers["ratelimit-policy"]).toBe('"default";q=3;w=60');
    expect(headers["ratelimit"]).toMatch(/^"default";r=0;t=(60|59)$/);
    // RFC 9110, section 10.2.3: seconds.
    expect(headers["retry-after"]).toMatch(/^(60|59)$/);
    expect(headers["content-type"]).toBe("application/problem+json; charset=utf-8");
    expect(body).toMatchObject({ type: "/problems/too-many-requests", status: 429 });
  });

  it("counts what is refused, too: problems, unknown paths and methods", async () => {
    await start({ requestsPerWindow: 3 });
    await get("/v1/attenuation").expect(400);
    await get("/v1/unheard-of").expect(404);
    await request(app.server).delete("/v1/models").expect(405);
    await get("/v1/models").expect(429);
  });

  it("does not hold where the service is watched and explained", async () => {
    await start({ requestsPerWindow: 1 });
    await get("/v1/models").expect(200);
    await get("/v1/models").expect(429);
    for (const path of ["/health/live", "/health/ready", "/metrics", "/openapi.json", "/docs", "/docs/"]) {
      const { headers } = await get(path).expect(200);
      expect(headers).not.toHaveProperty("ratelimit");
    }
    await get("/documents").expect(429);
  });

  it("ends with its window", async () => {
    await start({ requestsPerWindow: 1, window_s: 1 });
    await get("/v1/models").expect(200);
    const { headers } = await get("/v1/models").expect(429);
    await new Promise((resolve) => setTimeout(resolve, Number(headers["retry-after"]) * 1000));
    await get("/v1/models").expect(200);
  });

  it("can be switched off", async () => {
    await start({ requestsPerWindow: 0 });
    const { headers } = await get("/v1/models").expect(200);
    expect(headers).not.toHaveProperty("ratelimit");
  });
});

describe("a forwarded request", () => {
  const from = (client: string) => get("/v1/models").set("X-Forwarded-For", client);

  it("is counted as its sender's, whatever it claims, unless the sender is a trusted proxy", async () => {
    await start({ requestsPerWindow: 1 });
    await from("203.0.113.1").expect(200);
    await from("203.0.113.2").expect(429);
  });

  it("is counted as the client's whom a trusted proxy names", async () => {
    await start({ requestsPerWindow: 1 }, { trustedProxies: ["loopback"] });
    await from("203.0.113.1").expect(200);
    await from("203.0.113.2").expect(200);
    // What stands before the address that the proxy added is the client's own claim.
    await from("198.51.100.7, 203.0.113.1").expect(429);
  });
});
