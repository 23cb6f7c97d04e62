import type { FastifyInstance } from "fastify";
import request from "supertest";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { createApp } from "../app.js";
import { unhurried } from "../unhurried.test-support.js";

let app: FastifyInstance;
beforeAll(async () => {
  app = await createApp({ limits: unhurried });
  await app.ready();
});
afterAll(() => app.close());

const uuid = /^[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/;

describe("the id of a request", () => {
  it("is the caller's where it is a short plain token", async () => {
    const response = await request(app.server).get("/health/live").set("X-Request-Id", "booking-42.a_b");
    expect(response.headers["x-request-id"]).toBe("booking-42.a_b");
  });

  it.each(["a b", "a".repeat(65), '{"a":1}', "a;b", "ä"])("is a new one in place of %j", async (id) => {
    const response = await app.inject({ url: "/health/live", headers: { "x-request-id": id } });
    expect(response.headers["x-request-id"]).toMatch(uuid);
  });

  it("is another one for each request", async () => {
    const ids = await Promise.all(
      [1, 2, 3].map(async () => (await request(app.server).get("/nowhere")).headers["x-request-id"]),
    );
    expect(new Set(ids).size).toBe(3);
  });
});
