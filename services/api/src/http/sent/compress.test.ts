import { promisify } from "node:util";
import { brotliDecompressSync, gunzipSync, gzip } from "node:zlib";
import Fastify, { type FastifyInstance, type InjectOptions } from "fastify";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildApp } from "../../build-app.test-support.js";
import { defaultExposure } from "../../config/exposure.js";
import { operations } from "../../operations.js";
import { compressAnswers } from "./compress.js";
import { handleError } from "./errors.js";
import { tag } from "./send-json.js";

let app: FastifyInstance;
beforeAll(async () => {
  app = await buildApp({ exposure: { ...defaultExposure, corsOrigins: "*" } });
});
afterAll(() => app.close());

const ask = (options: InjectOptions, acceptEncoding?: string) =>
  app.inject({
    ...options,
    headers: {
      ...options.headers,
      ...(acceptEncoding === undefined ? {} : { "accept-encoding": acceptEncoding }),
    },
  });
const etags = (...answers: { headers: object }[]) =>
  answers.map(({ headers }) => ("etag" in headers ? headers.etag : undefined));

const everywhere = operations.map(({ path, examples }) => {
  const [first] = examples;
  return { path, scene: first?.scene ?? {} };
});

describe.each(everywhere)("$path", ({ path, scene }) => {
  it("is the same compressed as plain, and over 4 kB less than half of it", async () => {
    const post: InjectOptions = { method: "POST", url: path, payload: scene };
    const [plain, compressed] = [await ask(post), await ask(post, "br, gzip")];
    expect(plain.headers["content-encoding"]).toBeUndefined();
    expect(plain.headers["vary"]).toContain("Accept-Encoding");
    expect(compressed.headers["vary"]).toContain("Accept-Encoding");
    if (plain.rawPayload.length <= 4096) {
      expect(compressed.headers["content-encoding"]).toBeUndefined();
      expect(compressed.rawPayload.equals(plain.rawPayload)).toBe(true);
      return;
    }
    expect(compressed.headers["content-encoding"]).toBe("gzip");
    expect(Number(compressed.headers["content-length"])).toBe(compressed.rawPayload.length);
    expect(gunzipSync(compressed.rawPayload).equals(plain.rawPayload)).toBe(true);
    expect(compressed.rawPayload.length).toBeLessThan(plain.rawPayload.length / 2);
  });
});

describe("each form", () => {
  const url = "/openapi.json";

  it("has an entity tag of its own, and who has it is not sent it again (RFC 9110, section 8.8.3.3)", async () => {
    const answers = [await ask({ url }), await ask({ url }, "gzip"), await ask({ url }, "br")];
    expect(new Set(etags(...answers)).size).toBe(3);
    for (const [etag, acceptEncoding] of etags(...answers).map((tag, nth) => [
      String(tag),
      ["", "gzip", "br"][nth],
    ])) {
      const again = await ask({ url, headers: { "if-none-match": etag } }, acceptEncoding);
      expect([again.statusCode, again.headers["etag"], again.rawPayload.length]).toEqual([304, etag, 0]);
      expect(again.headers["vary"]).toContain("Accept-Encoding");
    }
  });

  it("of what is fixed is the best that is taken, the same each time", async () => {
    const plain = await ask({ url });
    const brotli = await ask({ url }, "gzip, deflate, br");
    expect(brotli.headers["content-encoding"]).toBe("br");
    expect(brotliDecompressSync(brotli.rawPayload).equals(plain.rawPayload)).toBe(true);
    expect(brotli.rawPayload.equals((await ask({ url }, "br")).rawPayload)).toBe(true);
    const gzip = await ask({ url }, "gzip, br;q=0");
    expect(gzip.headers["content-encoding"]).toBe("gzip");
    expect(gunzipSync(gzip.rawPayload).equals(plain.rawPayload)).toBe(true);
    expect(brotli.rawPayload.length).toBeLessThan(gzip.rawPayload.length);
    expect(gzip.rawPayload.length).toBeLessThan(plain.rawPayload.length / 5);
  });

  it("has its own length told to whoever asks for the head alone", async () => {
    const [get, head] = [await ask({ url }, "gzip"), await ask({ url, method: "HEAD" }, "gzip")];
    expect(head.headers["content-length"]).toBe(get.headers["content-length"]);
    expect(head.headers["content-encoding"]).toBe("gzip");
    expect(head.rawPayload.length).toBe(0);
  });
});

it("leaves what is compressed already, and what is small, as it is", async () => {
  const tarball = await ask({ url: "/sdk/latest" }, "br, gzip");
  expect(tarball.headers["content-encoding"]).toBeUndefined();
  expect([...tarball.rawPayload.subarray(0, 2)]).toEqual([0x1f, 0x8b]);
  expect((await ask({ url: "/sdk" }, "br, gzip")).headers["content-encoding"]).toBeUndefined();
});

it("says beside what else an answer varies by", async () => {
  const exposed = await ask({ url: "/v1/models", headers: { origin: "https://shop.example" } }, "gzip");
  expect(exposed.headers["vary"]?.split(/, ?/)).toContain("Accept-Encoding");
});

describe("an answer that is still being compressed when its time is up", () => {
  const slow = "[1,2,3]".repeat(300_000);
  let timedOut: FastifyInstance;
  let passed: unknown[];
  beforeAll(async () => {
    passed = [];
    timedOut = Fastify();
    timedOut.setErrorHandler(handleError);
    compressAnswers(timedOut);
    // Comes after the compression.
    timedOut.addHook("onSend", (_request, _reply, payload, done) => {
      passed.push(payload);
      done(null, payload);
    });
    timedOut.get("/", (_request, reply) => {
      tag(reply, '"a"').type("application/json").send(slow);
      // As the framework does when it is up.
      reply.send(Object.assign(new Error("late"), { code: "FST_ERR_HANDLER_TIMEOUT" }));
    });
    await timedOut.ready();
  });
  afterAll(() => timedOut.close());

  it("gives way to the problem that says so, which has no tag of it, and is not sent behind it", async () => {
    const answer = await timedOut.inject({ url: "/", headers: { "accept-encoding": "gzip" } });
    expect([answer.statusCode, answer.json().code]).toEqual([503, "unavailable"]);
    expect(answer.headers["etag"]).toBeUndefined();
    expect(answer.headers["content-encoding"]).toBeUndefined();
    // Ten times as much, begun later: the other has been compressed by then.
    await promisify(gzip)(Buffer.from(slow.repeat(10)), { level: 1 });
    expect(passed).toEqual([answer.payload]);
  });
});
