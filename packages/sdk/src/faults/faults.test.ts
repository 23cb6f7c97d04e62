// What a client meets on a bad line, from a server on the loopback that misbehaves on purpose. Real sockets, fake timers:
// attempts, waits and the class of the error are exact.
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import {
  ConnectionError,
  InternalError,
  InvalidSceneError,
  KeysNotOfferedError,
  ModelVersionMismatchError,
  ProblemError,
  Sunfathom,
  TimeoutError,
  TooManyRequestsError,
  UnavailableError,
  UnexpectedResponseError,
} from "../index.js";
import { ClientClock } from "./client-clock.test-support.js";
import { drive, TIMEOUT_MS } from "./drive.test-support.js";
import * as server from "./fault-server.test-support.js";

const { ok, reset, stall, stallInHead, stallInBody, halfBody, cutJson, html, wrongType, problemWith } =
  server;
const scene = { water_type: "IB", depth_m: 12 } as const;

let faults: server.FaultServer;
let client: Sunfathom;
let clock: ClientClock;

beforeEach(async () => {
  faults = new server.FaultServer();
  client = new Sunfathom({ baseUrl: await faults.listen(), timeoutMs: TIMEOUT_MS, maxRetries: 3 });
  clock = new ClientClock("2026-06-10T08:00:00Z");
  // Chance at its middle: a wait is three fourths of its backoff, 375, 750 and 1500 ms.
  vi.spyOn(Math, "random").mockReturnValue(0.5);
});
afterEach(async () => {
  expect(clock.running).toBe(0);
  clock.end();
  vi.restoreAllMocks();
  await faults.close();
});

const backoff = [375, 750, 1500];
const in7Seconds = "Wed, 10 Jun 2026 08:00:07 GMT";

describe("a call that is safe to repeat", () => {
  it.each<[string, server.Fault[], number, number[], (new (...a: never[]) => Error) | undefined]>([
    ["an answer", [ok], 1, [], undefined],
    ["an answer in dribs that comes in time", [server.inDribs], 1, [], undefined],
    ["a reset, then an answer", [reset, ok], 2, [375], undefined],
    ["resets", [reset], 2, [375], ConnectionError],
    ["half a body, then an answer", [halfBody, ok], 2, [375], undefined],
    ["half bodies", [halfBody], 2, [375], ConnectionError],
    ["a reset and a 503", [reset, problemWith(503, "unavailable"), ok], 3, [375, 750], undefined],
    ["silence", [stall], 4, backoff, TimeoutError],
    ["a head that never ends", [stallInHead], 4, backoff, TimeoutError],
    ["a head that never ends, then an answer", [stallInHead, ok], 2, [375], undefined],
    ["silence after the head", [stallInBody], 4, backoff, TimeoutError],
    ["silence, then an answer", [stall, ok], 2, [375], undefined],
    ["503", [problemWith(503, "unavailable")], 4, backoff, UnavailableError],
    ["503 with seconds", [problemWith(503, "unavailable", { "retry-after": "5" }), ok], 2, [5000], undefined],
    ["429 without a time, then an answer", [problemWith(429, "too_many_requests"), ok], 2, [375], undefined],
    ["429 without a time", [problemWith(429, "too_many_requests")], 4, backoff, TooManyRequestsError],
    [
      "429 with seconds",
      [problemWith(429, "too_many_requests", { "retry-after": "2" }), ok],
      2,
      [2000],
      undefined,
    ],
    [
      "429 with a date",
      [problemWith(429, "a_new_kind", { "retry-after": in7Seconds }), ok],
      2,
      [7000],
      undefined,
    ],
    [
      "429 with nonsense",
      [problemWith(429, "a_new_kind", { "retry-after": "soon" }), ok],
      2,
      [375],
      undefined,
    ],
    [
      "429 for an hour",
      [problemWith(429, "too_many_requests", { "retry-after": "3600" })],
      1,
      [],
      TooManyRequestsError,
    ],
    ["HTML with 502", [html(502), ok], 2, [375], undefined],
    ["HTML with 502 to the end", [html(502)], 4, backoff, UnexpectedResponseError],
    ["HTML with 200", [html(200)], 1, [], UnexpectedResponseError],
    ["HTML with 404", [html(404)], 1, [], UnexpectedResponseError],
    ["JSON under another type", [wrongType], 1, [], UnexpectedResponseError],
    ["JSON under no type", [server.untyped], 1, [], UnexpectedResponseError],
    ["a problem under another type", [server.problemAsPage(400)], 1, [], UnexpectedResponseError],
    [
      "a 503 problem under another type, then an answer",
      [server.problemAsPage(503), ok],
      2,
      [375],
      undefined,
    ],
    ["JSON that breaks off", [cutJson], 1, [], UnexpectedResponseError],
    ["304 that nobody asked for", [server.answerWith(304, {})], 1, [], UnexpectedResponseError],
    ["a failure of the service", [problemWith(500, "internal_error")], 1, [], InternalError],
    ["a refusal", [problemWith(400, "invalid_scene")], 1, [], InvalidSceneError],
    ["a kind of problem of a newer service", [problemWith(410, "a_new_kind")], 1, [], ProblemError],
    ["another model", [problemWith(409, "model_version_mismatch")], 1, [], ModelVersionMismatchError],
  ])("meets %s", async (_what, script, attempts, delays, kind) => {
    faults.faults = script;
    const driven = await drive(faults, clock, () => client.calculations.attenuation(scene).withResponse());
    expect(driven.delays).toEqual(delays);
    expect(faults.seen).toHaveLength(attempts);
    if (kind === undefined) {
      expect(driven.value).toMatchObject({ data: { models: [] }, meta: { source: "service", attempts } });
    } else {
      expect((driven.error as Error).constructor).toBe(kind);
    }
  });

  it("knocks twice where nobody listens", async () => {
    await faults.close();
    const driven = await drive(faults, clock, () => client.reference.models());
    expect(driven.error).toBeInstanceOf(ConnectionError);
    expect(driven.delays).toEqual([375]);
  });

  it("repeats the same request, body and all", async () => {
    faults.faults = [reset, problemWith(503, "unavailable"), ok];
    await drive(faults, clock, () => client.calculations.attenuation(scene));
    expect(faults.seen.map(({ method, url, body }) => ({ method, url, body }))).toEqual(
      Array(3).fill({ method: "POST", url: "/v1/attenuation", body: JSON.stringify(scene) }),
    );
  });

  it("leaves its delay to chance between half of the backoff and all of it", async () => {
    for (const [chance, delay] of [
      [0, 250],
      [0.996, 499],
    ] as const) {
      vi.mocked(Math.random).mockReturnValue(chance);
      faults.faults = [...faults.seen.map(() => ok), html(503), ok];
      const { delays } = await drive(faults, clock, () => client.reference.models());
      expect(delays).toEqual([delay]);
    }
  });

  it("is not repeated where the call says so", async () => {
    faults.faults = [reset];
    const driven = await drive(faults, clock, () => client.reference.models({ maxRetries: 0 }));
    expect(driven.error).toBeInstanceOf(ConnectionError);
    expect(faults.seen).toHaveLength(1);
  });
});

describe("a call that is not safe to repeat", () => {
  const draw = { level: "working", count: 10 } as const;

  it.each<[string, server.Fault, new (...a: never[]) => Error]>([
    ["a reset", reset, ConnectionError],
    ["half a body", halfBody, ConnectionError],
    ["silence", stall, TimeoutError],
    ["a head that never ends", stallInHead, TimeoutError],
    ["429 with seconds", problemWith(429, "too_many_requests", { "retry-after": "2" }), TooManyRequestsError],
    ["503", problemWith(503, "unavailable"), UnavailableError],
    ["HTML with 502", html(502), UnexpectedResponseError],
  ])("meets %s once", async (_what, fault, kind) => {
    faults.faults = [fault, ok];
    const driven = await drive(faults, clock, () => client.quiz.drawItems(draw));
    expect((driven.error as Error).constructor).toBe(kind);
    expect(driven.delays).toEqual([]);
    expect(faults.seen).toHaveLength(1);
  });
});

describe("a call for a file", () => {
  const order = { level: "working", count: 10, title: "Colour" } as const;

  it.each<[string, server.Fault, new (...a: never[]) => Error]>([
    ["half a body", halfBody, ConnectionError],
    ["silence after the head", stallInBody, TimeoutError],
    ["HTML with 200", html(200), UnexpectedResponseError],
    ["a refusal", problemWith(403, "keys_not_offered"), KeysNotOfferedError],
  ])("meets %s", async (_what, fault, kind) => {
    faults.faults = [fault];
    const driven = await drive(faults, clock, () => client.quiz.packItems(order, { maxRetries: 0 }));
    expect((driven.error as Error).constructor).toBe(kind);
    expect(faults.seen).toHaveLength(1);
  });
});
