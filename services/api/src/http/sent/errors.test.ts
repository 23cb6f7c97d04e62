import { Writable } from "node:stream";
import Fastify from "fastify";
import { pino } from "pino";
import { describe, expect, it } from "vitest";
import { takeOnlyJson } from "../asked/json-body.js";
import { Turns } from "../sockets/turns.js";
import { handleError } from "./errors.js";

/** The answer to an error that a handler throws, and what is logged of it. */
async function answerTo(error: Error) {
  const logged: { level: number; err?: { message: string } }[] = [];
  const stream = new Writable({
    write(line, _, done) {
      logged.push(JSON.parse(String(line)));
      done();
    },
  });
  const app = Fastify({ loggerInstance: pino({ level: "warn" }, stream) });
  app.setErrorHandler(handleError);
  app.get("/", () => {
    throw error;
  });
  const { statusCode, headers, body } = await app.inject("/");
  return { status: statusCode, headers, body: JSON.parse(body), logged };
}

const withCode = (code: string, statusCode?: number) =>
  Object.assign(new Error("secret"), { code }, statusCode === undefined ? {} : { statusCode });

describe("an error of the framework", () => {
  // Its codes and their statuses: https://fastify.dev/docs/latest/Reference/Errors/
  it.each([
    ["FST_ERR_CTP_BODY_TOO_LARGE", 413, 413, "body_too_large"],
    ["FST_ERR_CTP_INVALID_MEDIA_TYPE", 415, 415, "unsupported_media_type"],
    ["FST_ERR_CTP_EMPTY_TYPE", 415, 415, "unsupported_media_type"],
    ["FST_ERR_CTP_INVALID_CONTENT_LENGTH", 400, 400, "malformed_request"],
    ["FST_ERR_BAD_URL", 400, 400, "malformed_request"],
    ["FST_ERR_HANDLER_TIMEOUT", 503, 503, "unavailable"],
  ])("%s (%s) is answered with %i %s", async (code, framework, status, problem) => {
    const answer = await answerTo(withCode(code, framework));
    expect(answer.status).toBe(status);
    expect(answer.body.code).toBe(problem);
    expect(answer.body.detail).toMatch(/^[A-Z].+\.$/);
    expect(answer.logged).toEqual([]);
    expect(answer.headers["retry-after"]).toBe(status === 503 ? "1" : undefined);
    expect(answer.headers["accept"]).toBe(status === 415 ? "application/json" : undefined);
  });
});

describe("an error that is not known", () => {
  it.each([
    [400, 400, "malformed_request"],
    [403, 404, "not_found"],
    [404, 404, "not_found"],
    [418, 400, "malformed_request"],
    [499, 400, "malformed_request"],
  ])("of status %i is the caller's doing: %i %s", async (given, status, code) => {
    const answer = await answerTo(withCode("OTHER", given));
    expect([answer.status, answer.body.code]).toEqual([status, code]);
    expect(answer.body.detail).toMatch(/^[A-Z].+\.$/);
    expect(answer.logged).toEqual([]);
  });

  it.each([500, 503, 399, undefined])(
    "of status %s is logged, and says nothing of the inside",
    async (given) => {
      const answer = await answerTo(withCode("OTHER", given));
      expect([answer.status, answer.body.code]).toEqual([500, "internal_error"]);
      expect(answer.body.detail).toMatch(/^[A-Z].+\.$/);
      expect(JSON.stringify(answer.body)).not.toContain("secret");
      expect(answer.logged).toMatchObject([{ level: 50, msg: "request failed", err: { message: "secret" } }]);
    },
  );
});

it("a body beyond the limit is told with the limit that the service has by itself", async () => {
  const app = Fastify({ bodyLimit: 256 * 1024 });
  app.decorateRequest("client", "");
  takeOnlyJson(app, {
    turns: new Turns(),
    away: () => Promise.reject(new Error("There are no threads.")),
    owe: () => {},
  });
  app.setErrorHandler(handleError);
  app.post("/", () => "taken");
  const send = (bytes: number) =>
    app.inject({
      method: "POST",
      url: "/",
      headers: { "content-type": "application/json" },
      payload: `"${"a".repeat(bytes - 2)}"`,
    });
  expect((await send(256 * 1024)).statusCode).toBe(200);
  const reply = await send(256 * 1024 + 1);
  expect(reply.statusCode).toBe(413);
  expect(reply.json().detail).toContain("256 kB");
});
