import type { FastifyInstance } from "fastify";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildApp } from "../../build-app.test-support.js";
import { operations } from "../../operations.js";

let cached: FastifyInstance;
let plain: FastifyInstance;
beforeAll(async () => {
  cached = await buildApp();
  plain = await buildApp({ limits: { answerCacheBytes: 0 } });
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

  it("takes from a budget what it takes to find out what is kept", async () => {
    const limited = await buildApp({ limits: { costPerWindow: 100_000, window_s: 100_000 } });
    const filter_samples = [
      {
        red_without: 0.5,
        green_without: 0.5,
        blue_without: 0.5,
        red_with: 0.4,
        green_with: 0.2,
        blue_with: 0.1,
      },
    ];
    const kit = Array.from({ length: 64 }, (_, n) => ({ id: `${n}`, item: "lens_filter", filter_samples }));
    const scene = { water_type: "IB", depth_m: 10, kit };
    const left = async (payload: object) => {
      const { headers } = await limited.inject({ method: "POST", url: "/v1/attenuation", payload });
      return Number(/r=(\d+)/.exec(String(headers["ratelimit"]))?.[1]);
    };
    const first = await left(scene);
    // As many filters, each told from all others, are far more work than their length says.
    expect(first - (await left(scene))).toBeGreaterThan(30);
    const plainFirst = await left({ water_type: "IB", depth_m: 10 });
    expect(plainFirst - (await left({ water_type: "IB", depth_m: 10 }))).toBe(1);
    await limited.close();
  });

  it("says how much it holds", async () => {
    const body = await cached.metrics?.metrics();
    expect(Number(/^answer_cache_bytes (.+)$/m.exec(body ?? "")?.[1])).toBeGreaterThan(10_000);
    expect(Number(/^answer_cache_bytes (.+)$/m.exec((await plain.metrics?.metrics()) ?? "")?.[1])).toBe(0);
  });
});
