import { modelVersion, toJson } from "@sunfathom/answers";
import { mountingExamples, sceneExamples } from "@sunfathom/contract";
import type { FastifyInstance } from "fastify";
import request from "supertest";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildApp } from "../../build-app.test-support.js";
import { operations } from "../../operations.js";

let app: FastifyInstance;
beforeAll(async () => {
  app = await buildApp();
  await app.ready();
});
afterAll(() => app.close());

function queryString(fields: object): string {
  return new URLSearchParams(Object.entries(fields).map(([name, value]) => [name, String(value)])).toString();
}

async function tagOf(path: string, fields: object): Promise<string | undefined> {
  const response = await request(app.server)
    .get(`${path}?${queryString(fields)}`)
    .expect(200);
  return response.headers["etag"];
}

/** The body of a response as it came over the wire. */
function bytes(test: request.Test): Promise<string> {
  return test
    .buffer(true)
    .parse((response, done) => {
      let text = "";
      response.setEncoding("utf8");
      response.on("data", (part) => {
        text += part;
      });
      response.on("end", () => done(null, text));
    })
    .then((response) => response.body);
}

const isFlat = (scene: object) => Object.values(scene).every((value) => typeof value !== "object");

describe.each(operations)("$path", ({ path, examples, reply }) => {
  const { scene } = examples.find((example) => isFlat(example.scene)) ?? { scene: {} };

  it.each(examples)("answers $name by POST and GET with the bytes of the offline door", async (example) => {
    const offline = reply(example.scene);
    if (offline.status !== "ok") throw new Error("no answer");
    const expected = toJson(offline.body);
    expect(await bytes(request(app.server).post(path).send(example.scene).expect(200))).toBe(expected);
    const byGet = request(app.server).get(`${path}?${queryString(example.scene)}`);
    if (isFlat(example.scene)) expect(await bytes(byGet.expect(200))).toBe(expected);
    else expect((await byGet.expect(400)).body).toMatchObject({ errors: [{ code: "needs_post" }] });
  });

  it("declares its answer as JSON", async () => {
    const response = await request(app.server).get(`${path}?${queryString(scene)}`);
    expect(response.headers["content-type"]).toBe("application/json");
  });

  it("tags its answer by GET, and says so when the caller has it", async () => {
    const url = `${path}?${queryString(scene)}`;
    const first = await request(app.server).get(url).expect(200);
    const { etag = "" } = first.headers;
    // RFC 9110, section 8.8.3: a strong tag is a quoted string without W/.
    expect(etag).toMatch(/^"[\w-]{20,}"$/);
    const again = await request(app.server).get(url).set("If-None-Match", `"other", ${etag}`).expect(304);
    expect(again.headers["etag"]).toBe(etag);
    expect(again.text).toBe("");
    // RFC 9110, section 13.1.2: If-None-Match compares weakly.
    await request(app.server).get(url).set("If-None-Match", `W/${etag}`).expect(304);
    await request(app.server).get(url).set("If-None-Match", '"other"').expect(200);
  });

  it("gives scenes that mean the same one tag, whatever the order of their fields", async () => {
    const base = await tagOf(path, scene);
    expect(await tagOf(path, Object.fromEntries(Object.entries(scene).reverse()))).toBe(base);
    expect(await tagOf(path, { ...scene, expect_model_version: modelVersion })).toBe(base);
  });

  it("tells whoever has the answer so by a URL that it meets for the first time, as after a restart", async () => {
    const etag = (await tagOf(path, scene)) ?? "";
    const url = `${path}?${queryString(scene)}&&`;
    const first = await request(app.server).get(url).set("If-None-Match", etag).expect(304);
    expect([first.headers["etag"], first.text]).toEqual([etag, ""]);
  });

  it("answers HEAD with the head of GET", async () => {
    const url = `${path}?${queryString(scene)}`;
    // The client of the tests takes gzip by itself, but for HEAD.
    const get = await request(app.server).get(url).set("Accept-Encoding", "gzip");
    const head = await request(app.server).head(url).set("Accept-Encoding", "gzip").expect(200);
    expect(head.headers["etag"]).toBe(get.headers["etag"]);
    expect(head.headers["content-length"]).toBe(get.headers["content-length"]);
  });

  it("gives the same problem by POST and GET", async () => {
    const wrong = { ...scene, f_number: 0.5, dept_m: 3 };
    const post = await request(app.server).post(path).send(wrong).expect(400);
    const get = await request(app.server)
      .get(`${path}?${queryString(wrong)}`)
      .expect(400);
    const { request_id: _, ...posted } = post.body;
    const { request_id: __, ...got } = get.body;
    expect(got).toEqual(posted);
    const errors: { pointer: string; code: string }[] = got.errors;
    expect(errors.map(({ pointer, code }) => `${pointer} ${code}`).sort()).toEqual([
      "/dept_m unknown_field",
      "/f_number out_of_range",
    ]);
  });

  it("takes no scene from the query of a POST", async () => {
    const response = await request(app.server).post(`${path}?depth_m=5`).send(scene).expect(400);
    expect(response.body).toMatchObject({ code: "invalid_query", errors: [{ pointer: "/depth_m" }] });
  });
});

const ofLight = operations.filter((operation) => operation.request === "Scene");

describe.each(ofLight)("$path", ({ path }) => {
  it("tells scenes of light apart by what they mean", async () => {
    const { scene } = sceneExamples.reef_with_lamps;
    const { depth_m, ...rest } = scene;
    const base = await tagOf(path, scene);
    expect(await tagOf(path, { max_depth_m: depth_m, min_depth_m: depth_m, ...rest })).toBe(base);
    expect(await tagOf(path, { ...scene, depth_m: 12.5 })).not.toBe(base);
    // An assumed value is echoed as assumed, so the answer is another one.
    expect(await tagOf(path, { ...scene, bits: 8 })).not.toBe(base);
  });
});

describe("/v1/filter-mounting", () => {
  const path = "/v1/filter-mounting";
  const { scene } = mountingExamples.fisheye_behind_dome;

  it("tells scenes apart by what they mean", async () => {
    const base = await tagOf(path, scene);
    expect(await tagOf(path, { ...scene, dome_radius_mm: 101 })).not.toBe(base);
    expect(await tagOf(path, { ...scene, f_number: 8 })).not.toBe(base);
  });

  it("sends whoever has rings to POST", async () => {
    const response = await request(app.server)
      .get(`${path}?${queryString(scene)}&rings=52-67`)
      .expect(400);
    expect(response.body.errors).toEqual([
      expect.objectContaining({ pointer: "/rings", code: "needs_post" }),
    ]);
    expect(response.body.errors[0].allowed).toContain("POST");
  });

  it("says what is allowed where a yes or no is neither", async () => {
    const response = await request(app.server)
      .get(`${path}?${queryString(scene)}&lens_interchangeable=yes`)
      .expect(400);
    expect(response.body.errors).toEqual([
      expect.objectContaining({
        pointer: "/lens_interchangeable",
        code: "wrong_type",
        allowed: "true or false",
      }),
    ]);
  });

  it("refuses fields of other scenes, and says where a lens leads outside the model", async () => {
    const stray = await request(app.server)
      .post(path)
      .send({ ...scene, water_type: "IB" })
      .expect(400);
    expect(stray.body.errors).toEqual([
      expect.objectContaining({ pointer: "/water_type", code: "unknown_field" }),
    ]);
    const wide = { port_kind: "flat", lens_kind: "wide", field_of_view_deg: 200 };
    for (const asked of [
      request(app.server).post(path).send(wide),
      request(app.server).get(`${path}?${queryString(wide)}`),
    ]) {
      const { body } = await asked.expect(422);
      expect(body).toMatchObject({
        code: "outside_the_model",
        errors: [{ pointer: "/field_of_view_deg", code: "field_too_wide" }],
      });
    }
  });
});
