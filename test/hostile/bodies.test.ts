// Bodies that are meant to hurt. Each is answered with a problem, quickly, and the service goes on.
import { gzipSync } from "node:zlib";
import type { FastifyInstance } from "fastify";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildApp } from "../../services/api/src/build-app.test-support.js";
import { unhurried } from "../../services/api/src/unhurried.test-support.js";
import { document } from "../fuzz/description.js";

let app: FastifyInstance;
beforeAll(async () => {
  app = await buildApp({ limits: { costPerWindow: 0 } });
  await app.ready();
  // Long bodies are read on threads, which take their time to start.
  await post(`{"water_type":"IB","depth_m":5}${" ".repeat(20_000)}`);
});
afterAll(() => app.close());

const limit = unhurried.bodyBytes;
/** Paths of all that takes a body. */
const takers = Object.entries(document.paths).flatMap(([path, methods]) => ("post" in methods ? [path] : []));

async function post(body: string | Buffer, headers: Record<string, string> = {}) {
  const before = process.cpuUsage();
  const response = await app.inject({
    method: "POST",
    url: "/v1/attenuation",
    headers: { "content-type": "application/json", ...headers },
    payload: body,
  });
  const { statusCode: status, headers: answered } = response;
  const parsed = response.json();
  const { user, system } = process.cpuUsage(before);
  return { status, body: parsed, headers: answered, time_ms: (user + system) / 1000 };
}

/** Of processor time, on all threads, as the test machine may be busy; what is quadratic or worse takes far longer. */
const quick_ms = 1500;

it.each(takers)("no body at all is a problem of whoever sent none: %s", async (url) => {
  const response = await app.inject({ method: "POST", url });
  expect(response.statusCode).toBe(400);
  expect(response.json()).toMatchObject({ status: 400, request_id: expect.any(String) });
});

describe("a body", () => {
  const deep = Math.floor(limit / 2) - 10;
  const keys = Array.from({ length: 100_000 }, (_, index) => `"${index.toString(36)}":1`).join(",");
  const someKeys = Array.from({ length: 20_000 }, (_, index) => `"water_typ${index}":1`).join(",");
  const right = '"water_type":"IB","depth_m":5';

  it.each([
    ["nested lists", "[".repeat(deep) + "]".repeat(deep), 413, "body_too_large"],
    ["nested lists without an end", "[".repeat(limit - 10), 413, "body_too_large"],
    ["nested objects", `${'{"a":'.repeat(40_000)}1${"}".repeat(40_000)}`, 413, "body_too_large"],
    [
      "nested lists in a field",
      `{${right},"lamps":${"[".repeat(60_000)}${"]".repeat(60_000)}}`,
      413,
      "body_too_large",
    ],
    ["a hundred thousand names", `{${keys}}`, 413, "body_too_large"],
    [
      "twenty thousand names that are near right ones",
      `{${someKeys.slice(0, limit - 20).replace(/,[^,]*$/, "")}}`,
      400,
      "invalid_scene",
    ],
    ["a name as long as a body", `{"${"a".repeat(limit - 20)}":1}`, 400, "invalid_scene"],
    ["a number of a million digits", `{${right},"iso":${"9".repeat(1_000_000)}}`, 413, "body_too_large"],
    [
      "a number of a quarter of a million digits",
      `{${right},"iso":${"9".repeat(250_000)}}`,
      400,
      "invalid_scene",
    ],
    ["a number of as many decimals", `{${right},"iso":100.${"0".repeat(250_000)}}`, 200, undefined],
    ["a number with a huge exponent", `{${right},"iso":1e${"9".repeat(250_000)}}`, 400, "invalid_scene"],
    ["a text as long as a body", `{${right},"time":"${"2".repeat(250_000)}"}`, 400, "invalid_scene"],
    [
      "a field as a pattern's worst case",
      `{${right},"time":"2026-03-10T10:15:00.${"1".repeat(200_000)}"}`,
      400,
      "invalid_scene",
    ],
    ["lists far beyond their length", `{${right},"lamps":[${"1,".repeat(120_000)}1]}`, 400, "invalid_scene"],
    [
      "backslashes and quotes",
      `{"${"\\\\".repeat(60_000)}":1,"${'\\"'.repeat(60_000)}":2}`,
      400,
      "invalid_scene",
    ],
    ["blanks", `${" ".repeat(limit - 100)}{${right}}`, 200, undefined],
    ["a byte-order mark before it", `\ufeff{${right}}`, 200, undefined],
    ["a byte-order mark within", `{\ufeff${right}}`, 400, "malformed_json"],
    ["a NUL", `{${right}}\u0000`, 400, "malformed_json"],
    ["a NUL in a word", `{"water_type":"IB\\u0000","depth_m":5}`, 400, "invalid_scene"],
    ["a raw NUL in a word", '{"water_type":"IB\u0000","depth_m":5}', 400, "malformed_json"],
    ["__proto__", `{${right},"__proto__":{"iso":100}}`, 400, "invalid_scene"],
    ["__proto__ in a list", `{${right},"lamps":[{"__proto__":{"flux_lm":1}}]}`, 400, "invalid_scene"],
    ["__proto__ in escapes", `{${right},"\\u005f_proto__":{"iso":100}}`, 400, "invalid_scene"],
    ["constructor.prototype", `{${right},"constructor":{"prototype":{"iso":1}}}`, 400, "invalid_scene"],
    [
      "names that every object has",
      `{${right},"toString":1,"hasOwnProperty":1,"valueOf":1}`,
      400,
      "invalid_scene",
    ],
  ] as const)("of %s is answered quickly", async (_, text, status, code) => {
    const answer = await post(text);
    expect(answer.status, JSON.stringify(answer.body).slice(0, 300)).toBe(status);
    expect(answer.body.code).toBe(code);
    expect(answer.body.errors?.length ?? 0).toBeLessThanOrEqual(50);
    expect(answer.time_ms).toBeLessThan(quick_ms);
    expect(({} as Record<string, unknown>)["iso"]).toBeUndefined();
  });

  // RFC 8259, section 4 and RFC 7493, section 2.3: names within an object must be unique.
  it.each([
    [`{${right},"depth_m":50}`, "/depth_m"],
    [`{${right},"depth\\u005fm":50}`, "/depth_m"],
    [
      `{${right},"lamps":[{"flux_lm":1,"distance_m":1},{"flux_lm":1,"distance_m":1,"flux_lm":2}]}`,
      "/lamps/1/flux_lm",
    ],
  ])("that says a name twice, as %s does, is refused with the name", async (text, pointer) => {
    const { status, body } = await post(text);
    expect(status).toBe(400);
    expect(body).toMatchObject({ code: "invalid_scene", errors: [{ pointer, code: "repeated_field" }] });
  });

  // Names that every object has, and one that would give it others, at every level.
  it.each(["constructor", "__proto__", "toString", "hasOwnProperty", "valueOf", "prototype"])(
    "with %s as a name is refused for that name",
    async (name) => {
      const member = `"${name}":{"prototype":{"iso":1}}`;
      for (const [at, text] of [
        ["", `{${right},${member}}`],
        ["/lamps/0", `{${right},"lamps":[{"flux_lm":1000,"distance_m":1,${member}}]}`],
        ["/kit/0", `{${right},"kit":[{"id":"a","item":"lamp",${member}}]}`],
        [
          "/kd_samples/0",
          `{"depth_m":5,"kd_samples":[{"wavelength_nm":450,"kd_per_m":0.1,${member}},{"wavelength_nm":550,"kd_per_m":0.1}]}`,
        ],
      ]) {
        const { status, body } = await post(text ?? "");
        expect(status).toBe(400);
        expect(body.code).toBe("invalid_scene");
        expect(body.errors).toContainEqual(
          expect.objectContaining({ pointer: `${at}/${name}`, code: "unknown_field" }),
        );
      }
      const { statusCode, body } = await app.inject(`/v1/attenuation?water_type=IB&depth_m=5&${name}=1`);
      expect(statusCode).toBe(400);
      expect(JSON.parse(body).errors).toMatchObject([{ pointer: `/${name}`, code: "unknown_field" }]);
    },
  );

  // RFC 8259, section 8.1: JSON between systems is UTF-8.
  it.each([
    ["utf-8", 200],
    ["UTF-8", 200],
    ['"utf-8"', 200],
    ["us-ascii", 200],
    ["utf-16", 415],
    ["utf-16le", 415],
    ["iso-8859-1", 415],
    ['"utf-7"', 415],
    ["", 415],
  ])("declared to be in %s is answered with %i", async (charset, status) => {
    const answer = await post(`{${right}}`, { "content-type": `application/json; charset=${charset}` });
    expect(answer.status).toBe(status);
    if (status === 415) expect(answer.body.detail).toContain("UTF-8");
  });

  it.each([
    ["a byte that UTF-8 never has", [0xff]],
    ["half a character", [0xe2, 0x82]],
    ["an overlong slash", [0xc0, 0xaf]],
    ["a lone surrogate", [0xed, 0xa0, 0x80]],
  ])("with %s is no text", async (_, bytes) => {
    const body = Buffer.concat([
      Buffer.from(`{${right},"time_zone":"`),
      Buffer.from(bytes),
      Buffer.from('"}'),
    ]);
    const answer = await post(body);
    expect(answer.body).toMatchObject({ code: "malformed_json", detail: "The body is not UTF-8." });
  });

  it("in UTF-16 is no text either", async () => {
    expect((await post(Buffer.from(`\ufeff{${right}}`, "utf16le"))).status).toBe(400);
  });

  // RFC 8259, section 8.2: escapes can say lone surrogates, whose effect is unpredictable: here they come back as escapes.
  it("with lone surrogates in escapes is answered in valid UTF-8", async () => {
    const { status, body } = await post(`{${right},"\\ud800":1,"kit":[{"id":"\\udfff","item":"lamp"}]}`);
    expect(status).toBe(400);
    expect(body.errors[0].pointer).toBe("/\ud800");
    const taken = await post(`{${right},"kit":[{"id":"\\udfff","item":"lamp"}]}`);
    expect(taken.status).toBe(200);
    expect(taken.body.scene.kit[0].id).toBe("\udfff");
  });

  // RFC 9110, section 8.4: what is packed must be unpacked, and could be of any size.
  it.each(["gzip", "br", "deflate", "zstd", "gzip, identity", "x"])(
    "in the content encoding %s is refused unread",
    async (encoding) => {
      const bomb = gzipSync(Buffer.alloc(50_000_000, 0x20));
      const { status, body, headers, time_ms } = await post(bomb, { "content-encoding": encoding });
      expect({ status, code: body.code }).toEqual({ status: 415, code: "unsupported_media_type" });
      expect(headers["accept-encoding"]).toBe("identity");
      expect(time_ms).toBeLessThan(quick_ms);
    },
  );

  it("in the encoding identity is taken", async () => {
    expect((await post(`{${right}}`, { "content-encoding": "identity" })).status).toBe(200);
  });

  it.each([
    "text/plain",
    "application/x-www-form-urlencoded",
    "multipart/form-data; boundary=a",
    "application/jsonx",
    "application/json-patch+json",
    "json",
    "application/json, text/plain",
    "*/*",
  ])("of type %s is refused", async (type) => {
    expect((await post(`{${right}}`, { "content-type": type })).status).toBe(415);
  });

  it("may be as long as the limit, and no byte longer", async () => {
    const short = `{${right}}`;
    const full = short + " ".repeat(limit - short.length);
    expect((await post(full)).status).toBe(200);
    expect((await post(`${full} `)).status).toBe(413);
  });
});
