// QUERY (RFC 10008): a request with a body that is safe, and whose answer may be kept.
import { sceneExamples } from "@sunfathom/contract";
import type { FastifyInstance } from "fastify";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildApp } from "../../build-app.test-support.js";
import { operations } from "../../operations.js";

let app: FastifyInstance;
beforeAll(async () => {
  app = await buildApp();
  await app.ready();
});
afterAll(() => app.close());

const { scene } = sceneExamples.reef_with_lamps;
const ask = (method: "POST" | "QUERY", url: string, body: unknown, headers: Record<string, string> = {}) =>
  app.inject({
    method: method as "POST",
    url,
    payload: JSON.stringify(body),
    headers: { "content-type": "application/json", ...headers },
  });

describe("QUERY", () => {
  it.each(operations.map(({ path }) => path))("%s is taken, and OPTIONS says with what", async (url) => {
    const { headers } = await app.inject({ method: "OPTIONS", url });
    expect(String(headers["allow"])).toContain("QUERY");
    // Section 3: a structured list of media types.
    expect(headers["accept-query"]).toBe("application/json");
  });

  it("is answered in the bytes of POST, with what it may be kept by", async () => {
    const url = "/v1/attenuation";
    const [asked, posted] = [await ask("QUERY", url, scene), await ask("POST", url, scene)];
    expect(asked.statusCode).toBe(200);
    expect(asked.body).toBe(posted.body);
    expect(asked.headers["etag"]).toBe(posted.headers["etag"]);
    expect(asked.headers["accept-query"]).toBe("application/json");
    expect(asked.headers["cache-control"]).toBe("max-age=300");
    expect(posted.headers["cache-control"]).toBe("no-cache");
  });

  it("of a named model may be kept for as long as anyone asks for that", async () => {
    const { body } = await ask("POST", "/v1/attenuation", scene);
    const { version } = JSON.parse(body).model;
    const { headers } = await ask("QUERY", "/v1/attenuation", { ...scene, expect_model_version: version });
    expect(headers["cache-control"]).toBe("max-age=604800");
  });

  // Section 2.6: conditional as GET is, and for these bytes alone.
  it("is asked again with the tag of what is held", async () => {
    const url = "/v1/attenuation?fields=depths";
    const { etag } = (await ask("QUERY", url, scene)).headers;
    const held = { "if-none-match": String(etag) };
    const again = await ask("QUERY", url, scene, held);
    expect([again.statusCode, again.body]).toEqual([304, ""]);
    expect((await ask("QUERY", url, { ...scene, water_type: "II" }, held)).statusCode).not.toBe(304);
    expect((await ask("POST", url, scene, held)).statusCode).not.toBe(304);
  });

  // Filters by their pictures are told from each other before it is known which answer is asked for: some milliseconds.
  it.each(["/v1/attenuation", "/v1/pictures/red-in-post", "/v1/grades"])(
    "of %s pays for what it takes to find that the caller has the answer",
    async (url) => {
      const own = await buildApp({ limits: { costPerWindow: 2000, window_s: 86_400 } });
      const sample = {
        red_without: 0.5,
        green_without: 0.5,
        blue_without: 0.5,
        green_with: 0.2,
        blue_with: 0.1,
      };
      const kit = Array.from({ length: 40 }, (_, n) => ({
        id: `f${n}`,
        item: "lens_filter",
        filter_samples: [{ ...sample, red_with: 0.4 - n / 1000 }],
      }));
      const payload = JSON.stringify({ water_type: "IB", depth_m: 10, kit });
      const query = async (more: object) => {
        const headers = { "content-type": "application/json", ...more };
        const reply = await own.inject({ method: "QUERY" as "POST", url, payload, headers });
        // Pictures are for caches, too, and tell nobody's budget.
        const { headers: told } = "ratelimit" in reply.headers ? reply : await own.inject("/v1/models");
        return { ...reply, left: Number(/r=(\d+)/.exec(String(told["ratelimit"]))?.[1]) };
      };
      const first = await query({});
      expect(first.statusCode, first.body).toBe(200);
      const kept = await query({});
      const held = await query({ "if-none-match": String(first.headers["etag"]) });
      expect([kept.statusCode, held.statusCode]).toEqual([200, 304]);
      expect(kept.left - held.left).toBeCloseTo(first.left - kept.left, -1);
      expect(kept.left - held.left).toBeGreaterThan(10);
      await own.close();
    },
    60_000,
  );

  it("refuses what POST refuses, with the same problem", async () => {
    const wrong = { depth_ft: 3 };
    const [asked, posted] = [
      await ask("QUERY", "/v1/attenuation", wrong),
      await ask("POST", "/v1/attenuation", wrong),
    ];
    expect(asked.statusCode).toBe(400);
    expect(asked.json().errors).toEqual(posted.json().errors);
    // Section 2: without a media type for its body it cannot be understood.
    const bare = await app.inject({ method: "QUERY" as "POST", url: "/v1/attenuation", payload: "{}" });
    expect([400, 415]).toContain(bare.statusCode);
  });

  it("is no method of what takes no scene", async () => {
    const { statusCode, headers } = await ask("QUERY", "/v1/models", {});
    expect(statusCode).toBe(405);
    expect(headers["allow"]).toBe("GET, HEAD, OPTIONS");
  });
});
