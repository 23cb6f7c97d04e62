// Methods, and operations that read what is fixed.
import { METHODS } from "node:http";
import type { FastifyInstance } from "fastify";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type Answer, ask, check, startApp } from "./ask.js";
import { calculations, type Operation, operations } from "./description.js";
import { queryOf } from "./query.js";

let app: FastifyInstance;
beforeAll(async () => {
  app = await startApp();
});
afterAll(() => app.close());

const paths = [...new Set(operations.map(({ path }) => path))];

/** A path with its parameters filled in. */
const filled = (path: string) => path.replace("{name}", "invalid-scene");

describe.each(paths)("%s", (path) => {
  const here = operations.filter((operation) => operation.path === path);
  const described = here.map(({ method }) => method);
  // OpenAPI 3.1 cannot describe QUERY (RFC 10008), which calculations, sheets and trips take as they take POST.
  const isCalculation = calculations.some(({ post, get }) => post.path === path && get !== undefined);
  const isSheet = here.some(({ parameters }) => parameters.some(({ name }) => name === "format"));
  const isTrip = here.some(({ tag }) => tag === "Trips");
  const more = [
    ...(described.includes("GET") ? ["HEAD"] : []),
    ...(isCalculation || isSheet || isTrip ? ["QUERY"] : []),
  ];
  const allowed = [...described, "OPTIONS", ...more].sort();

  // RFC 9110, section 9.3.7.
  it("answers OPTIONS with the methods that it takes", async () => {
    const { statusCode, headers, payload } = await app.inject({ method: "OPTIONS", url: filled(path) });
    expect([statusCode, headers["allow"], payload]).toEqual([204, allowed.join(", "), ""]);
  });

  // RFC 9110, section 15.5.6: a 405 carries Allow with the methods that the resource takes.
  it("answers every other method with 405 and Allow", async () => {
    const [operation] = here;
    if (operation === undefined) throw new Error("no operation");
    // CONNECT is for proxies: Node hands it to nobody.
    for (const method of METHODS.filter((name) => name !== "CONNECT" && !allowed.includes(name))) {
      const response = await app.inject({ method: method as "GET", url: filled(path) });
      const { statusCode: status, headers, payload: text } = response;
      expect(`${method} ${status}`).toBe(`${method} 405`);
      expect(headers["allow"]).toBe(allowed.join(", "));
      const answer: Answer = { status, headers, text, body: JSON.parse(text) };
      const asDefault: Operation = {
        ...operation,
        responses: { ...operation.responses, 405: operation.responses["default"] ?? {} },
      };
      check(asDefault, answer);
    }
  });
});

const fixed = operations.filter(({ method, parameters }) => method === "GET" && parameters.length === 0);

describe.each(fixed)("GET $path", (operation) => {
  const here = { ...operation, path: filled(operation.path) };

  it("answers as described, again the same, and 304 to who has it", async () => {
    const first = await ask(app, here, {});
    expect(first.status).toBe(200);
    const again = await ask(app, here, {});
    expect(again.text).toBe(first.text);
    const etag = first.headers["etag"];
    if (operation.responses["304"] === undefined) return;
    const known = await ask(app, here, { headers: { "if-none-match": String(etag) } });
    expect(known.status).toBe(304);
    expect((await ask(app, here, { headers: { "if-none-match": '"other"' } })).status).toBe(200);
  });

  it("refuses any query", async () => {
    const { status, body } = await ask(app, here, { query: "page=2" });
    expect(status).toBe(400);
    expect(body).toMatchObject({ code: "invalid_query", errors: [{ pointer: "/page" }] });
  });
});

describe("a scene that the caller has the answer to", () => {
  it("costs no computing", async () => {
    const [dearest] = calculations.filter(({ post }) => post.path.endsWith("/dive-advice"));
    if (dearest?.get === undefined) throw new Error("no such operation");
    const { get } = dearest;
    const query = queryOf({ water_type: "IB", min_depth_m: 2, max_depth_m: 31 });
    const started = performance.now();
    const { headers } = await ask(app, get, { query });
    const computing_ms = performance.now() - started;
    const times: number[] = [];
    for (let round = 0; round < 7; round += 1) {
      const from = performance.now();
      const { status } = await ask(app, get, {
        query,
        headers: { "if-none-match": String(headers["etag"]) },
      });
      times.push(performance.now() - from);
      expect(status).toBe(304);
    }
    expect(times.sort((a, b) => a - b)[3]).toBeLessThan(computing_ms / 4);
  });
});
