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

const scene = "water_type=IB&sun_elevation_deg=40&min_depth_m=5&max_depth_m=18";
const get = (query: string) => request(app.server).get(`/v1/filter-choice?${query}`);

describe("fields of an answer", () => {
  it("are given alone, with its cautions, by GET and by POST", async () => {
    const whole = (await get(scene).expect(200)).body;
    const some = (await get(`fields=filter_kind,depths.depth_m&${scene}`).expect(200)).body;
    expect(some).toEqual({
      filter_kind: whole.filter_kind,
      depths: whole.depths.map(({ depth_m }: { depth_m: number }) => ({ depth_m })),
      cautions: whole.cautions,
    });
    const posted = await request(app.server)
      .post("/v1/filter-choice?fields=depths.depth_m%2Cfilter_kind")
      .send({ water_type: "IB", sun_elevation_deg: 40, min_depth_m: 5, max_depth_m: 18 })
      .expect(200);
    expect(posted.text).toBe(JSON.stringify(some));
  });

  it("have a tag of their own, whatever the order of their names", async () => {
    const whole = (await get(scene)).headers["etag"];
    const first = (await get(`${scene}&fields=filter_kind,verdict`)).headers["etag"];
    const second = (await get(`${scene}&fields=verdict,filter_kind,verdict`)).headers["etag"];
    const other = (await get(`${scene}&fields=verdict`)).headers["etag"];
    expect(second).toBe(first);
    expect(new Set([whole, first, other, (await get(`${scene}&fields=brief`)).headers["etag"]]).size).toBe(4);
    await get(`${scene}&fields=verdict`)
      .set("If-None-Match", other ?? "")
      .expect(304);
    await get(`${scene}&fields=verdict`)
      .set("If-None-Match", whole ?? "")
      .expect(200);
  });

  it.each([
    ["fields=filter_knd", { code: "unknown_field", did_you_mean: "filter_kind" }],
    ["fields=depths.dept_m", { code: "unknown_field", did_you_mean: "depths.depth_m" }],
    [
      "fields=filter_kind,,verdict",
      { code: "unknown_field", message: "There is no name between two commas." },
    ],
    ["fields=brief,verdict", { code: "unknown_field" }],
    ["fields=", { code: "empty_value" }],
    ["fields", { code: "empty_value" }],
    ["fields=verdict&fields=verdict", { code: "repeated_parameter" }],
    ["fields=%", { code: "malformed_escape" }],
    [`fields=${"a".repeat(4001)}`, { code: "wrong_length" }],
    ["fields=constructor", { code: "unknown_field" }],
  ])("are refused by name: %s", async (fields, error) => {
    for (const asked of [
      get(`${scene}&${fields}`),
      request(app.server).post(`/v1/filter-choice?${fields}`).send({ water_type: "IB", depth_m: 5 }),
    ]) {
      const { body } = await asked.expect(400);
      expect(body).toMatchObject({ code: "invalid_query", errors: [{ pointer: "/fields", ...error }] });
    }
  });

  it("are the only parameter that POST takes", async () => {
    const { body } = await request(app.server)
      .post("/v1/filter-choice?fields=verdict&iso=100")
      .send({ water_type: "IB", depth_m: 5 })
      .expect(400);
    expect(body).toMatchObject({
      code: "invalid_query",
      errors: [{ pointer: "/iso", code: "unknown_field" }],
    });
  });

  it("change nothing of what is wrong with a scene", async () => {
    const wrong = "water_type=IB&dept_m=5";
    const { body } = await get(`${wrong}&fields=verdict`).expect(400);
    expect(body.errors).toEqual((await get(wrong).expect(400)).body.errors);
  });
});
