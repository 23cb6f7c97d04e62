import type { FastifyInstance } from "fastify";
import request from "supertest";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildApp } from "../../build-app.test-support.js";

let app: FastifyInstance;
beforeAll(async () => {
  app = await buildApp();
  await app.ready();
});
afterAll(() => app.close());

/** 12 bytes in base64url (RFC 4648, section 5). */
const ours = /^[\w-]{16}$/;

describe("the id of a request", () => {
  it("is the caller's where it is a short plain token", async () => {
    const response = await request(app.server).get("/health/live").set("X-Request-Id", "booking-42.a_b");
    expect(response.headers["x-request-id"]).toBe("booking-42.a_b");
  });

  it.each(["a b", "a".repeat(65), '{"a":1}', "a;b", "ä"])("is a new one in place of %j", async (id) => {
    const response = await app.inject({ url: "/health/live", headers: { "x-request-id": id } });
    expect(response.headers["x-request-id"]).toMatch(ours);
  });

  it("is another one for each request", async () => {
    const ids = await Promise.all(
      [1, 2, 3].map(async () => (await request(app.server).get("/nowhere")).headers["x-request-id"]),
    );
    expect(new Set(ids).size).toBe(3);
  });
});
