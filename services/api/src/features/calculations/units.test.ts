// Texts in feet are an answer of their own: to whoever asks, to caches, and to whoever asks whether theirs still holds (RFC 9110,
// section 8.8.3: a strong tag tells bytes apart).

import type { FastifyInstance, InjectOptions } from "fastify";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildApp } from "../../build-app.test-support.js";

let app: FastifyInstance;
beforeAll(async () => {
  app = await buildApp();
  await app.ready();
});
afterAll(() => app.close());

const scene = { water_type: "IB", depth_m: 12 };
const get = (path: string, headers: Record<string, string> = {}) =>
  app.inject({ method: "GET", url: `/v1/${path}`, headers });
const send = (path: string, payload: object, method = "POST") =>
  app.inject({ method: method as InjectOptions["method"] & "POST", url: `/v1/${path}`, payload });
/** Of all headers, bytes as they are sent. */
const size = ({ headers }: { headers: Record<string, unknown> }) =>
  Object.entries(headers)
    .filter(([name]) => !["content-length", "date"].includes(name))
    .map(([name, value]) => `${name}: ${String(value)}\r\n`)
    .join("").length;

const query = "attenuation?water_type=IB&depth_m=12";

describe("an answer in feet", () => {
  it("is the same by GET, POST and QUERY", async () => {
    const [got, posted, asked] = [
      await get(`${query}&units=imperial`),
      await send("attenuation", { ...scene, units: "imperial" }),
      await send("attenuation", { ...scene, units: "imperial" }, "QUERY"),
    ];
    expect(got.body).toContain("At 39 ft");
    for (const same of [posted, asked])
      expect([same.statusCode, same.body, same.headers["etag"]]).toEqual([
        200,
        got.body,
        got.headers["etag"],
      ]);
  });

  it("has the figures of the one in metres, which is the default, and a tag of its own", async () => {
    const [feet, metres, plain] = [
      await get(`${query}&units=imperial`),
      await get(`${query}&units=metric`),
      await get(query),
    ];
    const { depths, scene: answered, model } = metres.json();
    expect(feet.json()).toMatchObject({ depths, scene: answered, model });
    expect(answered).not.toHaveProperty("units");
    expect([plain.body, plain.headers["etag"]]).toEqual([metres.body, metres.headers["etag"]]);
    expect(feet.headers["etag"]).not.toBe(metres.headers["etag"]);
    expect(size(feet)).toBe(size(metres));
  });

  it("is not sent again to whoever has it, and is to whoever has the one in metres", async () => {
    const tagOf = async (units: string) => String((await get(`${query}&units=${units}`)).headers["etag"]);
    const again = async (tag: string) =>
      (await get(`${query}&units=imperial`, { "if-none-match": tag })).statusCode;
    expect([await again(await tagOf("imperial")), await again(await tagOf("metric"))]).toEqual([304, 200]);
  });

  it("of some fields, and of heavy work on a thread, is in feet, too", async () => {
    const reasons = await get(`${query}&units=imperial&fields=reasons`);
    expect(reasons.body).toContain("At 39 ft");
    const plan = await send("dive-advice", {
      water_type: "IB",
      sun_elevation_deg: 50,
      min_depth_m: 5,
      max_depth_m: 30,
      units: "imperial",
    });
    expect(
      plan
        .json()
        .steps.map(({ text }: { text: string }) => text)
        .join(" "),
    ).toMatch(/\d ft\b/);
  });

  it("is refused in units that there are not", async () => {
    const { errors } = (await get(`${query}&units=feet`)).json();
    expect(errors).toEqual([
      expect.objectContaining({
        pointer: "/units",
        code: "not_an_option",
        allowed: "one of: metric, imperial",
      }),
    ]);
  });
});

describe("a picture in feet", () => {
  const picture = "pictures/light-with-depth?water_type=IB&min_depth_m=5&max_depth_m=18";

  it("names depths in feet, at round feet along its axis, and none in metres", async () => {
    const { body } = await get(`${picture}&units=imperial`);
    const texts = [...body.matchAll(/>([^<]+)</g)].map(([, text = ""]) => text);
    expect(texts.filter((text) => /\d m\b/.test(text))).toEqual([]);
    const marks = texts.flatMap((text) => /^(\d+) ft$/.exec(text)?.[1] ?? []).map(Number);
    expect(marks.length).toBeGreaterThan(3);
    for (const mark of marks) expect(mark % 10).toBe(0);
    const posted = await send("pictures/light-with-depth", {
      water_type: "IB",
      min_depth_m: 5,
      max_depth_m: 18,
      units: "imperial",
    });
    expect(posted.body).toBe(body);
  });

  it("is another one than that in metres", async () => {
    const [feet, metres] = [await get(`${picture}&units=imperial`), await get(picture)];
    expect(feet.headers["etag"]).not.toBe(metres.headers["etag"]);
    expect((await get(picture)).body).toBe(metres.body);
  });
});
