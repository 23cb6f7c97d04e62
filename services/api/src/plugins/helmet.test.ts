import { once } from "node:events";
import { get, type IncomingMessage } from "node:http";
import request from "supertest";
import { describe, expect, it } from "vitest";
import { createApp } from "../app.js";
import { unhurried } from "../unhurried.test-support.js";

it("spends less than 500 bytes on headers, but for what the language takes", async () => {
  const app = await createApp({ limits: unhurried });
  const address = await app.listen({ port: 0 });
  const sent = get(`${address}/v1/attenuation?water_type=IB&depth_m=12`, {
    headers: { "accept-encoding": "gzip" },
    agent: false,
  });
  const [answer]: IncomingMessage[] = await once(sent, "response");
  const rawHeaders = answer?.resume().rawHeaders ?? [];
  await app.close();
  const lines = rawHeaders.map((part, nth) => `${part}${nth % 2 === 0 ? ": " : "\r\n"}`);
  expect(rawHeaders).toContain("content-encoding");
  expect(rawHeaders).toContain("etag");
  const head = `HTTP/1.1 200 OK\r\n${lines.join("")}\r\n`;
  // RFC 9110, sections 8.5 and 12.5.5: which language it is, and that another may be asked for.
  const language = ["content-language: en\r\n", "Accept-Language, "];
  for (const part of language) expect(head).toContain(part);
  const others = language.reduce((rest, part) => rest.replace(part, ""), head);
  expect(Buffer.byteLength(others)).toBeLessThan(500);
});

describe("every answer", () => {
  it.each(["/v1/models", "/v1/attenuation", "/v1/unheard-of", "/health/live", "/openapi.json"])(
    "of %s tells browsers to make nothing of it but data",
    async (path) => {
      const app = await createApp({ limits: unhurried });
      await app.ready();
      const { headers } = await request(app.server).get(path);
      await app.close();
      // Content Security Policy Level 3, section 6.1.3 and 6.4.2.
      expect(headers["content-security-policy"]).toBe("default-src 'none';frame-ancestors 'none'");
      expect(headers["x-content-type-options"]).toBe("nosniff");
      expect(headers).not.toHaveProperty("x-powered-by");
      expect(headers).not.toHaveProperty("server");
      expect(headers).not.toHaveProperty("strict-transport-security");
    },
  );
});
