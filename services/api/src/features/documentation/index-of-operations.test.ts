import type { FastifyInstance } from "fastify";
import { afterAll, beforeAll, expect, it } from "vitest";
import { buildApp } from "../../build-app.test-support.js";

let app: FastifyInstance;
beforeAll(async () => {
  app = await buildApp();
  await app.ready();
});
afterAll(() => app.close());

it("names every operation of the description, and where to read on", async () => {
  const { operations, ...rest } = (await app.inject("/v1")).json();
  const { paths } = (await app.inject("/openapi.json")).json();
  const described = Object.entries<object>(paths).flatMap(([path, methods]) =>
    Object.keys(methods).map((method) => `${method.toUpperCase()} ${path}`),
  );
  const named = operations.map(({ method, path }: { method: string; path: string }) => `${method} ${path}`);
  expect(named.sort()).toEqual(described.sort());
  for (const { summary, operation_id } of operations) {
    expect(summary).toMatch(/^[A-Z]/);
    expect(operation_id).toMatch(/^[a-z][A-Za-z]+$/);
  }
  for (const path of ["documentation", "description", "client", "changes"])
    expect([rest[path], (await app.inject(rest[path])).statusCode]).toEqual([rest[path], 200]);
});

it("is given once, and takes no query", async () => {
  const { etag } = (await app.inject("/v1")).headers;
  const again = await app.inject({ url: "/v1", headers: { "if-none-match": String(etag) } });
  expect([again.statusCode, again.body]).toEqual([304, ""]);
  expect((await app.inject("/v1?a=1")).statusCode).toBe(400);
});

// RFC 9110, section 9.3.7.
it.each(["/v1", "/v1/filter-choice", "/openapi.yaml", "/changelog", "/problems/not-found", "/docs"])(
  "a bare OPTIONS of %s is answered with the methods that it takes",
  async (url) => {
    const { statusCode, headers, body } = await app.inject({ method: "OPTIONS", url });
    expect([statusCode, body]).toEqual([204, ""]);
    expect(String(headers["allow"]).split(", ")).toEqual(
      url === "/v1/filter-choice" ? ["GET", "HEAD", "OPTIONS", "POST", "QUERY"] : ["GET", "HEAD", "OPTIONS"],
    );
  },
);
