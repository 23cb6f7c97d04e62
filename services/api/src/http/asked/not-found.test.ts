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

const calculations = ["/v1/attenuation", "/v1/filter-choice", "/v1/exposure-loss", "/v1/mixed-light"];
const reads = [
  "/v1/water-types",
  "/v1/filter-kinds",
  "/v1/models",
  "/health/live",
  "/health/ready",
  "/openapi.json",
  "/problems/not-found",
  "/docs",
];

describe("a method that a path does not take", () => {
  // RFC 9110, section 15.5.6: a 405 must carry Allow.
  it.each(calculations)("%s: 405 with Allow", async (path) => {
    for (const method of ["put", "patch", "delete"] as const) {
      const response = await request(app.server)[method](`${path}?depth_m=5`).expect(405);
      expect(response.headers["allow"]).toBe("GET, HEAD, OPTIONS, POST, QUERY");
      expect(response.body.detail).toContain("GET, HEAD, OPTIONS, POST, QUERY");
      expect(response.body.detail).toContain(method.toUpperCase());
    }
  });

  it.each(reads)("%s: 405 with Allow", async (path) => {
    for (const method of ["post", "put", "patch", "delete"] as const) {
      const response = await request(app.server)[method](path).expect(405);
      expect(response.headers["allow"]).toBe("GET, HEAD, OPTIONS");
      expect(response.body.code).toBe("method_not_allowed");
    }
  });

  it("is one that HTTP knows and the service does not, too", async () => {
    const response = await app.inject({ method: "PROPFIND" as "GET", url: "/v1/models" });
    expect(response.statusCode).toBe(405);
  });
});

describe("a path that there is not", () => {
  it.each([
    "/v2/attenuation",
    "/v1/attenuation/",
    "/v1//attenuation",
    "/V1/models",
    "/problems/",
    "/problems/a/b",
  ])("%s: 404 whatever the method", async (path) => {
    for (const method of ["get", "post", "delete"] as const) {
      const response = await request(app.server)[method](path).expect(404);
      expect(response.body.code).toBe("not_found");
    }
  });

  it.each([
    ["/v1/atenuation?depth_m=5", "/v1/attenuation"],
    ["/v1/model", "/v1/models"],
    ["/wp-admin/setup.php", "/openapi.json"],
  ])("%s is sent to %s", async (path, to) => {
    const { body } = await request(app.server).get(path).expect(404);
    expect(body.detail).toContain(to);
  });

  it("with an escape that cannot be decoded is a malformed request", async () => {
    const response = await app.inject({ url: "/problems/%zz" });
    expect(response.statusCode).toBe(400);
    expect(response.json().code).toBe("malformed_request");
  });

  it("is none where its last part is too long to be a name", async () => {
    await request(app.server)
      .get(`/problems/${"a".repeat(65)}`)
      .expect(404);
  });
});

describe("a body that nobody takes", () => {
  // Once read, it would be refused for its type or form, which says nothing of what is wrong.
  it.each(["DELETE", "PUT", "PATCH"])("does not hide from %s that the method is wrong", async (method) => {
    const options = { method: method as "PUT", headers: { "content-type": "text/plain" }, payload: "{" };
    expect((await app.inject({ ...options, url: "/v1/attenuation" })).statusCode).toBe(405);
    expect((await app.inject({ ...options, url: "/v1/nowhere" })).statusCode).toBe(404);
    expect((await app.inject({ method: method as "PUT", url: "/v1/models" })).statusCode).toBe(405);
  });
});
