import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { settingsOf } from "./core/settings.js";
import { overHttp } from "./core/transport.js";
import { answerWith, FaultServer, ok, problemWith, reset } from "./faults/fault-server.test-support.js";
import { memoryCache, OutsideTheModelError, ProblemError, type Scene, Sunfathom } from "./index.js";

let faults: FaultServer;
let baseUrl: string;

beforeEach(async () => {
  faults = new FaultServer();
  baseUrl = await faults.listen();
});
afterEach(() => faults.close());

describe("a request", () => {
  it("carries key, id and body, and asks for JSON", async () => {
    faults.faults = [ok];
    const client = new Sunfathom({ baseUrl: `${baseUrl}/light/`, apiKey: "k-1" });
    const scene = { water_type: "IB", depth_m: 12, iso: undefined } as const;
    await client.calculations.filterChoice(scene, { requestId: "booking-7" });
    expect(faults.seen).toHaveLength(1);
    expect(faults.seen[0]).toMatchObject({
      method: "POST",
      url: "/light/v1/filter-choice",
      body: '{"water_type":"IB","depth_m":12}',
      headers: {
        authorization: "Bearer k-1",
        "content-type": "application/json",
        accept: "application/json, application/problem+json",
        "x-request-id": "booking-7",
      },
    });
  });

  it("escapes what stands in a path", async () => {
    faults.faults = [ok];
    await new Sunfathom({ baseUrl }).service.problemKind("a/b?c");
    expect(faults.seen[0]?.url).toBe("/problems/a%2Fb%3Fc");
  });

  it("goes through the caller's own fetch", async () => {
    const urls: string[] = [];
    const own = (url: string) => {
      urls.push(url);
      return Promise.resolve(Response.json({ models: [] }));
    };
    await new Sunfathom({ baseUrl: "https://light.example.org", fetch: own }).reference.models();
    expect(urls).toEqual(["https://light.example.org/v1/models"]);
  });

  it("asks for the client's version of the model, unless the scene asks for another", async () => {
    faults.faults = [ok];
    const client = new Sunfathom({ baseUrl, expectModelVersion: "2026.11.1" });
    await client.calculations.attenuation({ water_type: "IB", depth_m: 12 });
    await client.calculations.attenuation({
      water_type: "IB",
      depth_m: 12,
      expect_model_version: "2026.10.3",
    });
    await client.calculations.attenuation({ water_type: "IB", depth_m: 12, expect_model_version: undefined });
    await client.reference.models();
    const versions = faults.seen.map(({ body }) =>
      body === "" ? body : JSON.parse(body).expect_model_version,
    );
    expect(versions).toEqual(["2026.11.1", "2026.10.3", "2026.11.1", ""]);
  });

  it("is never sent twice where repeating it is not safe", async () => {
    faults.faults = [reset];
    const send = overHttp(settingsOf({ baseUrl, maxRetries: 5 }));
    const operation = { method: "POST", path: "/v1/orders", once: true };
    await expect(send(operation, { body: {} }, {})).rejects.toMatchObject({ name: "ConnectionError" });
    faults.faults = [reset, problemWith(503, "unavailable")];
    await expect(send(operation, { body: {} }, {})).rejects.toMatchObject({ name: "UnavailableError" });
    expect(faults.seen).toHaveLength(2);
  });
});

describe("an answer", () => {
  it("comes with its id, tag and rate limit where they are asked for", async () => {
    const headers = { "x-request-id": "r-7", etag: '"t-1"', ratelimit: '"default";r=41;t=30' };
    faults.faults = [answerWith(200, { models: [] }, headers)];
    const { data, meta } = await new Sunfathom({ baseUrl }).reference.models().withResponse();
    expect(data).toEqual({ models: [] });
    expect(meta).toEqual({
      source: "service",
      attempts: 1,
      requestId: "r-7",
      etag: '"t-1"',
      rateLimit: { remaining: 41, reset_s: 30 },
    });
  });

  it("of a newer service, with fields and words that this client does not know, is handed on", async () => {
    const newer = { filter_kind: "violet", polarisation: { axis_deg: 12 }, verdict: "undecided" };
    faults.faults = [answerWith(200, newer)];
    const client = new Sunfathom({ baseUrl });
    expect(await client.calculations.filterChoice({ water_type: "IB", depth_m: 5 })).toEqual(newer);
  });
});

describe("a problem", () => {
  const errors = [
    { pointer: "/sun_elevation_deg", code: "too_low", message: "Too low.", allowed: "3 or more" },
  ];
  const body = { type: "/problems/outside-the-model", title: "Outside.", code: "outside_the_model", errors };
  const headers = { "content-type": "application/problem+json; charset=utf-8", "x-request-id": "r-9" };

  it("says all that the service said", async () => {
    faults.faults = [answerWith(422, { ...body, detail: "The sun is too low." }, headers)];
    const error = await new Sunfathom({ baseUrl }).calculations
      .attenuation({ water_type: "IB", depth_m: 5 })
      .catch((caught: unknown) => caught);
    expect(error).toBeInstanceOf(OutsideTheModelError);
    expect(error).toMatchObject({
      name: "OutsideTheModelError",
      message: "The sun is too low.",
      type: "/problems/outside-the-model",
      code: "outside_the_model",
      status: 422,
      requestId: "r-9",
      errors,
    });
  });

  it.each([
    [{ type: "/problems/a-new-kind" }, "/problems/a-new-kind"],
    [{ type: "constructor", detail: 7, errors: "none", code: null }, "constructor"],
  ])("of a kind or form that this client does not know is still one: %o", async (unknown, message) => {
    faults.faults = [answerWith(418, unknown, headers)];
    const error = await new Sunfathom({ baseUrl }).reference.models().catch((caught: unknown) => caught);
    expect(error).toBeInstanceOf(ProblemError);
    expect(error).toMatchObject({ name: "ProblemError", status: 418, message, code: "", errors: [] });
  });
});

describe("a cache", () => {
  const scene: Scene = {
    depth_m: 12,
    water_type: "IB",
    latitude_deg: -47,
    longitude_deg: -128,
    time: "2026-06-10T10:00:00-09:00",
  };

  it("turns a scene that fits a query string into a GET, and a 304 into the kept answer", async () => {
    faults.faults = [
      answerWith(200, { depths: [1] }, { etag: '"a"' }),
      answerWith(304, {}, { etag: '"a"' }),
      answerWith(200, { depths: [2] }, { etag: '"b"' }),
    ];
    const client = new Sunfathom({ baseUrl, cache: memoryCache() });
    const calls = [];
    for (const same of [scene, { ...scene, iso: undefined }, scene]) {
      calls.push(await client.calculations.attenuation(same).withResponse());
    }
    expect(calls.map(({ data, meta }) => [data, meta.source])).toEqual([
      [{ depths: [1] }, "service"],
      [{ depths: [1] }, "cache"],
      [{ depths: [2] }, "service"],
    ]);
    expect(faults.seen.map(({ method, headers }) => [method, headers["if-none-match"]])).toEqual([
      ["GET", undefined],
      ["GET", '"a"'],
      ["GET", '"a"'],
    ]);
    const url =
      "/v1/attenuation?water_type=IB&latitude_deg=-47&longitude_deg=-128&time=2026-06-10T10%3A00%3A00-09%3A00&depth_m=12";
    expect(new Set(faults.seen.map((seen) => seen.url))).toEqual(new Set([url]));
  });

  it.each([
    ["a list", { lamps: [{ flux_lm: 4000, distance_m: 1 }] }],
    ["a name that the description does not have", { dept_m: 5 }],
    ["a number that JSON cannot write", { iso: Number.NaN }],
    ["an empty text", { time: "" }],
    ["more than a URL should hold", { time_zone: "x".repeat(2000) }],
  ])("leaves a scene with %s to POST", async (_what, more) => {
    faults.faults = [ok];
    const client = new Sunfathom({ baseUrl, cache: memoryCache() });
    // The compiler refuses some of them; callers without one send them all.
    await client.calculations.attenuation({ ...scene, ...more } as Scene);
    expect(faults.seen[0]).toMatchObject({ method: "POST", url: "/v1/attenuation" });
  });

  it("that holds something broken is asked past", async () => {
    faults.faults = [answerWith(200, { depths: [1] }, { etag: '"a"' })];
    const broken = { get: () => ({ etag: '"a"', body: '{"depths":' }), set: () => undefined };
    const client = new Sunfathom({ baseUrl, cache: broken });
    expect(await client.calculations.attenuation(scene)).toEqual({ depths: [1] });
    expect(faults.seen[0]?.headers["if-none-match"]).toBeUndefined();
  });

  it("gives every caller an answer of its own", async () => {
    faults.faults = [answerWith(200, { depths: [1] }, { etag: '"a"' }), answerWith(304, {})];
    const client = new Sunfathom({ baseUrl, cache: memoryCache() });
    const first = await client.calculations.attenuation(scene);
    first.depths.length = 0;
    expect(await client.calculations.attenuation(scene)).toEqual({ depths: [1] });
  });

  it("in memory forgets what was not used for longest", async () => {
    const cache = memoryCache(2);
    const kept = (body: string) => ({ etag: '"x"', body });
    for (const key of ["a", "b"]) await cache.set(key, kept(key));
    await cache.get("a");
    await cache.set("c", kept("c"));
    expect(await cache.get("b")).toBeUndefined();
    expect([await cache.get("a"), await cache.get("c")]).toEqual([kept("a"), kept("c")]);
    expect(() => memoryCache(0)).toThrow(TypeError);
  });
});

describe("an option that cannot be", () => {
  it.each([
    [{ baseUrl: "light.example.org" }, /^baseUrl is "light.example.org", but must be a URL/],
    [{ baseUrl: "https://light.example.org?x=1" }, /^baseUrl/],
    [{ baseUrl: "https://a", timeoutMs: 0 }, /^timeoutMs is 0/],
    [{ baseUrl: "https://a", timeoutMs: Number.NaN }, /^timeoutMs/],
    [{ baseUrl: "https://a", timeoutMs: 2 ** 31 }, /^timeoutMs/],
    [{ baseUrl: "https://a", maxRetries: 1.5 }, /^maxRetries is 1.5/],
  ])("is named: %o", (options, message) => {
    expect(() => new Sunfathom(options)).toThrow(message);
  });

  it("says nothing of a key", () => {
    expect(() => new Sunfathom({ baseUrl: "https://a", apiKey: "se\ncret" })).toThrow(/^(?!.*cret).*apiKey/);
  });
});

describe("fields of an answer", () => {
  const scene = { water_type: "IB", depth_m: 12 } as const;

  it.each([
    [["filter_kind", "depths.depth_m"] as const, "filter_kind,depths.depth_m"],
    ["brief" as const, "brief"],
  ])("%s are asked for beside the scene, by POST and by GET", async (fields, sent) => {
    faults.faults = [answerWith(200, { cautions: [] }, { etag: '"a"' })];
    const ask = (client: Sunfathom) =>
      fields === "brief"
        ? client.calculations.filterChoice(scene, { fields })
        : client.calculations.filterChoice(scene, { fields });
    await ask(new Sunfathom({ baseUrl }));
    await ask(new Sunfathom({ baseUrl, cache: memoryCache() }));
    expect(faults.seen.map(({ method, url, body }) => [method, url, body])).toEqual([
      ["POST", `/v1/filter-choice?fields=${sent}`, JSON.stringify(scene)],
      ["GET", `/v1/filter-choice?water_type=IB&depth_m=12&fields=${sent}`, ""],
    ]);
  });
});
