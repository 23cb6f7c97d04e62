// Guards who may have batches: nobody's is refused for its cost, and nobody has more of them at a time than he may.
import { request as ask } from "node:http";
import type { AddressInfo } from "node:net";
import type { FastifyInstance } from "fastify";
import { afterEach, expect, it } from "vitest";
import { buildApp } from "../../build-app.test-support.js";
import type { Limits } from "../../config/limits.js";

let app: FastifyInstance;
afterEach(() => app.close());

const start = async (limits: Partial<Limits>): Promise<void> => {
  app = await buildApp({ limits: { ...limits } });
  await app.listen({ host: "127.0.0.1", port: 0 });
};

const post = (body: object) =>
  app.inject({
    method: "POST",
    url: "/v1/batches",
    headers: { "content-type": "application/json" },
    payload: JSON.stringify(body),
  });

const depths = (count: number) => ({
  operation: "attenuation",
  scene: { water_type: "IB" },
  vary: [{ depth_m: Array.from({ length: count }, (_, nth) => 1 + nth / 10) }],
});

const summaryOf = (payload: string) => JSON.parse(payload.trim().split("\n").at(-1) ?? "").summary;

it("answers a batch that costs many budgets", async () => {
  await start({ costPerWindow: 100, window_s: 1 });
  const { statusCode, payload } = await post(depths(150));
  expect(statusCode).toBe(200);
  expect(summaryOf(payload)).toMatchObject({ answers: 150, left: 0 });
  expect(summaryOf(payload).cost).toBeGreaterThan(200);
}, 60_000);

it("lets a batch wait at the door where other requests are refused", async () => {
  await start({ costPerWindow: 5, window_s: 2 });
  const burst = Array.from({ length: 20 }, () => app.inject("/v1/models"));
  const batch = post(depths(1));
  const statuses = (await Promise.all(burst)).map((answer) => answer.statusCode);
  expect(statuses.at(-1)).toBe(429);
  const { statusCode, payload } = await batch;
  expect([statusCode, summaryOf(payload).answers]).toEqual([200, 1]);
}, 60_000);

/** A batch that is read no further than its head. */
const unread = () =>
  new Promise<{ status: number; leave: () => void }>((resolve, reject) => {
    const { port } = app.server.address() as AddressInfo;
    const sent = ask(
      { port, method: "POST", path: "/v1/batches", headers: { "content-type": "application/json" } },
      (response) => resolve({ status: response.statusCode ?? 0, leave: () => sent.destroy() }),
    );
    sent.on("error", reject);
    sent.end(JSON.stringify(depths(900)));
  });

it("takes so many of one client at a time, and another once one has gone", async () => {
  await start({ batchesPerClient: 2, costPerWindow: 0 });
  const [first, second] = [await unread(), await unread()];
  expect([first.status, second.status]).toEqual([200, 200]);
  const third = await post(depths(1));
  expect([third.statusCode, third.json().code]).toEqual([429, "too_many_requests"]);
  expect(Number(third.headers["retry-after"])).toBeGreaterThanOrEqual(1);
  first.leave();
  let status = 429;
  while (status === 429) {
    // Whoever leaves is noticed by the loop, which requests that are injected would keep to themselves.
    await new Promise((resolve) => setTimeout(resolve, 20));
    ({ statusCode: status } = await post(depths(1)));
  }
  expect(status).toBe(200);
  second.leave();
}, 60_000);

it("takes so many of all", async () => {
  await start({ batches: 1 });
  const first = await unread();
  const { statusCode, headers } = await post(depths(1));
  expect(statusCode).toBe(503);
  expect(headers["retry-after"]).toBeDefined();
  first.leave();
}, 60_000);
