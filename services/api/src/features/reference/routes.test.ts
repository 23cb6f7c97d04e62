import { readReference, references, toJson } from "@sunfathom/answers";
import type { FastifyInstance } from "fastify";
import request from "supertest";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { buildApp } from "../../build-app.test-support.js";

let app: FastifyInstance;
beforeEach(async () => {
  app = await buildApp();
  await app.ready();
});
afterEach(() => app.close());

describe.each([...references])("$path", (reference) => {
  it("answers with the data of the model, and with 304 to whoever has it", async () => {
    const response = await request(app.server).get(reference.path).expect(200);
    expect(response.text).toBe(toJson(readReference(reference)));
    const etag = response.headers["etag"] ?? "";
    await request(app.server).get(reference.path).set("If-None-Match", etag).expect(304);
    await request(app.server).get(reference.path).set("If-None-Match", "*").expect(304);
  });

  it("takes no query", async () => {
    const response = await request(app.server).get(`${reference.path}?limit=1`).expect(400);
    expect(response.body).toMatchObject({ code: "invalid_query", errors: [{ pointer: "/limit" }] });
  });
});
