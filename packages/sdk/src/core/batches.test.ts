// Guards how the client reads a batch that goes wrong on its way.
import { expect, it } from "vitest";
import {
  AbortedError,
  BatchEndedError,
  ConnectionError,
  OutsideTheModelError,
  Sunfathom,
  TimeoutError,
  TooManyRequestsError,
  UnexpectedResponseError,
} from "../index.js";

const batch = {
  operation: "attenuation",
  scene: { water_type: "IB" },
  vary: [{ depth_m: [5, 10] }],
} as const;

const answer = '{"kind":"answer","id":"0","at":[0],"answer":{"depths":[]}}\n';
const pause = '{"kind":"pause"}\n';
const summary = (left: number) =>
  `${JSON.stringify({ kind: "summary", summary: { items: 2, answers: 2 - left, problems: 0, left, cost: 8 } })}\n`;

/** A client whose service sends these pieces, and then ends, or goes on for ever. */
function clientOf(
  pieces: string[],
  { goesOn = false, type = "application/jsonl; charset=utf-8", ...options } = {},
) {
  const seen: { url: string; init: RequestInit }[] = [];
  let isCancelled = false;
  const fetch = (url: string, init: RequestInit) => {
    seen.push({ url, init });
    const bytes = new TextEncoder();
    const body = new ReadableStream<Uint8Array>({
      start(controller) {
        for (const piece of pieces) controller.enqueue(bytes.encode(piece));
        if (!goesOn) controller.close();
        init.signal?.addEventListener("abort", () => {
          isCancelled = true;
          try {
            controller.error(new Error("aborted"));
          } catch {
            // It has ended.
          }
        });
      },
    });
    return Promise.resolve(new Response(body, { headers: { "content-type": type } }));
  };
  const client = new Sunfathom({ baseUrl: "https://light.example.org", fetch, ...options });
  return { client, seen, isCancelled: () => isCancelled };
}

async function idsOf(results: AsyncIterable<{ id: string }>): Promise<string[]> {
  const ids: string[] = [];
  for await (const { id } of results) ids.push(id);
  return ids;
}

it("puts lines together however they are cut, and passes over pauses", async () => {
  const text = answer + pause + answer.replace('"0"', '"größer"') + summary(0);
  const { client, seen } = clientOf([...text].map((letter) => letter));
  expect(await idsOf(client.batches.run(batch, { requestId: "r1", fields: "brief" }))).toEqual([
    "0",
    "größer",
  ]);
  expect(seen[0]?.url).toBe("https://light.example.org/v1/batches?fields=brief");
  expect(seen[0]?.init.headers).toMatchObject({
    accept: "application/jsonl, application/problem+json",
    "x-request-id": "r1",
  });
});

it("makes an error of its own kind of a scene's problem", async () => {
  const problem = {
    type: "/problems/outside-the-model",
    title: "t",
    status: 422,
    code: "outside_the_model",
    detail: "d",
    request_id: "r9",
    errors: [],
  };
  const { client } = clientOf([`${JSON.stringify({ kind: "problem", id: "x", problem })}\n`, summary(0)]);
  for await (const item of client.batches.run(batch)) {
    expect(item.problem).toBeInstanceOf(OutsideTheModelError);
    expect([item.problem?.status, item.problem?.requestId, item.problem?.detail]).toEqual([422, "r9", "d"]);
  }
});

it("says where a stream was cut", async () => {
  for (const pieces of [[answer], [answer, summary(0).slice(0, 20)], []])
    await expect(idsOf(clientOf(pieces).client.batches.run(batch))).rejects.toBeInstanceOf(ConnectionError);
});

it("says where scenes are left", async () => {
  const error = await idsOf(clientOf([answer, summary(1)]).client.batches.run(batch)).catch((cause) => cause);
  expect(error).toBeInstanceOf(BatchEndedError);
  expect(error.summary.left).toBe(1);
});

it("gives what the summary says to who asks for it", async () => {
  const results = clientOf([answer, summary(0)]).client.batches.run(batch);
  await results.next();
  expect(await results.next()).toEqual({ done: true, value: expect.objectContaining({ items: 2, left: 0 }) });
});

it("refuses what is no such stream", async () => {
  const line = clientOf(["<html>\n"]);
  await expect(idsOf(line.client.batches.run(batch))).rejects.toBeInstanceOf(UnexpectedResponseError);
  const page = clientOf(["<html>\n"], { type: "text/html" });
  await expect(idsOf(page.client.batches.run(batch))).rejects.toBeInstanceOf(UnexpectedResponseError);
});

it("stops the stream where the loop is left, where it is aborted, and where nothing comes", async () => {
  const left = clientOf([answer], { goesOn: true });
  for await (const _ of left.client.batches.run(batch)) break;
  expect(left.isCancelled()).toBe(true);
  const controller = new AbortController();
  const aborted = clientOf([answer], { goesOn: true });
  const results = aborted.client.batches.run(batch, { signal: controller.signal });
  await results.next();
  const next = results.next();
  controller.abort("enough");
  await expect(next).rejects.toBeInstanceOf(AbortedError);
  expect(aborted.isCancelled()).toBe(true);
  const silent = clientOf([answer], { goesOn: true });
  await expect(idsOf(silent.client.batches.run(batch, { timeoutMs: 30 }))).rejects.toBeInstanceOf(
    TimeoutError,
  );
});

it("asks for the client's version of the model, and again where there are too many", async () => {
  const busy = {
    type: "/problems/too-many-requests",
    title: "t",
    status: 429,
    code: "too_many_requests",
    detail: "d",
  };
  let calls = 0;
  const bodies: unknown[] = [];
  const fetch = (_: string, init: RequestInit) => {
    calls += 1;
    bodies.push(JSON.parse(String(init.body)));
    const problem = Response.json(busy, {
      status: 429,
      headers: { "content-type": "application/problem+json", "retry-after": "0" },
    });
    const lines = new Response(answer + summary(0), { headers: { "content-type": "application/jsonl" } });
    return Promise.resolve(calls < 2 ? problem : lines);
  };
  const client = new Sunfathom({
    baseUrl: "https://light.example.org",
    fetch,
    expectModelVersion: "2026.1.1",
  });
  expect(await idsOf(client.batches.run(batch))).toEqual(["0"]);
  expect([calls, bodies[0]]).toEqual([2, { ...batch, expect_model_version: "2026.1.1" }]);
  calls = 0;
  await expect(idsOf(client.batches.run(batch, { maxRetries: 0 }))).rejects.toBeInstanceOf(
    TooManyRequestsError,
  );
});
