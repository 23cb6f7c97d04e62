// What caches between the service and its callers may keep, and how long its headers are, over every operation of the description
// (RFC 9110, RFC 9111).
import { once } from "node:events";
import { Agent, type IncomingMessage, request } from "node:http";
import { modelVersion } from "@sunfathom/answers";
import type { FastifyInstance } from "fastify";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildApp } from "./build-app.test-support.js";
import { defaultExposure } from "./config/exposure.js";
import { type AskedOperation, everyOperation } from "./every-operation.test-support.js";
import { drawable } from "./features/pictures/draw.js";
import { instructorKey, quizSettings } from "./features/quiz/quiz.test-support.js";
import { sheetOperations } from "./features/sheets/index.js";
import { tripOperations } from "./features/trips/index.js";

// Longer than most.
const origin = "https://booking.gannet-stair-divers.example";
/** As most callers are connected. */
const agent = new Agent({ keepAlive: true });
let app: FastifyInstance;
let address: string;
let asked: AskedOperation[];
beforeAll(async () => {
  app = await buildApp({ exposure: { ...defaultExposure, corsOrigins: [origin] }, quiz: quizSettings });
  asked = await everyOperation(app);
  address = await app.listen({ port: 0 });
});
afterAll(async () => {
  agent.destroy();
  await app.close();
});

const of = (tag: string, method: string) =>
  asked.filter(({ operation, request }) => operation.tags.includes(tag) && request.method === method);
const directives = (header: unknown) => String(header).split(/,\s*/);

it("looks at every operation", () =>
  expect(asked).toHaveLength(30 + 2 * drawable.length + sheetOperations.length));

describe("what is the same for all who ask by GET", () => {
  const shared = () => [
    ...of("Calculations", "GET"),
    ...of("Pictures", "GET"),
    ...of("Reference data", "GET"),
    ...asked.filter(({ operation }) => operation.operationId === "readProblemKind"),
  ];

  it("may be kept by anyone; pictures and reference data a while beyond their time, while they are asked for anew", async () => {
    expect(shared()).toHaveLength(12 + drawable.length);
    for (const { request } of shared()) {
      const { statusCode, headers } = await app.inject(request);
      expect([request.url, statusCode]).toEqual([request.url, 200]);
      const kept = directives(headers["cache-control"]);
      expect(kept).toContainEqual(expect.stringMatching(/^max-age=[1-9]\d*$/));
      for (const refused of ["private", "no-store", "no-cache"]) expect(kept).not.toContain(refused);
      if (of("Calculations", "GET").some((one) => one.request.url === request.url)) continue;
      // RFC 5861.
      expect(kept).toContain("public");
      expect(kept).toContainEqual(expect.stringMatching(/^stale-while-revalidate=[1-9]\d*$/));
    }
  });

  it("varies with the form that is taken and, where pages of some origins may read it, with the origin", async () => {
    for (const { request } of shared()) {
      const { headers } = await app.inject(request);
      expect(directives(headers["vary"])).toEqual(expect.arrayContaining(["Accept-Encoding", "Origin"]));
    }
  });

  // RFC 9110, section 15.4.5: what a 200 would have said of caching, and no content.
  it.each(["", "gzip"])(
    "is confirmed without content to who has it, packed as %j",
    async (encoding) => {
      for (const { request } of shared()) {
        const headers = { "accept-encoding": encoding };
        const first = await app.inject({ ...request, headers });
        const etag = String(first.headers["etag"]);
        expect(etag).toMatch(/^"[\w-]+"$/);
        const again = await app.inject({ ...request, headers: { ...headers, "if-none-match": etag } });
        expect([request.url, again.statusCode, again.payload]).toEqual([request.url, 304, ""]);
        for (const name of ["etag", "cache-control", "vary"])
          expect([name, again.headers[name]]).toEqual([name, first.headers[name]]);
      }
    },
    60_000,
  );

  it("lasts as long as the model where the URL names it", async () => {
    for (const { request } of of("Calculations", "GET")) {
      const { headers, payload } = await app.inject(request);
      const { version } = JSON.parse(payload).model;
      const url = `${request.url}&expect_model_version=${version}`;
      const pinned = await app.inject({ method: "GET", url });
      const seconds = (header: unknown) => Number(/max-age=(\d+)/.exec(String(header))?.[1]);
      expect(seconds(pinned.headers["cache-control"])).toBeGreaterThan(
        100 * seconds(headers["cache-control"]),
      );
      const other = await app.inject({ method: "GET", url: `${request.url}&expect_model_version=1` });
      expect([other.statusCode, other.headers["cache-control"]]).toEqual([409, "no-store"]);
    }
  });
});

describe("what is asked by POST", () => {
  it("has the tag that it has by GET, one of its own for some of its fields, and is kept by nobody unasked", async () => {
    const gets = of("Calculations", "GET");
    for (const [nth, { request }] of of("Calculations", "POST").entries()) {
      const { headers, statusCode } = await app.inject(request);
      expect([request.url, statusCode]).toEqual([request.url, 200]);
      expect(headers["cache-control"]).toBe("no-cache");
      const byGet = await app.inject(gets[nth]?.request ?? "");
      expect(headers["etag"]).toBe(byGet.headers["etag"]);
      const brief = await app.inject({ ...request, url: `${request.url}?fields=brief` });
      expect(brief.headers["etag"]).toMatch(/^"[\w-]+"$/);
      expect(brief.headers["etag"]).not.toBe(headers["etag"]);
    }
  });

  it("of a quiz is kept by nobody at all", async () => {
    for (const { request } of of("Quiz", "POST")) {
      const { headers } = await app.inject(request);
      expect([request.url, headers["cache-control"]]).toEqual([request.url, "no-store"]);
      expect(headers).not.toHaveProperty("etag");
    }
  });
});

// Nobody keeps what comes by POST for others (RFC 9110, section 9.3.3); what comes by QUERY they may (RFC 10008, section 2).
it("what names guests and what they own is kept by nobody but the caller", async () => {
  const own = [...of("Trips", "POST"), ...of("Sheets", "POST")];
  expect(own).toHaveLength(tripOperations.length + sheetOperations.length);
  for (const { request } of own) {
    const { statusCode, headers } = await app.inject({ ...request, method: "QUERY" as "POST" });
    expect([request.url, statusCode]).toEqual([request.url, 200]);
    expect(directives(headers["cache-control"])).toEqual(["private", "max-age=300"]);
  }
}, 60_000);

it("what is true at this moment alone, or wrong, is kept by nobody", async () => {
  for (const url of [
    "/health/live",
    "/health/ready",
    "/v1/attenuation?depth_m=x",
    "/v1/water-types?a=1",
    "/nowhere",
  ])
    expect([url, (await app.inject(url)).headers["cache-control"]]).toEqual([url, "no-store"]);
});

/** Bytes of what comes before the body, as they came: status line, headers, the empty line. */
async function bytesOfHead(
  { method, url, payload }: AskedOperation["request"],
  from: Record<string, string>,
) {
  const sent = request(`${address}${url}`, {
    method,
    agent,
    headers: {
      ...(payload === undefined ? {} : { "content-type": "application/json" }),
      "accept-encoding": "gzip, br",
      authorization: `Bearer ${instructorKey}`,
      ...from,
    },
  });
  sent.end(payload === undefined ? undefined : JSON.stringify(payload));
  const [answer]: IncomingMessage[] = await once(sent, "response");
  if (answer === undefined) throw new Error(`${url} was not answered.`);
  await once(answer.resume(), "end");
  const { rawHeaders, statusCode, statusMessage } = answer;
  const lines = rawHeaders.map((part, nth) => `${part}${nth % 2 === 0 ? ": " : "\r\n"}`);
  return Buffer.byteLength(`HTTP/1.1 ${statusCode} ${statusMessage}\r\n${lines.join("")}\r\n`);
}

// A page that may read an answer is told so, in some 100 bytes with a name as long as this one.
it.each([
  ["a page that may read it", 550, { origin }],
  ["a program", 500, {}],
] as const)(
  "every answer to %s has less than %i bytes of headers",
  async (_, most, from) => {
    const long: [number, string][] = [];
    for (const { operation, request } of asked) {
      // The answer that others may keep longest says so in the most bytes.
      const isPinned = operation.tags.includes("Calculations") && request.method === "GET";
      const url = isPinned ? `${request.url}&expect_model_version=${modelVersion}` : request.url;
      const bytes = await bytesOfHead({ ...request, url }, from);
      if (bytes >= most) long.push([bytes, `${request.method} ${url.split("?")[0]}`]);
    }
    expect(long).toEqual([]);
  },
  60_000,
);
