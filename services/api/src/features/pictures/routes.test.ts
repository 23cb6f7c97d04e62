import type { FastifyInstance } from "fastify";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildApp } from "../../build-app.test-support.js";
import { drawable } from "./draw.js";

let app: FastifyInstance;
beforeAll(async () => {
  app = await buildApp();
  await app.ready();
});
afterAll(() => app.close());

const scene = { water_type: "IB", sun_elevation_deg: 40, min_depth_m: 5, max_depth_m: 18 };
const query = new URLSearchParams(Object.entries(scene).map(([name, value]) => [name, String(value)]));
const get = (url: string, headers: Record<string, string> = {}) =>
  app.inject({ method: "GET", url, headers });
const post = (url: string, payload: object) => app.inject({ method: "POST", url, payload });
const errorsOf = (reply: { json: () => { code: string; errors: { pointer: string; code: string }[] } }) => {
  const { code, errors } = reply.json();
  return [code, ...errors.map((error) => `${error.pointer} ${error.code}`)];
};

describe.each(drawable)("$path", ({ path }) => {
  it.each(["", "&format=png&width_px=360&theme=dark"])(
    "draws the same by GET, POST and QUERY%s",
    async (look) => {
      const got = await get(`${path}?${query}${look}`);
      expect(got.statusCode).toBe(200);
      const posted = await post(`${path}${look.replace("&", "?")}`, scene);
      expect(posted.rawPayload.equals(got.rawPayload)).toBe(true);
      const asked = await app.inject({
        method: "QUERY" as "POST",
        url: `${path}${look.replace("&", "?")}`,
        payload: scene,
      });
      expect(asked.rawPayload.equals(got.rawPayload)).toBe(true);
      expect(posted.headers["etag"]).toBe(got.headers["etag"]);
      expect(asked.headers["etag"]).toBe(got.headers["etag"]);
    },
  );

  it("gives an SVG that any page may show, and that does nothing", async () => {
    const { headers, payload } = await get(`${path}?${query}&width_px=700`);
    expect(payload).toMatch(
      /^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg" viewBox="0 0 700 \d+" width="700"/,
    );
    expect(headers).toMatchObject({
      "content-type": "image/svg+xml; charset=utf-8",
      // Fetch standard, "Cross-Origin-Resource-Policy header".
      "cross-origin-resource-policy": "cross-origin",
      "content-security-policy": "default-src 'none'; img-src data:; sandbox",
      "x-content-type-options": "nosniff",
      // RFC 9111, section 5.2.2.9; RFC 5861, section 3.
      "cache-control": "public, max-age=300, stale-while-revalidate=3600",
    });
    expect(payload).not.toMatch(/<script|<style|href="(?!data:image\/png;base64,)|url\(|on\w+="/);
  });

  it("gives a PNG as wide as it is asked for, and at most 120 kB at 800 px", async () => {
    const { headers, rawPayload } = await get(`${path}?${query}&format=png`);
    expect(headers["content-type"]).toBe("image/png");
    // W3C PNG, sections 5.2 and 11.2.2: the signature, then the header with the width.
    expect(rawPayload.subarray(0, 8).toString("latin1")).toBe("\u0089PNG\r\n\u001a\n");
    expect(rawPayload.readUInt32BE(16)).toBe(800);
    expect(rawPayload.length).toBeLessThan(120_000);
  });

  it("tells whoever has it, and no other, that it is as it was", async () => {
    const tagOf = async (look: string) => String((await get(`${path}?${query}${look}`)).headers["etag"]);
    const looks = ["", "&width_px=700", "&theme=print", "&format=png"];
    const tags = await Promise.all(looks.map(tagOf));
    expect(new Set(tags).size).toBe(looks.length);
    for (const [i, look] of looks.entries()) {
      expect((await get(`${path}?${query}${look}`, { "if-none-match": tags[i] ?? "" })).statusCode).toBe(304);
      const others = tags.filter((_, k) => k !== i).join(", ");
      expect((await get(`${path}?${query}${look}`, { "if-none-match": others })).statusCode).toBe(200);
    }
  });

  it("takes what Browsers accept of images, and refuses whoever takes none of its forms", async () => {
    const accept = "image/avif,image/webp,image/apng,image/svg+xml,image/*,*/*;q=0.8";
    expect((await get(`${path}?${query}`, { accept })).statusCode).toBe(200);
    expect((await get(`${path}?${query}`, { accept: "application/json" })).statusCode).toBe(406);
  });

  it("says what is wrong with how it is to be drawn", async () => {
    expect(errorsOf(await get(`${path}?${query}&format=gif&width_px=99999&theme=Dark`))).toEqual([
      "invalid_query",
      "/format not_an_option",
      "/width_px out_of_range",
      "/theme not_an_option",
    ]);
    expect(errorsOf(await get(`${path}?${query}&width_px=360.5`))).toEqual([
      "invalid_query",
      "/width_px not_whole",
    ]);
    expect(errorsOf(await post(`${path}?width_px=wide`, scene))).toEqual([
      "invalid_query",
      "/width_px not_a_number",
    ]);
    expect(errorsOf(await post(`${path}?format=svg&format=png`, scene))).toEqual([
      "invalid_query",
      "/format repeated_parameter",
    ]);
    expect(errorsOf(await post(`${path}?depth_m=12`, scene))).toEqual([
      "invalid_query",
      "/depth_m unknown_field",
    ]);
  });

  it("names the parameter that a misspelt one was meant to be", async () => {
    const refused = await get(`${path}?${query}&widht_px=400`);
    expect(errorsOf(refused)).toEqual(["invalid_query", "/widht_px unknown_field"]);
    expect(refused.json().errors[0]).toMatchObject({
      did_you_mean: "width_px",
      allowed: "format, width_px, theme",
    });
  });

  it("says what is wrong with the scene", async () => {
    expect(errorsOf(await get(`${path}?${query}&dept_m=12`))).toEqual([
      "invalid_scene",
      "/dept_m unknown_field",
    ]);
    expect(errorsOf(await post(path, { ...scene, format: "png" }))).toEqual([
      "invalid_scene",
      "/format unknown_field",
    ]);
    const contradiction = { visibility_m: 0.4, water_hue: "blue", depth_m: 5 };
    const refused = await post(path, contradiction);
    expect(refused.statusCode).toBe(422);
    expect(refused.json()).toMatchObject({ code: "outside_the_model" });
  });
});

describe("the budget", () => {
  it("counts a picture by what it costs, and nothing for one that is kept", async () => {
    const small = await buildApp({ limits: { costPerWindow: 100_000, window_s: 8_640_000 } });
    const left = async (url: string): Promise<number> => {
      const picture = await small.inject({ method: "GET", url });
      expect(picture.statusCode).toBe(200);
      expect(picture.headers).not.toHaveProperty("ratelimit");
      // Costs one, and says what is left.
      const { headers } = await small.inject("/v1/models");
      return Number(/;r=(\d+)/.exec(String(headers["ratelimit"]))?.[1]);
    };
    const url = `/v1/pictures/light-with-depth?${query}`;
    const first = await left(url);
    const again = await left(url);
    const asPng = await left(`${url}&format=png`);
    expect(100_000 - first).toBeGreaterThan(10);
    expect(first - again).toBeLessThan(3);
    expect(again - asPng).toBeGreaterThan(5 * (100_000 - first));
    await small.close();
  });
});
