import { answer, modelVersion, operations, toJson } from "@sunfathom/answers";
import { sceneExamples } from "@sunfathom/contract";
import type { FastifyInstance } from "fastify";
import request from "supertest";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { createApp } from "../app.js";

let app: FastifyInstance;
beforeAll(async () => {
  app = await createApp();
  await app.ready();
});
afterAll(() => app.close());

const { scene } = sceneExamples.reef_with_lamps;

function queryString(fields: object): string {
  return new URLSearchParams(Object.entries(fields).map(([name, value]) => [name, String(value)])).toString();
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

describe.each(operations)("$path", ({ name, path, examples }) => {
  it.each(examples)("answers %s by POST and GET with the bytes of the offline door", async (key) => {
    const { scene: example } = sceneExamples[key];
    const offline = answer(name, example);
    if (offline.status !== "ok") throw new Error("no answer");
    const expected = toJson(offline.body);
    expect(await bytes(request(app.server).post(path).send(example).expect(200))).toBe(expected);
    const got = await bytes(
      request(app.server)
        .get(`${path}?${queryString(example)}`)
        .expect(200),
    );
    expect(got).toBe(expected);
  });

  it("declares its answer as JSON", async () => {
    const response = await request(app.server).get(`${path}?${queryString(scene)}`);
    expect(response.headers["content-type"]).toBe("application/json; charset=utf-8");
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

  it("gives scenes that mean the same one tag, and others another", async () => {
    const tagOf = async (fields: object) => {
      const response = await request(app.server)
        .get(`${path}?${queryString(fields)}`)
        .expect(200);
      return response.headers["etag"];
    };
    const { depth_m, ...rest } = scene;
    const base = await tagOf(scene);
    expect(await tagOf({ max_depth_m: depth_m, min_depth_m: depth_m, ...rest })).toBe(base);
    expect(await tagOf({ ...scene, expect_model_version: modelVersion })).toBe(base);
    expect(await tagOf({ ...scene, depth_m: 12.5 })).not.toBe(base);
    // An assumed value is echoed as assumed, so the answer is another one.
    expect(await tagOf({ ...scene, bits: 8 })).not.toBe(base);
  });

  it("answers HEAD with the head of GET", async () => {
    const url = `${path}?${queryString(scene)}`;
    const get = await request(app.server).get(url);
    const head = await request(app.server).head(url).expect(200);
    expect(head.headers["etag"]).toBe(get.headers["etag"]);
    expect(head.headers["content-length"]).toBe(get.headers["content-length"]);
  });

  it("gives the same problem by POST and GET", async () => {
    const wrong = { ...scene, iso: 1, dept_m: 3 };
    const post = await request(app.server).post(path).send(wrong).expect(400);
    const get = await request(app.server)
      .get(`${path}?${queryString(wrong)}`)
      .expect(400);
    const { request_id: _, ...posted } = post.body;
    const { request_id: __, ...got } = get.body;
    expect(got).toEqual(posted);
    const errors: { pointer: string; code: string }[] = got.errors;
    expect(errors.map(({ pointer, code }) => `${pointer} ${code}`)).toEqual([
      "/iso out_of_range",
      "/dept_m unknown_field",
    ]);
  });

  it("takes no scene from the query of a POST", async () => {
    const response = await request(app.server).post(`${path}?depth_m=5`).send(scene).expect(400);
    expect(response.body).toMatchObject({ code: "invalid_query", errors: [{ pointer: "/depth_m" }] });
  });
});
