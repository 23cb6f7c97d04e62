import type { FastifyInstance } from "fastify";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildApp } from "../../build-app.test-support.js";

let app: FastifyInstance;
beforeAll(async () => {
  app = await buildApp();
  await app.ready();
});
afterAll(() => app.close());

const scene = { water_type: "IB", sun_elevation_deg: 40, min_depth_m: 5, max_depth_m: 18 };
const template = { opening_width_mm: 30, opening_height_mm: 24, sheet_width_mm: 34, sheet_height_mm: 28 };
const post = (url: string, payload: object, headers: Record<string, string> = {}) =>
  app.inject({ method: "POST", url, payload, headers });
const query = (url: string, payload: object, headers: Record<string, string> = {}) =>
  app.inject({ method: "QUERY" as "POST", url, payload, headers });
const errorsOf = (reply: { json: () => { code: string; errors: { pointer: string; code: string }[] } }) => {
  const { code, errors } = reply.json();
  return [code, ...errors.map((error) => `${error.pointer} ${error.code}`)];
};

const sheets = [
  {
    path: "/v1/slates",
    body: scene,
    // What each begins with: ISO 32000-2, 7.5.2; SVG 2; W3C PNG, 5.2.
    types: {
      pdf: ["application/pdf", "%PDF-1."],
      svg: ["image/svg+xml", "<svg "],
      png: ["image/png", "\u0089PNG"],
    },
  },
  {
    path: "/v1/cutting-templates",
    body: template,
    types: { pdf: ["application/pdf", "%PDF-1."], svg: ["image/svg+xml", "<svg "] },
  },
  {
    path: "/v1/grades",
    body: scene,
    types: { clf: ["application/xml", "<?xml "], cdl: ["text/xml", "<?xml "] },
  },
] as const;

describe.each(sheets)("$path", ({ path, body, types }) => {
  it.each(Object.entries(types))(
    "comes as %s, the same by POST and by QUERY",
    async (format, [type, start]) => {
      const url = `${path}?format=${format}`;
      const posted = await post(url, body);
      expect(posted.statusCode).toBe(200);
      expect(posted.headers).toMatchObject({
        "content-type": type,
        "content-disposition": expect.stringContaining(`.${format}"`),
        "content-security-policy": "default-src 'none'; sandbox",
      });
      expect(posted.rawPayload.subarray(0, start.length).toString("latin1")).toBe(start);
      const asked = await query(url, body);
      expect(asked.rawPayload.equals(posted.rawPayload)).toBe(true);
      expect(asked.headers).toMatchObject({
        "cache-control": "private, max-age=300",
        etag: posted.headers["etag"],
      });
    },
  );

  it("comes in its first form where none is asked for", async () => {
    const [first = ""] = Object.keys(types);
    const plain = await post(path, body);
    expect(plain.rawPayload.equals((await post(`${path}?format=${first}`, body)).rawPayload)).toBe(true);
  });

  it("tells whoever has it, and no other, that it is as it was", async () => {
    const urls = [...Object.keys(types).map((format) => `${path}?format=${format}`)];
    const tags = await Promise.all(urls.map(async (url) => String((await post(url, body)).headers["etag"])));
    tags.push(String((await post(path, { ...body, language: "de" })).headers["etag"]));
    expect(new Set(tags).size).toBe(tags.length);
    for (const tag of tags) expect(tag).toMatch(/^"/);
    for (const [i, url] of urls.entries()) {
      expect((await query(url, body, { "if-none-match": tags[i] ?? "" })).statusCode).toBe(304);
      const others = tags.filter((_, k) => k !== i).join(", ");
      expect((await query(url, body, { "if-none-match": others })).statusCode).toBe(200);
    }
  });

  it("says what is wrong with what is asked for", async () => {
    expect(errorsOf(await post(`${path}?format=gif`, body))).toEqual([
      "invalid_query",
      "/format not_an_option",
    ]);
    expect(errorsOf(await post(`${path}?depth_m=12`, body))).toEqual([
      "invalid_query",
      "/depth_m unknown_field",
    ]);
    const [, misspelt] = errorsOf(await post(path, { ...body, fromat: "pdf" }));
    expect(misspelt).toBe("/fromat unknown_field");
    expect((await post(path, body, { accept: "text/html" })).statusCode).toBe(406);
  });
});

it("refuses the slate of a dive that the model has no answer for", async () => {
  const refused = await post("/v1/slates", { visibility_m: 0.4, water_hue: "blue", depth_m: 5 });
  expect(refused.statusCode).toBe(422);
  expect(refused.json()).toMatchObject({ code: "outside_the_model" });
});

describe("a template", () => {
  const errors = async (changed: object) =>
    errorsOf(await post("/v1/cutting-templates", { ...template, ...changed }));

  it("is refused for a sheet that leaves nothing to tape, by each side, with what is allowed", async () => {
    expect(await errors({ sheet_width_mm: 29, sheet_height_mm: 25 })).toEqual([
      "invalid_request",
      "/sheet_width_mm out_of_range",
      "/sheet_height_mm out_of_range",
    ]);
    const refused = await post("/v1/cutting-templates", { ...template, sheet_width_mm: 29 });
    expect(refused.statusCode).toBe(400);
    expect(refused.json().errors[0]).toMatchObject({ allowed: expect.stringContaining("32") });
    expect((await post("/v1/cutting-templates", { ...template, sheet_width_mm: 32 })).statusCode).toBe(200);
  });

  it("is refused for what is no size, or one that no page holds", async () => {
    expect(await errors({ opening_width_mm: -1 })).toEqual([
      "invalid_request",
      "/opening_width_mm out_of_range",
    ]);
    expect(await errors({ sheet_height_mm: 300 })).toEqual([
      "invalid_request",
      "/sheet_height_mm out_of_range",
    ]);
    expect(await errors({ contacts_edge: "below" })).toEqual([
      "invalid_request",
      "/contacts_edge not_an_option",
    ]);
  });
});

describe("a grade", () => {
  it("says what goes in and comes out, where it holds, and that red is lost", async () => {
    const { payload } = await post("/v1/grades", { ...scene, filter_kind: "red", filter_density: 1.2 });
    // The Academy's S-2014-006, version 3, section 5.1.
    expect(payload).toMatch(
      /<ProcessList compCLFversion="3" id="[\w-]+" name="[^"]*12 m, a red filter[^"]*">/,
    );
    expect(payload).toMatch(/<InputDescriptor>[^<]*BT\.709[^<]*<.*<OutputDescriptor>sRGB/s);
    expect(payload).toMatch(/<Description>It holds for footage from \d+ to \d+ m/);
    expect(payload).toContain("stays lost");
  });

  it("is refused as a color decision list where it is a matrix", async () => {
    const refused = await post("/v1/grades?format=cdl", { ...scene, finish: "matched" });
    expect(errorsOf(refused)).toEqual(["invalid_scene", "/finish not_an_option"]);
    expect((await post("/v1/grades?format=clf", { ...scene, finish: "matched" })).payload).toContain(
      "<Matrix",
    );
  });
});
