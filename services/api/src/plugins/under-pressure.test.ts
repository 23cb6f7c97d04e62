import type { FastifyInstance } from "fastify";
import request from "supertest";
import { afterEach, expect, it } from "vitest";
import { createApp } from "../app.js";
import { defaultLimits } from "../limits.js";

let app: FastifyInstance;
afterEach(() => app.close());

/** Keeps the event loop from turning, as too many calculations at once would. */
function block(time_ms: number): void {
  const end = performance.now() + time_ms;
  while (performance.now() < end);
}

const pause = (time_ms: number) => new Promise((resolve) => setTimeout(resolve, time_ms));

it("turns requests away while the event loop runs late, still says that it lives, and recovers", async () => {
  app = await createApp({ limits: { ...defaultLimits, maxEventLoopDelay_ms: 200 } });
  await app.listen({ host: "127.0.0.1", port: 0 });
  await request(app.server).get("/v1/models").expect(200);
  await pause(2100);
  // A second of turns that take half of one each, then one for the sample to be taken.
  for (let turn = 0; turn < 4; turn += 1) {
    block(500);
    await pause(0);
  }
  const { body, headers } = await request(app.server).get("/v1/models").expect(503);
  expect(body).toMatchObject({ code: "unavailable", detail: "The service has more to do than it can." });
  expect(headers["retry-after"]).toBe("5");
  await request(app.server).post("/v1/attenuation").send({ water_type: "IB", depth_m: 5 }).expect(503);
  for (const path of ["/health/live", "/health/ready"]) await request(app.server).get(path).expect(200);
  await pause(2200);
  await request(app.server).get("/v1/models").expect(200);
});

it("turns nobody away for what the start took", async () => {
  app = await createApp({ limits: { ...defaultLimits, maxEventLoopDelay_ms: 500 } });
  block(2000);
  await app.listen({ host: "127.0.0.1", port: 0 });
  for (let round = 0; round < 12; round += 1) {
    await request(app.server).get("/v1/models").expect(200);
    await pause(100);
  }
});
