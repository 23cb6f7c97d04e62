// What no client would send, byte by byte. Each connection ends in bounded time, each answer is a problem, and nothing
// that came in leaves as a header or as a line of the log.
import { Writable } from "node:stream";
import type { FastifyInstance } from "fastify";
import { pino } from "pino";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { createApp } from "../../services/api/src/app.js";
import { unhurried } from "../../services/api/src/unhurried.test-support.js";
import { head, portOf, raw } from "./wire.js";

const lines: string[] = [];
const log = new Writable({
  write(chunk, _, done) {
    lines.push(String(chunk));
    done();
  },
});

let app: FastifyInstance;
let port: number;
beforeAll(async () => {
  const limits = {
    ...unhurried,
    costPerWindow: 0,
    headersTimeout_ms: 300,
    requestTimeout_ms: 500,
    timeoutCheck_ms: 50,
  };
  app = await createApp({ logger: pino({ base: null }, log), limits });
  await app.listen({ host: "127.0.0.1", port: 0 });
  port = portOf(app);
});
afterAll(() => app.close());

const scene = '{"water_type":"IB","depth_m":5}';
const json = "Content-Type: application/json";
const get = (target: string, ...more: string[]) =>
  [`GET ${target} HTTP/1.1`, "Host: a", "Connection: close", ...more, "", ""].join("\r\n");

describe("a length", () => {
  it("that is right is right", async () => {
    const { statuses } = await raw(port, [head(json, `Content-Length: ${scene.length}`), scene]);
    expect(statuses).toEqual([200]);
  });

  // RFC 9112, section 6: message framing. What follows the body is no body.
  it("too short cuts the body, and the rest is no second request", async () => {
    const { statuses } = await raw(port, [head(json, `Content-Length: ${scene.length - 1}`), scene]);
    expect(statuses[0]).toBe(400);
    expect(statuses.slice(1).every((status) => status === 400)).toBe(true);
  });

  it("too long is waited for, but not for ever", async () => {
    const { statuses, time_ms } = await raw(port, [head(json, `Content-Length: ${scene.length + 1}`), scene]);
    expect(statuses).toEqual([408]);
    expect(time_ms).toBeLessThan(3000);
  });

  // RFC 9112, section 6.3: differing lengths, or a length beside a transfer coding, may hide a second request.
  it.each([
    ["twice", [`Content-Length: ${scene.length}`, `Content-Length: ${scene.length + 1}`]],
    ["in a list", [`Content-Length: ${scene.length}, ${scene.length}`]],
    ["beside chunks", [`Content-Length: ${scene.length}`, "Transfer-Encoding: chunked"]],
    ["negative", ["Content-Length: -1"]],
    ["with a sign", [`Content-Length: +${scene.length}`]],
    ["in hexadecimal", ["Content-Length: 0x1f"]],
    ["beyond all numbers", [`Content-Length: ${"9".repeat(40)}`]],
    ["of an unknown coding", ["Transfer-Encoding: xchunked"]],
    ["of chunks that are not last", ["Transfer-Encoding: chunked, gzip"]],
  ])("given %s is malformed", async (_, framing) => {
    const { statuses, text } = await raw(port, [head(json, ...framing), scene]);
    expect(statuses[0]).toBe(400);
    expect(text).toContain("application/problem+json");
    expect(text).not.toContain("HTTP/1.1 200");
  });

  it("may be left to chunks, up to the limit of a body", async () => {
    const chunk = (text: string) => `${text.length.toString(16)}\r\n${text}\r\n`;
    const chunked = head(json, "Transfer-Encoding: chunked");
    expect((await raw(port, [chunked, chunk(scene), "0\r\n\r\n"])).statuses).toEqual([200]);
    const blanks = chunk(" ".repeat(64 * 1024)).repeat(4);
    const parts = [chunked, chunk(scene), blanks, "0\r\n\r\n"];
    expect((await raw(port, parts)).statuses).toEqual([413]);
    expect((await raw(port, [chunked, "FFFFFFFFFFFFFFFFFF\r\n"])).statuses).toEqual([400]);
    expect((await raw(port, [chunked, "zz\r\n"])).statuses).toEqual([400]);
  });

  it("promised beyond the limit is refused before the body comes", async () => {
    const { statuses } = await raw(port, [head(json, `Content-Length: ${unhurried.bodyBytes + 1}`)]);
    expect(statuses).toEqual([413]);
  });
});

describe("a request line or header", () => {
  it.each([
    ["the preface of HTTP/2", "PRI * HTTP/2.0\r\n\r\nSM\r\n\r\n"],
    ["TLS", Buffer.from([0x16, 0x03, 0x01, 0x02, 0x00, 0x01, 0x00, 0x01])],
    ["no host", "GET /v1/models HTTP/1.1\r\nConnection: close\r\n\r\n"],
    ["two hosts", get("/v1/models", "Host: b")],
    ["an expectation that nobody knows", get("/v1/models", "Expect: x")],
    ["an escape that cannot be decoded", get("/problems/%zz")],
    ["an unknown method", "FETCH /v1/models HTTP/1.1\r\nHost: a\r\n\r\n"],
    ["a blank in a name", get("/v1/models", "X A: b")],
    ["a folded value", get("/v1/models", "X-A: b\r\n c")],
    ["a NUL in a value", get("/v1/models", "X-A: b\u0000c")],
    ["a bare carriage return", get("/v1/models", "X-A: b\rc")],
    ["a blank in the target", get("/v1/models x")],
    ["nothing but line ends", `${"\r\n".repeat(50)}X\r\n\r\n`],
  ])("with %s is malformed", async (_, bytes) => {
    const { statuses } = await raw(port, [bytes]);
    expect(statuses).toEqual([400]);
  });

  it.each([
    "/v1/models%00",
    "/v1/%2e%2e/models",
    "/../etc/passwd",
    "//evil.example/",
    "/v1//models",
    "/%c0%af",
    "/docs/static/../../package.json",
    "/docs/static/%2e%2e%2fpackage.json",
  ])("for %s leads nowhere", async (target) => {
    const { statuses, text } = await raw(port, [get(target)]);
    expect([400, 404]).toContain(statuses[0]);
    expect(text).not.toMatch(/root:|"dependencies"/);
  });

  it("may have a URL as long as the limit, and no character longer", async () => {
    const url = "/v1/attenuation?water_type=IB&depth_m=5";
    const padded = (length: number) => `${url}${"&".repeat(length - url.length)}`;
    expect((await raw(port, [get(padded(4096))])).statuses).toEqual([200]);
    expect((await raw(port, [get(padded(4097))])).statuses).toEqual([414]);
  });

  it("may take as much as the limit together, and not more", async () => {
    const padded = (bytes: number) =>
      get("/v1/models", `X-Long: ${"a".repeat(bytes - get("/v1/models", "X-Long: ").length)}`);
    // Node's parser counts no line ends and separators, so the edge lies within their sum above the limit.
    expect((await raw(port, [padded(unhurried.headerBytes)])).statuses).toEqual([200]);
    expect((await raw(port, [padded(unhurried.headerBytes + 64)])).statuses).toEqual([431]);
  });
});

describe("what comes in", () => {
  it.each([
    ["X-Request-Id: a b"],
    ["X-Request-Id: caf\u00e9"],
    [`X-Request-Id: ${"a".repeat(65)}`],
    ['X-Request-Id: {"level":60}'],
    ["X-Request-Id: a\r\nX-Request-Id: b"],
    ["X-Request-Id: <script>alert(1)</script>"],
  ])("as %j is not repeated as a header", async (header) => {
    const { statuses, text } = await raw(port, [get("/v1/models", header)]);
    expect(statuses).toEqual([200]);
    expect(text).toMatch(/^x-request-id: [\w-]{16}\r$/m);
  });

  it("in escapes stays in the JSON of a body", async () => {
    const injected = "%0d%0aSet-Cookie:%20a=b%0d%0a%0d%0a%3Cscript%3E";
    for (const target of [
      `/v1/attenuation?${injected}=1`,
      `/v1/attenuation?water_type=${injected}`,
      `/${injected}`,
      `/problems/${injected}`,
    ]) {
      const { text } = await raw(port, [get(target)]);
      const [headers = "", body = ""] = text.split("\r\n\r\n");
      expect(headers).not.toMatch(/^set-cookie/im);
      expect(headers).toMatch(/^content-type: application\/problem\+json/im);
      expect(() => JSON.parse(body)).not.toThrow();
    }
  });

  it("is not in the log, whose every line is one JSON object", async () => {
    lines.length = 0;
    const evil = '\\n{"level":60,"msg":"forged"}';
    await raw(port, [
      get(
        `/v1/attenuation?%0a%7B%22level%22:60%7D=forged`,
        `User-Agent: ${evil}`,
        `X-Request-Id: ${evil}`,
        `Referer: ${evil}`,
      ),
    ]);
    await raw(port, [get("/forged%0a%7B%22level%22:60%7D")]);
    const body = '{"forged\\nname": 1}';
    await raw(port, [head(json, `Content-Length: ${body.length}`), body]);
    const written = lines.join("");
    expect(written).not.toContain("forged");
    const records = written
      .trimEnd()
      .split("\n")
      .map((line) => JSON.parse(line));
    expect(records).toHaveLength(3);
    expect(records.every(({ level }) => level === 30)).toBe(true);
  });
});

it("the service is well after all this", async () => {
  expect((await raw(port, [head(json, `Content-Length: ${scene.length}`), scene])).statuses).toEqual([200]);
});
