// Guards batches over HTTP: each line is what the operation alone answers, what is wrong is told where it is, and a caller's budget
// paces a batch and does not refuse it.

import type { ServerResponse } from "node:http";
import { type AddressInfo, connect } from "node:net";
import { gunzipSync } from "node:zlib";
import type { FastifyBaseLogger, FastifyInstance } from "fastify";
import { pino } from "pino";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { createApp } from "../../app.js";
import { buildApp } from "../../build-app.test-support.js";
import { eventually } from "../../eventually.test-support.js";
import { operations } from "../../operations.js";
import { unhurried } from "../../unhurried.test-support.js";

let app: FastifyInstance;
beforeAll(async () => {
  app = await buildApp();
  await app.ready();
});
afterAll(() => app.close());

interface Line {
  kind: string;
  id?: string;
  at?: number[];
  answer?: object;
  problem?: { code: string; errors: { pointer: string }[] };
  summary?: { items: number; answers: number; problems: number; left: number; ended_by?: string };
}

const headers = { "content-type": "application/json", "x-request-id": "one-and-the-same" };

const post = (url: string, body: unknown, more: object = {}, to = app) =>
  to.inject({ method: "POST", url, headers: { ...headers, ...more }, payload: JSON.stringify(body) });

/** The lines of a batch, each as it was sent, the summary apart. */
async function run(body: unknown, { query = "", more = {}, to = app } = {}) {
  const { statusCode, payload } = await post(`/v1/batches${query}`, body, more, to);
  expect(statusCode, payload).toBe(200);
  const texts = payload.split("\n");
  expect(texts.pop()).toBe("");
  const last: Line = JSON.parse(texts.pop() ?? "");
  expect(last.kind).toBe("summary");
  const lines = texts.filter((text) => text !== '{"kind":"pause"}');
  return { lines, summary: last.summary, byId: new Map(lines.map((text) => [idOf(text), text])) };
}

const idOf = (text: string): string => (JSON.parse(text) as Line).id ?? "";

/** The line that an answer alone would be. */
async function single(item: { id: string; operation: string; scene: object }, query = "", more = {}) {
  const { statusCode, payload } = await post(`/v1/${item.operation}${query}`, item.scene, more);
  const kind = statusCode === 200 ? "answer" : "problem";
  return `{"kind":"${kind}","id":${JSON.stringify(item.id)},"${kind}":${payload}}`;
}

/** Every example of every calculation, in each way to say it, and scenes that are wrong, too far or of another model. */
const all = operations.flatMap(({ name, examples }) => [
  ...examples.map(({ scene }, nth) => ({ id: `${name} ${nth}`, operation: name, scene })),
  {
    id: `${name} "de"`,
    operation: name,
    scene: { ...examples[0]?.scene, language: "de", units: "imperial" },
  },
  { id: `${name} wrong`, operation: name, scene: { ...examples[0]?.scene, dept_m: 3, language: "fr" } },
  {
    id: `${name} of old`,
    operation: name,
    scene: { ...examples[0]?.scene, expect_model_version: "2001.1.1" },
  },
]);

it("answers n scenes as n calls do, to the byte", async () => {
  const { byId, lines, summary } = await run({ items: all });
  expect(lines).toHaveLength(all.length);
  for (const item of all) expect(byId.get(item.id)).toBe(await single(item));
  expect(summary).toMatchObject({ items: all.length, left: 0 });
}, 120_000);

it.each([
  ["?fields=brief", {}, {}],
  ["?fields=scene,sources", { "accept-language": "es" }, {}],
  ["", {}, { language: "de", units: "imperial" }],
])("asks for %s with %o and %o for all of them", async (query, more, own) => {
  const items = all.filter(({ id }) => /attenuation|filter-mounting/.test(id));
  const named = query.replace("sources", "model.sources");
  const { byId } = await run({ ...own, items }, { query: named, more });
  for (const item of items)
    expect(byId.get(item.id)).toBe(await single({ ...item, scene: { ...own, ...item.scene } }, named, more));
});

describe("a scene with what differs", () => {
  const scene = { water_hue: "blue", depth_m: 30, wind_speed_m_s: 3 };
  const vary = [
    { depth_m: [12, 8], visibility_m: [25, 12] },
    { sun_elevation_deg: [20, 40, 5] },
    { cloud_oktas: [0, 8] },
  ];

  it("is the product of its entries, fields of one entry together, the last entry fastest", async () => {
    const product = [0, 1].flatMap((a) =>
      [0, 1, 2].flatMap((b) =>
        [0, 1].map((c) => ({
          at: [a, b, c],
          scene: {
            ...scene,
            depth_m: vary[0]?.depth_m?.[a],
            visibility_m: vary[0]?.visibility_m?.[a],
            sun_elevation_deg: vary[1]?.sun_elevation_deg?.[b],
            cloud_oktas: vary[2]?.cloud_oktas?.[c],
          },
        })),
      ),
    );
    const { byId, lines } = await run({ operation: "attenuation", scene, vary });
    expect(lines).toHaveLength(12);
    for (const { at, scene: one } of product) {
      const id = at.join("-");
      const alone = await single({ id, operation: "attenuation", scene: one });
      expect(byId.get(id)?.replace(`,"at":[${at}]`, "")).toBe(alone);
      expect(JSON.parse(byId.get(id) ?? "").at).toEqual(at);
    }
    expect([...byId.values()].filter((text) => text.includes('"kind":"problem"'))).toHaveLength(4);
  });

  it("comes in the order of its product where one works alone", async () => {
    const alone = await buildApp({ limits: { workers: 1 } });
    const { lines } = await run({ operation: "attenuation", scene, vary }, { to: alone });
    const places = lines.map((text) => (JSON.parse(text) as Line).at ?? []);
    expect(places).toEqual([...places].sort((a, b) => a.join().localeCompare(b.join())));
    await alone.close();
  });

  it("takes a scene that has nothing, and 5000 of them", async () => {
    const depths = Array.from({ length: 5000 }, (_, nth) => nth / 1000);
    const { summary } = await run({ operation: "attenuation", scene: {}, vary: [{ depth_m: depths }] });
    expect(summary).toMatchObject({ items: 5000, answers: 0, problems: 5000 });
  }, 60_000);
});

it("answers 999 right scenes beside one that is wrong", async () => {
  const items = Array.from({ length: 1000 }, (_, nth) => ({
    id: `dive ${nth}`,
    operation: "attenuation",
    scene: { water_type: "IB", [nth === 617 ? "dept_m" : "depth_m"]: 1 + nth / 100 },
  }));
  const { lines, byId, summary } = await run({ items }, { query: "?fields=depths.depth_m" });
  expect(summary).toMatchObject({ items: 1000, answers: 999, problems: 1, left: 0 });
  expect(lines).toHaveLength(1000);
  const { problem } = JSON.parse(byId.get("dive 617") ?? "") as Line;
  expect(problem?.errors.map(({ pointer }) => pointer)).toContain("/dept_m");
  for (const [nth, { id }] of items.entries())
    if (nth !== 617)
      expect(JSON.parse(byId.get(id) ?? "").answer.depths[0].depth_m).toBe(Math.round(100 + nth) / 100);
}, 60_000);

it("comes in gzip where that is taken, line by line", async () => {
  const body = { operation: "attenuation", scene: { water_type: "IB" }, vary: [{ depth_m: [3, 6, 9] }] };
  const { rawPayload, headers: told } = await post("/v1/batches", body, { "accept-encoding": "gzip" });
  expect(told).toMatchObject({
    "content-encoding": "gzip",
    "content-type": "application/jsonl; charset=utf-8",
  });
  const { lines } = await run(body);
  const unpacked = gunzipSync(rawPayload).toString().split("\n");
  expect(unpacked.slice(0, -2).sort()).toEqual([...lines].sort());
});

const one = { operation: "attenuation", scene: {}, vary: [{ depth_m: [1] }] };
const item = { id: "a", operation: "attenuation", scene: {} };

it.each<[string, unknown, string[]]>([
  ["nothing", {}, [" batch_one_way"]],
  ["a list", [], [" wrong_type"]],
  ["no items", { items: [] }, ["/items wrong_length"]],
  ["1001 items", { items: Array.from({ length: 1001 }, () => item) }, ["/items wrong_length"]],
  ["an id twice", { items: [item, { ...item, id: "b" }, item] }, ["/items/2/id batch_ids_unique"]],
  ["no id", { items: [{ operation: "attenuation", scene: {} }] }, ["/items/0/id missing_field"]],
  ["an id that is none", { items: [{ ...item, id: 7 }] }, ["/items/0/id wrong_type"]],
  [
    "another operation",
    { items: [{ ...item, operation: "decompression" }] },
    ["/items/0/operation not_an_option"],
  ],
  ["a scene that is none", { items: [{ ...item, scene: [[[]]] }] }, ["/items/0/scene wrong_type"]],
  ["both ways", { items: [item], vary: one.vary }, ["/vary batch_one_way"]],
  ["half a way", { vary: one.vary }, ["/operation missing_field", "/scene missing_field"]],
  ["nothing that differs", { ...one, vary: [] }, ["/vary wrong_length"]],
  ["an entry without a field", { ...one, vary: [{}] }, ["/vary/0 vary_names_a_field"]],
  ["a field without values", { ...one, vary: [{ depth_m: [] }] }, ["/vary/0/depth_m wrong_length"]],
  ["a value that is no list", { ...one, vary: [{ depth_m: { 0: 1 } }] }, ["/vary/0/depth_m wrong_type"]],
  ["a field that there is not", { ...one, vary: [{ dept_m: [1] }] }, ["/vary/0/dept_m unknown_field"]],
  ["another's field", { ...one, operation: "filter-mounting" }, ["/vary/0/depth_m unknown_field"]],
  [
    "lists of two lengths",
    { ...one, vary: [{ depth_m: [1, 2], visibility_m: [9] }] },
    ["/vary/0/visibility_m vary_lengths_equal"],
  ],
  [
    "a field twice",
    { ...one, vary: [{ depth_m: [1] }, { depth_m: [2] }] },
    ["/vary/1/depth_m vary_field_once"],
  ],
  [
    "too many of them",
    { ...one, vary: [{ depth_m: Array(72).fill(1) }, { cloud_oktas: Array(70).fill(1) }] },
    ["/vary batch_size"],
  ],
  ["what nobody knows", { ...one, webhook: "x" }, ["/webhook unknown_field"]],
  [
    "prototypes",
    JSON.parse('{"operation":"attenuation","scene":{},"vary":[{"__proto__":[1]}]}'),
    ["/vary/0/__proto__ unknown_field"],
  ],
])("refuses %s by its field", async (_, body, expected) => {
  const { statusCode, payload } = await post("/v1/batches", body);
  const { code, errors } = JSON.parse(payload);
  expect([statusCode, code]).toEqual([400, "invalid_request"]);
  expect(errors.map((error: { pointer: string; code: string }) => `${error.pointer} ${error.code}`)).toEqual(
    expected,
  );
  for (const { message, allowed } of errors)
    expect([message, allowed].every((text) => text.length > 3)).toBe(true);
});

it("refuses names of fields that not every answer of it has, other parameters and another model", async () => {
  const items = [item, { ...item, id: "b", operation: "filter-mounting" }];
  const names = await post("/v1/batches?fields=depths.depth_m", { items });
  expect(names.json()).toMatchObject({ code: "invalid_query", errors: [{ pointer: "/fields" }] });
  const stray = await post("/v1/batches?depth_m=3", { items });
  expect(stray.json()).toMatchObject({ code: "invalid_query", errors: [{ pointer: "/depth_m" }] });
  const old = await post("/v1/batches", { items, expect_model_version: "2001.1.1" });
  expect([old.statusCode, old.json().code]).toEqual([409, "model_version_mismatch"]);
  const other = await post("/v1/batches", { items }, { accept: "text/html" });
  expect([other.statusCode, other.json().code]).toEqual([406, "not_acceptable"]);
});

it("takes a body of 4 MB, and no larger one", async () => {
  const long = { ...item, scene: { water_type: "IB", depth_m: "9".repeat(3.9 * 1024 * 1024) } };
  const { summary } = await run({ items: [long] });
  expect(summary).toMatchObject({ problems: 1 });
  const longer = { ...item, scene: { depth_m: "9".repeat(4.1 * 1024 * 1024) } };
  expect((await post("/v1/batches", { items: [longer] })).statusCode).toBe(413);
}, 60_000);

// What a scene alone may not be, one of many must not be either: read again for each of its turns, it would take seconds and all memory.
it("refuses a scene that is longer than a body alone may be, in its own line", async () => {
  const scene = { water_type: "IB", depth_m: 10 };
  const long = { ...scene, note: "a".repeat(unhurried.bodyBytes) };
  const items = [
    { id: "long", operation: "attenuation", scene: long },
    { id: "right", operation: "attenuation", scene },
  ];
  const { byId, summary } = await run({ items });
  const alone = await single(items[0] as (typeof items)[0]);
  expect(JSON.parse(byId.get("long") ?? "")).toEqual(JSON.parse(alone));
  expect(summary).toMatchObject({ answers: 1, problems: 1, left: 0 });
  const varied = await run({ operation: "attenuation", scene: long, vary: [{ depth_m: [1, 2, 3] }] });
  expect(varied.summary).toMatchObject({ answers: 0, problems: 3, left: 0 });
  const half = "a".repeat(unhurried.bodyBytes / 2);
  const parts = [{ time_zone: [half], local_time: [half], depth_m: [1] }, { iso: [100, 200] }];
  const pieced = await run({ operation: "attenuation", scene: { water_type: "IB" }, vary: parts });
  expect(pieced.summary).toMatchObject({ answers: 0, problems: 2, left: 0 });
}, 60_000);

// RFC 8259, section 9: a reader may limit how deep a text goes. As text again it would take more stack than a thread has.
it.each([
  ["items", (deep: string) => `{"items":[{"id":"a","operation":"attenuation","scene":{"x":${deep}}}]}`],
  ["scene", (deep: string) => `{"operation":"attenuation","scene":{"x":${deep}},"vary":[{"depth_m":[1]}]}`],
  ["vary", (deep: string) => `{"operation":"attenuation","scene":{},"vary":[{"depth_m":[${deep}]}]}`],
])(
  "refuses %s that go without end into each other",
  async (_, bodyOf) => {
    const ask = (deep: string) =>
      app.inject({ method: "POST", url: "/v1/batches", headers, payload: bodyOf(deep) });
    for (const deep of [
      `${"[".repeat(50_000)}${"]".repeat(50_000)}`,
      `${'{"":'.repeat(800_000)}0${"}".repeat(800_000)}`,
      "[".repeat(4_000_000),
    ]) {
      const { statusCode, payload } = await ask(deep);
      expect([statusCode, JSON.parse(payload).code]).toEqual([413, "body_too_large"]);
    }
    expect((await ask(`${"[".repeat(50)}${"]".repeat(50)}`)).statusCode).toBe(200);
  },
  60_000,
);

// As long as somebody takes some bytes now and then, a batch would keep its place, its scenes and its lines for hours.
it("ends with its time, however slowly it is read", async () => {
  const limits = { ...unhurried, costPerWindow: 0, batchLongest_ms: 15_000, sendTimeout_ms: 1000 };
  const own = await createApp({ limits });
  await own.listen({ port: 0 });
  // Lines of some 100 kB, far more of them than wait between two sockets.
  const wrong = Object.fromEntries(Array.from({ length: 60 }, (_, n) => [`no_such_field_${n}`, n]));
  const iso = Array.from({ length: 2000 }, (_, n) => 100 + n);
  const body = JSON.stringify({ operation: "attenuation", scene: wrong, vary: [{ iso }] });
  const { port } = own.server.address() as AddressInfo;
  const ended = new Promise<boolean>((resolve) =>
    own.server.once("request", (_, response) =>
      response.once("close", () => resolve(response.writableFinished)),
    ),
  );
  const socket = connect(port, "127.0.0.1");
  socket.on("error", () => {}).on("data", () => socket.pause());
  const sip = setInterval(() => socket.resume(), 500);
  socket.write(
    `POST /v1/batches HTTP/1.1\r\nHost: a\r\nContent-Type: application/json\r\nContent-Length: ${body.length}\r\n\r\n${body}`,
  );
  expect(await ended).toBe(false);
  clearInterval(sip);
  socket.destroy();
  await own.close();
}, 90_000);

it("is no failure where its reader leaves before the first line", async () => {
  const lines: { level: number; msg: string }[] = [];
  const logger: FastifyBaseLogger = pino({}, { write: (line: string) => lines.push(JSON.parse(line)) });
  // The first slice waits for what it costs, and nothing is sent before.
  const own = await buildApp({ logger, limits: { costPerWindow: 100, window_s: 3600 } });
  await own.listen({ port: 0 });
  const { port } = own.server.address() as AddressInfo;
  const body = JSON.stringify({ ...one, scene: { water_type: "IB" } });
  const socket = connect(port, "127.0.0.1");
  const begun = new Promise<ServerResponse>((resolve) =>
    own.server.once("request", (_, response) => resolve(response)),
  );
  socket.write(
    `POST /v1/batches HTTP/1.1\r\nHost: a\r\nContent-Type: application/json\r\nAccept-Encoding: gzip\r\nContent-Length: ${body.length}\r\n\r\n${body}`,
  );
  const response = await begun;
  await eventually(() => expect(String(response.getHeader("content-type"))).toContain("jsonl"));
  socket.destroy();
  const left = "connection closed before the whole answer had left";
  await eventually(() => expect(lines).toContainEqual(expect.objectContaining({ msg: left })));
  await new Promise((resolve) => setTimeout(resolve, 1000));
  expect(lines.filter(({ level }) => level >= 50)).toEqual([]);
  await own.close();
}, 30_000);
