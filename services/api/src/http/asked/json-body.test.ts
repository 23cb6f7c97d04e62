import Fastify from "fastify";
import { describe, expect, it } from "vitest";
import { handleError } from "../sent/errors.js";
import { Turns } from "../sockets/turns.js";
import { takeOnlyJson } from "./json-body.js";

function ask(payload: string | Buffer, headers: Record<string, string> = {}, url = "/scene") {
  const app = Fastify();
  app.decorateRequest("client", "");
  takeOnlyJson(app, {
    turns: new Turns(),
    away: () => Promise.reject(new Error("There are no threads.")),
    owe: () => {},
  });
  app.setErrorHandler(handleError);
  app.post("/scene", ({ body }) => ({ body }));
  app.post("/request", { config: { refusesBodyAs: "invalid_request" } }, ({ body }) => ({ body }));
  return app.inject({
    method: "POST",
    url,
    headers: { "content-type": "application/json", ...headers },
    payload,
  });
}

describe("a body", () => {
  it.each([
    ['{"a":[1,"\u00e9\u{1F41A}"]}', { a: [1, "\u00e9\u{1F41A}"] }],
    // RFC 8259, section 8.1: a reader may ignore a byte-order mark.
    ["\ufeff[]", []],
    ["null", null],
    ['"text"', "text"],
  ])("of %j is read", async (text, value) => {
    const { statusCode, body } = await ask(text);
    expect([statusCode, JSON.parse(body)]).toEqual([200, { body: value }]);
  });

  it.each([
    ["nothing", "", "empty"],
    ["half a list", "[1,", "JSON"],
    ["half an object with a name twice", '{"a":1,"a":2', "JSON"],
    // Table 3-7 of the Unicode Standard: no UTF-8 sequence begins with 0xFF, nor ends after its first byte 0xC3.
    ["bytes that are not UTF-8", Buffer.of(0x22, 0xff, 0x22), "UTF-8"],
    ["half a character", Buffer.of(0x22, 0xc3, 0x22), "UTF-8"],
  ])("of %s is malformed, and its problem names what", async (_what, payload, named) => {
    const reply = await ask(payload);
    expect(reply.statusCode).toBe(400);
    expect(reply.json().code).toBe("malformed_json");
    expect(reply.json().detail).toContain(named);
  });

  // RFC 7493, section 2.3: names within an object are unique.
  it.each([
    ["/scene", "invalid_scene"],
    ["/request", "invalid_request"],
  ])("at %s with a name that stands twice is a problem %s of that place", async (url, code) => {
    const reply = await ask('{"lamps":[{"cct_k":1},{"cct_k":2,"cct_k":3}]}', {}, url);
    expect(reply.statusCode).toBe(400);
    expect(reply.json()).toMatchObject({
      code,
      detail: "/lamps/1/cct_k: The name stands twice in its object.",
      errors: [{ pointer: "/lamps/1/cct_k", code: "repeated_field", allowed: "each name once" }],
    });
  });

  it.each(["text/plain", "application/jsonx", "application/problem+json"])(
    "of type %s is refused, with the type that is taken",
    async (type) => {
      const reply = await ask("{}", { "content-type": type });
      expect(reply.statusCode).toBe(415);
      expect(reply.json().code).toBe("unsupported_media_type");
      expect(reply.headers["accept"]).toBe("application/json");
    },
  );
});

// RFC 9110, section 8.4.1: codings have no case; section 15.5.16: a 415 may say in Accept-Encoding what would be taken.
describe("a content encoding", () => {
  it.each(["identity", " Identity ", ""])("of %j is none", async (encoding) => {
    const reply = await ask("{}", { "content-encoding": encoding });
    expect(reply.statusCode).toBe(200);
    expect(reply.headers).not.toHaveProperty("accept-encoding");
  });

  it.each(["gzip", "GZIP", "identity, gzip", "br"])("of %j is refused", async (encoding) => {
    const reply = await ask("{}", { "content-encoding": encoding });
    expect(reply.statusCode).toBe(415);
    expect(reply.json()).toMatchObject({
      code: "unsupported_media_type",
      detail: expect.stringContaining("content encoding"),
    });
    expect(reply.headers["accept-encoding"]).toBe("identity");
  });
});
