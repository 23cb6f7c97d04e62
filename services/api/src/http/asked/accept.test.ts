import type { FastifyInstance } from "fastify";
import request from "supertest";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { createApp } from "../../app.js";
import { accepts } from "./accept.js";

// RFC 9110, section 12.5.1.
describe("an Accept header", () => {
  it.each([
    // "A request without any Accept header field implies that the user agent will accept any media type in response."
    [undefined, true],
    ["", true],
    ["*/*", true],
    ["application/json", true],
    ["Application/JSON; charset=utf-8", true],
    ["application/*;q=0.2", true],
    ["text/html, application/xhtml+xml, */*;q=0.8", true],
    ["text/html", false],
    ["text/*, image/png", false],
    ["application/problem+json", false],
    // "A value of 0 means 'not acceptable'."
    ["application/json;q=0", false],
    ["application/json; q=0.000", false],
    ["application/json;q=0.001", true],
    // "The most specific reference has precedence."
    ["*/*, application/json;q=0", false],
    ["application/json;q=0, */*", false],
    ["application/*;q=0, application/json", true],
    ["*/*;q=0, application/*", true],
    ["text/html;q=0, */*", true],
    ["application/json;q=0, application/json;version=1", true],
    ["application/json, application/json;q=0", true],
    ["application/json;q=0, application/json;q=0.0", false],
    ["application/json;xq=0", true],
    ["  ", true],
    ["*/*;q=0.5", true],
  ])("of %j takes JSON: %s", (accept, takes) => {
    expect(accepts(accept, "application/json")).toBe(takes);
  });
});

it("that takes a zip may take no JSON, and the other way round", () => {
  expect(accepts("application/zip", "application/zip")).toBe(true);
  expect(accepts("application/json", "application/zip")).toBe(false);
  expect(accepts("application/*, application/zip;q=0", "application/zip")).toBe(false);
});

describe("a caller who takes no JSON", () => {
  let app: FastifyInstance;
  beforeAll(async () => {
    app = await createApp();
    await app.ready();
  });
  afterAll(() => app.close());

  it("is told so, and gets what is not JSON all the same", async () => {
    for (const path of ["/v1/models", "/v1/attenuation?water_type=IB&depth_m=5", "/health/live"]) {
      await request(app.server).get(path).set("Accept", "text/html").expect(406);
    }
    await request(app.server).get("/docs").set("Accept", "text/html").expect(200);
    await request(app.server).get("/nowhere").set("Accept", "text/html").expect(404);
  });
});
