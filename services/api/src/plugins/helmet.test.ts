import { once } from "node:events";
import { Agent, get, type IncomingMessage } from "node:http";
import { modelVersion } from "@sunfathom/answers";
import request from "supertest";
import { describe, expect, it } from "vitest";
import { buildApp } from "../build-app.test-support.js";

it.each([
  ["a usual answer", ""],
  ["one that is kept as long as the model stands", `&expect_model_version=${modelVersion}`],
])("spends less than 500 bytes on all headers of %s", async (_, more) => {
  const app = await buildApp();
  // As most callers are connected: that takes headers, too.
  const agent = new Agent({ keepAlive: true });
  const address = await app.listen({ port: 0 });
  const sent = get(`${address}/v1/attenuation?water_type=IB&depth_m=12${more}`, {
    headers: { "accept-encoding": "gzip" },
    agent,
  });
  const [answer]: IncomingMessage[] = await once(sent, "response");
  const rawHeaders = answer?.resume().rawHeaders ?? [];
  agent.destroy();
  await app.close();
  const lines = rawHeaders.map((part, nth) => `${part}${nth % 2 === 0 ? ": " : "\r\n"}`);
  expect(rawHeaders).toContain("content-encoding");
  expect(rawHeaders).toContain("etag");
  const head = `HTTP/1.1 200 OK\r\n${lines.join("")}\r\n`;
  // RFC 9110, sections 8.5 and 12.5.5: which language it is, and that another may be asked for.
  expect(head).toContain("content-language: en\r\n");
  expect(head).toContain("vary: Accept-Language, Accept-Encoding\r\n");
  expect(Buffer.byteLength(head)).toBeLessThan(500);
});

describe("every answer", () => {
  it.each(["/v1/models", "/v1/attenuation", "/v1/unheard-of", "/health/live", "/openapi.json"])(
    "of %s tells browsers to make nothing of it but data",
    async (path) => {
      const app = await buildApp();
      await app.ready();
      const { headers } = await request(app.server).get(path);
      await app.close();
      // Content Security Policy Level 3, section 6.1.3.
      expect(headers["content-security-policy"]).toBe("default-src 'none'");
      expect(headers["x-content-type-options"]).toBe("nosniff");
      expect(headers).not.toHaveProperty("x-powered-by");
      expect(headers).not.toHaveProperty("server");
      expect(headers).not.toHaveProperty("strict-transport-security");
    },
  );
});
