// What caches between the service and its callers may keep, over every operation of the description (RFC 9110, RFC 9111).
import type { FastifyInstance, InjectOptions } from "fastify";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildApp } from "../../build-app.test-support.js";
import { defaultExposure } from "../../config/exposure.js";
import { drawable } from "../pictures/draw.js";
import { quizSettings } from "../quiz/quiz.test-support.js";
import { sheetOperations } from "../sheets/index.js";

interface Operation {
  operationId: string;
  tags: string[];
  parameters?: ({ name: string; in: string; example?: unknown } | { $ref: string })[];
  requestBody?: { content: Record<string, { examples: Record<string, { value: object }> }> };
}

let app: FastifyInstance;
let asked: { operation: Operation; request: InjectOptions & { method: "GET" | "POST"; url: string } }[];
beforeAll(async () => {
  const exposure = { ...defaultExposure, corsOrigins: ["https://shop.example"] };
  app = await buildApp({ exposure, quiz: quizSettings });
  const { paths, components } = (await app.inject("/openapi.json")).json();
  asked = Object.entries<Record<string, Operation>>(paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, operation]) => {
      const query = (operation.parameters ?? []).flatMap((given) => {
        const one = "$ref" in given ? components.parameters[given.$ref.split("/").at(-1) ?? ""] : given;
        return one.in === "query" && one.example !== undefined ? [[one.name, String(one.example)]] : [];
      });
      const [first] = Object.values(operation.requestBody?.content["application/json"]?.examples ?? {});
      const url = path.replace("{name}", "not-found");
      return {
        operation,
        request: {
          method: method === "get" ? ("GET" as const) : ("POST" as const),
          url: query.length === 0 ? url : `${url}?${new URLSearchParams(query)}`,
          ...(first === undefined ? {} : { payload: first.value }),
        },
      };
    }),
  );
});
afterAll(() => app.close());

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

  it("may be kept by anyone; reference data a while beyond their time, while they are asked for anew", async () => {
    expect(shared()).toHaveLength(12 + drawable.length);
    for (const { request } of shared()) {
      const { statusCode, headers } = await app.inject(request);
      expect([request.url, statusCode]).toEqual([request.url, 200]);
      const kept = directives(headers["cache-control"]);
      expect(kept).toContainEqual(expect.stringMatching(/^max-age=[1-9]\d*$/));
      for (const refused of ["private", "no-store", "no-cache"]) expect(kept).not.toContain(refused);
      const computed = [...of("Calculations", "GET"), ...of("Pictures", "GET")];
      if (computed.some((one) => one.request.url === request.url)) continue;
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
