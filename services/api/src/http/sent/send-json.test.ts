import Fastify from "fastify";
import { expect, it } from "vitest";
import { sendJson, tag } from "./send-json.js";

// RFC 8259, section 11: the media type; the bytes are the caller's own, with each of its noughts.
it.each(['{"a":1.50}', Buffer.from('{"a":1.50}')])("%s is sent as it stands, as JSON", async (json) => {
  const app = Fastify();
  app.get("/", (_, reply) => sendJson(reply, json));
  const { statusCode, headers, body } = await app.inject("/");
  expect([statusCode, body]).toEqual([200, '{"a":1.50}']);
  expect(headers["content-type"]).toBe("application/json");
  expect(headers["content-length"]).toBe("10");
  expect(headers).not.toHaveProperty("etag");
});

// RFC 9111, section 5.2.2.4: no-cache lets a cache keep the answer, and asks it to check before it is used again.
it("an answer with a tag may be kept, and must be asked about", async () => {
  const app = Fastify();
  app.get("/", (_, reply) => sendJson(tag(reply, '"one"'), "{}"));
  const { headers } = await app.inject("/");
  expect(headers).toMatchObject({ etag: '"one"', "cache-control": "no-cache" });
});
