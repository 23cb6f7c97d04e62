// Who is answered in which language: by RFC 9110, sections 8.5, 12.5.4 and 12.5.5, and by what the request itself asks for.

import { languages } from "@sunfathom/contract";
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
const path = "/v1/attenuation";
const query = `${path}?water_type=IB&depth_m=12`;
const german = { "accept-language": "de-AT, en;q=0.5" };

const get = (url: string, headers: Record<string, string> = {}) =>
  app.inject({ method: "GET", url, headers });
const post = (body: unknown, headers: Record<string, string> = {}, method = "POST") =>
  app.inject({
    method: method as InjectOptions["method"] & "POST",
    url: path,
    payload: JSON.stringify(body),
    headers: { "content-type": "application/json", ...headers },
  });

/** Words of a caution that all answers have. */
const oneOfEach = {
  de: "das ist kein Tauchplan",
  en: "not a dive plan",
  es: "no un plan de inmersión",
  fr: "ce n’est pas une planification de plongée",
};
const languageOf = ({ body }: { body: string }) =>
  Object.entries(oneOfEach).find(([, text]) => body.includes(text))?.[0];
const told = (answered: { body: string; headers: Record<string, unknown> }) => [
  answered.headers["content-language"],
  languageOf(answered),
];

describe("an answer", () => {
  it.each([
    ["the scene", "de", () => post({ ...scene, language: "de" })],
    ["the query string", "de", () => get(`${query}&language=de`)],
    ["the query string in escapes", "de", () => get(`${query}&l%61nguage=d%65`)],
    ["Accept-Language", "de", () => post(scene, german)],
    ["Accept-Language by GET", "de", () => get(query, german)],
    ["Accept-Language by QUERY", "de", () => post(scene, german, "QUERY")],
    ["the scene, in Spanish", "es", () => post({ ...scene, language: "es" }, german)],
    ["Accept-Language, in Spanish", "es", () => get(query, { "accept-language": "es-419, en;q=0.5" })],
    ["Accept-Language of another country", "fr", () => post(scene, { "accept-language": "fr-CH, de;q=0.8" })],
    ["the scene against Accept-Language", "en", () => post({ ...scene, language: "en" }, german)],
    ["the query string against Accept-Language", "en", () => get(`${query}&language=en`, german)],
    ["nobody", "en", () => get(query)],
    ["a language that there is not", "en", () => get(query, { "accept-language": "tlh" })],
  ])("is in the language that is asked for by %s: %s", async (_, language, ask) => {
    const answered = await ask();
    expect(answered.statusCode).toBe(200);
    expect(told(answered)).toEqual([language, language]);
    expect(String(answered.headers["vary"]).split(", ")).toContain("Accept-Language");
  });

  it("has the same figures in each language, and a tag of its own", async () => {
    const [de, en] = [await get(query, german), await get(query)];
    const { depths, model } = en.json();
    expect(de.json()).toMatchObject({ depths, model });
    expect(de.headers["etag"]).not.toBe(en.headers["etag"]);
    // However it was asked for.
    for (const same of [await post(scene, german), await post({ ...scene, language: "de" })])
      expect([same.headers["etag"], same.body]).toEqual([de.headers["etag"], de.body]);
  });

  it("that the caller has is one of its language", async () => {
    const etag = String((await get(query, german)).headers["etag"]);
    const again = await get(query, { ...german, "if-none-match": etag });
    expect([again.statusCode, again.headers["vary"]]).toEqual([
      304,
      expect.stringContaining("Accept-Language"),
    ]);
    expect((await get(query, { "if-none-match": etag })).statusCode).toBe(200);
  });

  it("does not name the language: two scenes that mean the same have one form", async () => {
    expect((await post({ ...scene, language: "de" })).json().scene).not.toHaveProperty("language");
  });

  it("in brief, and of some fields, is in it, too", async () => {
    const briefly = await get(`${query}&fields=brief`, german);
    expect(briefly.headers["content-language"]).toBe("de");
    expect(languageOf(await get(`${query}&fields=cautions`, german))).toBe("de");
  });
});

describe("a problem", () => {
  const said = (answered: {
    json: () => { detail: string; title: string };
    headers: Record<string, unknown>;
  }) => [answered.headers["content-language"], answered.json().detail];

  it.each([
    ["of a scene", () => post({ water_type: "IB", language: "de" }), "Die Tiefe ist nicht angegeben."],
    ["of a scene by GET", () => get(`${path}?water_type=IB`, german), "Die Tiefe ist nicht angegeben."],
    ["outside the model", () => post({ ...scene, sun_elevation_deg: 0 }, german), "Bei so tiefer Sonne"],
    ["of another model", () => post({ ...scene, expect_model_version: "1" }, german), "erwartet Version 1"],
    ["of a query string", () => get(`${query}&fields=`, german), "Die Felder, nach denen du fragst"],
    [
      "before the body is read",
      () => post(scene, { ...german, "content-type": "text/plain" }),
      "application/json",
    ],
    [
      "of what is no JSON",
      () =>
        app.inject({
          method: "POST",
          url: path,
          payload: "{",
          headers: { "content-type": "application/json", ...german },
        }),
      "nicht als JSON lesen",
    ],
    ["of a path", () => get("/v1/atenuation", german), "Meinst du"],
    ["of a method", () => app.inject({ method: "DELETE", url: path, headers: german }), "Dieser Pfad nimmt"],
    ["of a form", () => get(query, { ...german, accept: "image/png" }), "Der Accept-Header"],
  ])("%s is in the language that is asked for", async (_, ask, wanted) => {
    const answered = await ask();
    expect(answered.statusCode).toBeGreaterThan(399);
    expect(said(answered)).toEqual(["de", expect.stringContaining(wanted)]);
    expect(String(answered.headers["vary"])).toContain("Accept-Language");
  });

  it("names the languages that there are, in one that the caller reads", async () => {
    const { errors } = (await post({ ...scene, language: "tlh" }, german)).json();
    expect(errors).toEqual([
      expect.objectContaining({
        pointer: "/language",
        code: "not_an_option",
        allowed: `einer von: ${languages.join(", ")}`,
      }),
    ]);
  });

  it("of a long body, which a thread reads, is in the language that the body asks for", async () => {
    const lamps = Array.from({ length: 400 }, () => ({ flux_lm: 1, distance_m: 1, led: "candle" }));
    const answered = await post({ ...scene, language: "de", lamps });
    expect(said(answered)).toEqual(["de", expect.stringContaining("Liste hat 400 Einträge")]);
  });
});
