import type { FastifyInstance } from "fastify";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { createApp } from "../app.js";
import { operations } from "../operations.js";
import { unhurried } from "../unhurried.test-support.js";

let cached: FastifyInstance;
let plain: FastifyInstance;
beforeAll(async () => {
  cached = await createApp({ limits: unhurried });
  plain = await createApp({ limits: { ...unhurried, answerCacheBytes: 0 } });
  await Promise.all([cached.ready(), plain.ready()]);
});
afterAll(() => Promise.all([cached.close(), plain.close()]));

const post = async (app: FastifyInstance, url: string, scene: object) => {
  const { statusCode, rawPayload, headers } = await app.inject({ method: "POST", url, payload: scene });
  return { statusCode, bytes: rawPayload, length: headers["content-length"] };
};

async function lookups(outcome: "hit" | "miss"): Promise<number> {
  const body = await cached.metrics?.metrics();
  return Number(
    new RegExp(`^answer_cache_lookups_total{outcome="${outcome}"} (.+)$`, "m").exec(body ?? "")?.[1],
  );
}

const cases = operations.flatMap(({ path, examples }) =>
  examples.map(({ name, scene }) => ({ path, name, scene })),
);

describe("the cache of answers behind the calculations", () => {
  it.each(cases)("$path, $name: gives the bytes that are given without it, first and again", async (c) => {
    const expected = await post(plain, c.path, c.scene);
    expect(expected.statusCode).toBe(200);
    expect(await post(cached, c.path, c.scene)).toEqual(expected);
    const before = await lookups("hit");
    expect(await post(cached, c.path, c.scene)).toEqual(expected);
    expect(await lookups("hit")).toBe(before + 1);
  });

  it("is shared by POST and GET, and by all that mean the same", async () => {
    const scene = { water_type: "II", sun_elevation_deg: 33.5, depth_m: 9 };
    const { bytes } = await post(cached, "/v1/attenuation", scene);
    const [hits, misses] = [await lookups("hit"), await lookups("miss")];
    const query = new URLSearchParams(Object.entries(scene).map(([k, v]) => [k, String(v)]));
    const byGet = await cached.inject(`/v1/attenuation?${query}`);
    expect(byGet.rawPayload).toEqual(bytes);
    expect(byGet.headers["etag"]).toMatch(/^".+"$/);
    const { depth_m, ...rest } = scene;
    await post(cached, "/v1/attenuation", { max_depth_m: depth_m, ...rest, min_depth_m: depth_m });
    expect(await lookups("hit")).toBe(hits + 2);
    expect(await lookups("miss")).toBe(misses);
  });

  it("keeps answers, not problems", async () => {
    const outside = { water_type: "II", sun_elevation_deg: 5, depth_m: 9 };
    for (let n = 0; n < 2; n += 1) {
      const hits = await lookups("hit");
      expect((await post(cached, "/v1/attenuation", outside)).statusCode).toBe(422);
      expect(await lookups("hit")).toBe(hits);
    }
  });

  it("says how much it holds", async () => {
    const body = await cached.metrics?.metrics();
    expect(Number(/^answer_cache_bytes (.+)$/m.exec(body ?? "")?.[1])).toBeGreaterThan(10_000);
    expect(Number(/^answer_cache_bytes (.+)$/m.exec((await plain.metrics?.metrics()) ?? "")?.[1])).toBe(0);
  });
});
