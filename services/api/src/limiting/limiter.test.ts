import type { FastifyInstance } from "fastify";
import request from "supertest";
import { afterEach, describe, expect, it, vi } from "vitest";
import { buildApp } from "../build-app.test-support.js";
import { defaultExposure } from "../config/exposure.js";

let app: FastifyInstance;
afterEach(() => app.close());

async function start(limits: object, exposure: object = {}): Promise<void> {
  app = await buildApp({
    limits: { ...limits },
    exposure: { ...defaultExposure, ...exposure },
  });
  await app.ready();
}

const get = (path: string) => request(app.server).get(path);

describe("the limit on requests", () => {
  // draft-ietf-httpapi-ratelimit-headers-10, section 3 and 4: a policy with its quota and window in seconds; what is left
  // and for how long. Both are Structured Fields (RFC 9651): a quoted name with parameters.
  it("says on each answer what is left, takes the last request and refuses the one past it", async () => {
    await start({ costPerWindow: 3, window_s: 60 });
    for (const left of [2, 1, 0]) {
      const { headers } = await get("/v1/models").expect(200);
      expect(headers["ratelimit-policy"]).toBe('"default";q=3;w=60');
      // A third of the budget comes back in a third of the window.
      expect(headers["ratelimit"]).toBe(`"default";r=${left};t=${60 - 20 * left}`);
    }
    const { headers, body } = await get("/v1/models").expect(429);
    expect(headers["ratelimit-policy"]).toBe('"default";q=3;w=60');
    expect(headers["ratelimit"]).toMatch(/^"default";r=0;t=(60|59)$/);
    // RFC 9110, section 10.2.3: seconds.
    expect(headers["retry-after"]).toMatch(/^(20|19)$/);
    expect(headers["content-type"]).toBe("application/problem+json; charset=utf-8");
    expect(body).toMatchObject({ type: "/problems/too-many-requests", status: 429 });
  });

  it("counts what is refused, too: problems, unknown paths and methods", async () => {
    await start({ costPerWindow: 4 });
    // With its error.
    await get("/v1/attenuation").expect(400);
    await get("/v1/unheard-of").expect(404);
    await request(app.server).delete("/v1/models").expect(405);
    await get("/v1/models").expect(429);
  });

  it("holds everywhere but where the process is watched", async () => {
    await start({ costPerWindow: 1 });
    await get("/v1/models").expect(200);
    for (const path of ["/v1/models", "/metrics", "/healthy"]) await get(path).expect(429);
    for (const path of ["/health/live", "/health/ready"]) {
      const { headers } = await get(path).expect(200);
      expect(headers).not.toHaveProperty("ratelimit");
    }
  });

  it.each<[string, () => request.Test, number]>([
    ["a URL that is too long", () => get(`/v1/models?${"a".repeat(5000)}`), 414],
    ["a body of another kind", () => request(app.server).post("/v1/attenuation").type("text").send("a"), 415],
    ["a path that is not there", () => get("/nowhere"), 404],
  ])("counts %s", async (_, ask, status) => {
    await start({ costPerWindow: 2 });
    await ask().expect(status);
    await ask().expect(status);
    const { headers, body } = await get("/nowhere").expect(429);
    expect(headers).toMatchObject({ "retry-after": "30", "x-request-id": body.request_id });
  });

  it("holds for long heads wherever they are sent", async () => {
    await start({ costPerWindow: 14 });
    const long = { "Accept-Language": "de-CH;q=0.5,".repeat(1000) };
    await get("/health/live").set(long).expect(200);
    await get("/health/ready").set(long).expect(200);
    await get("/health/live").set(long).expect(429);
    await get("/health/live").expect(200);
  });

  it("counts the size of headers that are longer than any client's", async () => {
    await start({ costPerWindow: 1000, window_s: 86_400 });
    const left = (headers: Record<string, string>) => Number(/r=(\d+)/.exec(headers["ratelimit"] ?? "")?.[1]);
    const { headers } = await get("/v1/models").set("Accept-Language", "de-CH;q=0.5,".repeat(1000));
    expect(left(headers)).toBe(1000 - 1 - 5);
    const { headers: after } = await get("/v1/models").set("Accept-Language", "de-CH, de;q=0.9, *;q=0.5");
    expect(left(after)).toBe(1000 - 1 - 5 - 1);
  });

  it("counts the size of a body, and the largest where it is not said beforehand", async () => {
    await start({ costPerWindow: 1000, window_s: 86_400 });
    const post = () => request(app.server).post("/v1/attenuation").type("json");
    const left = (headers: Record<string, string>) => Number(/r=(\d+)/.exec(headers["ratelimit"] ?? "")?.[1]);
    const { headers } = await post().send(" ".repeat(10 * 2048));
    expect(left(headers)).toBe(1000 - 11);
    const chunked = post().set("Transfer-Encoding", "chunked");
    chunked.write("{}");
    const { headers: after } = await chunked;
    // With the error that it has.
    expect(left(after)).toBe(1000 - 11 - 129 - 1);
  });

  it("has a budget of its own for the documentation", async () => {
    await start({ costPerWindow: 1, documentationPerWindow: 4 });
    await get("/v1/models").expect(200);
    await get("/v1/models").expect(429);
    for (const [left, path] of ["/docs/static/pages.css", "/docs", "/openapi.json"].entries()) {
      const { headers } = await get(path).expect(200);
      expect(headers["ratelimit-policy"]).toBe('"documentation";q=4;w=60');
      expect(headers["ratelimit"]).toMatch(new RegExp(`^"documentation";r=${3 - left};`));
    }
    await get("/").expect(302);
    await get("/docs").expect(429);
  });

  // They are routed nowhere, and so where the documentation is.
  it("counts escapes that cannot be decoded against the documentation's budget", async () => {
    await start({ costPerWindow: 1, documentationPerWindow: 2 });
    for (const left of [1, 0]) {
      const { headers, body } = await get("/problems/%zz").expect(400);
      expect(headers["ratelimit"]).toMatch(new RegExp(`^"documentation";r=${left};`));
      expect(body.code).toBe("malformed_request");
    }
    await get("/v1/%e4%zz").expect(429);
    await get("/v1/models").expect(200);
  });

  it("counts what it costs to find and tell many errors", async () => {
    await start({ costPerWindow: 1000, window_s: 86_400 });
    const left = (headers: Record<string, string>) => Number(/r=(\d+)/.exec(headers["ratelimit"] ?? "")?.[1]);
    const wrong = (count: number) =>
      Object.fromEntries(Array.from({ length: count }, (_, n) => [`stranger${n}`, n]));
    const { headers: one } = await get("/v1/attenuation?water_type=IB&depth_m=5&x=1").expect(400);
    expect(left(one)).toBe(1000 - 2);
    const { headers: many } = await request(app.server).post("/v1/attenuation").send(wrong(60)).expect(400);
    expect(left(many)).toBe(1000 - 2 - 18);
    const { headers: quiz } = await request(app.server).post("/v1/quiz-items").send(wrong(60)).expect(400);
    expect(left(quiz)).toBe(1000 - 2 - 18 - 18);
    const names = Array.from({ length: 60 }, (_, n) => `stranger${n}`).join();
    const { headers: fields } = await get(`/v1/attenuation?water_type=IB&depth_m=5&fields=${names}`).expect(
      400,
    );
    expect(left(fields)).toBe(1000 - 2 - 18 - 18 - 18);
    const looks = Array.from({ length: 60 }, (_, n) => `forma%C3%${(0x80 + n).toString(16)}=svg`).join("&");
    const { headers: look } = await get(`/v1/pictures/red-in-post?${looks}`).expect(400);
    expect(left(look)).toBe(1000 - 2 - 18 - 18 - 18 - 18);
  });

  it("does not heed the clock on the wall", async () => {
    await start({ costPerWindow: 1, window_s: 1 });
    await get("/v1/models").expect(200);
    const { headers } = await get("/v1/models").expect(429);
    const hourBack = vi.spyOn(Date, "now").mockReturnValue(Date.now() - 3_600_000);
    await new Promise((resolve) => setTimeout(resolve, Number(headers["retry-after"]) * 1000));
    await get("/v1/models").expect(200);
    hourBack.mockRestore();
  });

  it("ends with its window", async () => {
    await start({ costPerWindow: 1, window_s: 1 });
    await get("/v1/models").expect(200);
    const { headers } = await get("/v1/models").expect(429);
    await new Promise((resolve) => setTimeout(resolve, Number(headers["retry-after"]) * 1000));
    await get("/v1/models").expect(200);
  });

  it("can be switched off", async () => {
    await start({ costPerWindow: 0 });
    const { headers } = await get("/v1/models").expect(200);
    expect(headers).not.toHaveProperty("ratelimit");
  });
});

describe("an IPv6 site", () => {
  const from = (group: string) => get("/v1/models").set("X-Forwarded-For", `2001:db8:${group}::1`);

  it("has as much as four of its clients, however many networks it sends from", async () => {
    await start({ costPerWindow: 2, window_s: 86_400 }, { trustedProxies: ["loopback"] });
    for (let network = 0; network < 8; network += 1) await from(`1:${network.toString(16)}`).expect(200);
    const { headers } = await from("1:ff").expect(429);
    expect(headers["ratelimit"]).toMatch(/r=0;/);
    expect(Number(headers["retry-after"])).toBeGreaterThan(3600);
    await from("2:1").expect(200);
    await get("/v1/models").set("X-Forwarded-For", "203.0.113.1").expect(200);
  });
});

describe("a forwarded request", () => {
  const from = (client: string) => get("/v1/models").set("X-Forwarded-For", client);

  it("is counted as its sender's, whatever it claims, unless the sender is a trusted proxy", async () => {
    await start({ costPerWindow: 1 });
    await from("203.0.113.1").expect(200);
    await from("203.0.113.2").expect(429);
  });

  it("is counted as the client's whom a trusted proxy names", async () => {
    await start({ costPerWindow: 1 }, { trustedProxies: ["loopback"] });
    await from("203.0.113.1").expect(200);
    await from("203.0.113.2").expect(200);
    // What stands before the address that the proxy added is the client's own claim.
    await from("198.51.100.7, 203.0.113.1").expect(429);
    // Nor does a port make another client, or text that is no address more than one.
    await from("203.0.113.1:4711").expect(429);
    await from("[2001:db8::1]:80").expect(200);
    await from("2001:db8::2").expect(429);
    await from("unknown").expect(200);
    await from("made up").expect(429);
  });
});
