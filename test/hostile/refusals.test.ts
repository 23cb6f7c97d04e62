// Whatever is refused is refused alike: with a problem, the request's id, the headers that every answer has, and counted.
import type { FastifyInstance } from "fastify";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { createApp } from "../../services/api/src/app.js";
import { defaultExposure } from "../../services/api/src/config/exposure.js";
import { unhurried } from "../../services/api/src/unhurried.test-support.js";
import { portOf, raw } from "./wire.js";

let app: FastifyInstance;
let port: number;
beforeAll(async () => {
  // A budget that does not fill up meanwhile.
  const limits = { ...unhurried, window_s: 86_400 };
  app = await createApp({ limits, exposure: { ...defaultExposure, corsOrigins: "*" } });
  await app.listen({ host: "127.0.0.1", port: 0 });
  port = portOf(app);
});
afterAll(() => app.close());

const request = (line: string, ...headers: string[]) =>
  [`${line} HTTP/1.1`, "Origin: https://shop.example", "Connection: close", ...headers, "", ""].join("\r\n");
const get = (target: string, ...headers: string[]) => request(`GET ${target}`, "Host: a", ...headers);
const post = (...headers: string[]) =>
  `${request("POST /v1/attenuation", "Host: a", "Content-Length: 2", ...headers)}{}`;

async function ask(bytes: string) {
  const { text, statuses } = await raw(port, [bytes]);
  const [head = "", body = ""] = text.split("\r\n\r\n");
  const headers = new Map(
    head
      .split("\r\n")
      .slice(1)
      .map((line) => [line.slice(0, line.indexOf(":")).toLowerCase(), line.slice(line.indexOf(":") + 2)]),
  );
  return { status: statuses[0], headers, body };
}

/** What is left of the client's budget, as an answer says. */
const left = (headers: Map<string, string>) =>
  Number(/;r=(\d+)/.exec(headers.get("ratelimit") ?? "")?.[1] ?? Number.NaN);

const refused: [string, number, string][] = [
  ["an unknown path", 404, get("/v1/nowhere")],
  ["a method that a path does not take", 405, request("DELETE /v1/models", "Host: a")],
  ["a form that there is not", 406, get("/v1/models", "Accept: text/csv")],
  ["a body beyond the limit", 413, post("Content-Type: application/json").replace("h: 2", "h: 300000")],
  ["a URL beyond the limit", 414, get(`/v1/models?${"a".repeat(5000)}`)],
  ["a body of another type", 415, post("Content-Type: text/plain")],
  ["a body of another encoding", 415, post("Content-Type: application/json; charset=utf-16")],
  ["a body that is packed", 415, post("Content-Type: application/json", "Content-Encoding: gzip")],
  ["a body without a type", 415, post()],
  ["an escape that cannot be decoded", 400, get("/problems/%zz")],
  ["a name far longer than any", 404, get(`/problems/${"a".repeat(500)}`)],
  ["more headers than any client sends", 431, get("/v1/models", ...Array(200).fill("X-A: b"))],
  // Node.js reads no more than 2000, so that the length of the body would be one of those that nobody sees.
  [
    "a length behind 2000 headers",
    431,
    `${request("POST /v1/attenuation", "Host: a", ...Array(2100).fill("a:"), "Content-Length: 2")}{}`,
  ],
  ["no Host", 400, request("GET /v1/models")],
  ["two Hosts", 400, get("/v1/models", "Host: b")],
  ["an expectation that nobody knows", 400, get("/v1/models", "Expect: x")],
  ["OPTIONS of an unknown path", 404, request("OPTIONS /v1/nowhere", "Host: a")],
  ["a JSON text that is none", 400, post("Content-Type: application/json").replace("{}", "{]")],
];

describe("a request with", () => {
  it.each(refused)("%s gets a problem with %i, all headers, and is counted", async (_, status, bytes) => {
    const before = left((await ask(get("/v1/models"))).headers);
    const answer = await ask(bytes);
    expect(answer.status).toBe(status);
    const { headers } = answer;
    expect(headers.get("content-type")).toBe("application/problem+json; charset=utf-8");
    expect(JSON.parse(answer.body)).toMatchObject({ status, request_id: headers.get("x-request-id") });
    expect(headers.get("x-request-id")).toMatch(/^[\w-]{8,}$/);
    expect(headers.get("access-control-allow-origin")).toBe("*");
    expect(headers.get("x-content-type-options")).toBe("nosniff");
    expect(headers.get("content-security-policy")).toContain("default-src 'none'");
    expect(left(headers)).toBeLessThan(before);
  });

  it("OPTIONS is answered with the methods there are, with or without an origin, and counted", async () => {
    for (const more of [[], ["Access-Control-Request-Method: POST"]])
      for (const bytes of [
        request("OPTIONS /v1/attenuation", "Host: a", ...more),
        request("OPTIONS /v1/attenuation", "Host: a", ...more).replace(/Origin.*\r\n/, ""),
      ]) {
        const before = left((await ask(get("/v1/models"))).headers);
        const { status, headers, body } = await ask(bytes);
        expect([status, body, headers.get("allow")]).toEqual([204, "", "GET, HEAD, OPTIONS, POST, QUERY"]);
        expect(headers.get("x-request-id")).toMatch(/^[\w-]{8,}$/);
        expect(headers.get("x-content-type-options")).toBe("nosniff");
        expect(left(headers)).toBeLessThan(before);
      }
    const { status, headers } = await ask(request("OPTIONS *", "Host: a"));
    expect([status, headers.get("allow")]).toEqual([204, "GET, HEAD, OPTIONS, POST, QUERY"]);
  });

  it.each([
    ["no HTTP in it", 400, "x\r\n\r\n"],
    ["too many headers", 431, get("/v1/models", `X-A: ${"a".repeat(20_000)}`)],
    ["a tunnel in mind", 405, "CONNECT a:443 HTTP/1.1\r\nHost: a\r\n\r\n"],
  ])("%s gets a problem with %i and the headers against misuse", async (_, status, bytes) => {
    const answer = await ask(bytes);
    expect(answer.status).toBe(status);
    expect(JSON.parse(answer.body)).toMatchObject({ status, request_id: answer.headers.get("x-request-id") });
    expect(answer.headers.get("x-content-type-options")).toBe("nosniff");
    expect(answer.headers.get("content-security-policy")).toContain("default-src 'none'");
    expect(answer.headers.get("cache-control")).toBe("no-store");
    expect(answer.headers.get("connection")).toBe("close");
  });
});
