// Guards what callers meet while much is asked for: the threads are real, and run the built packages.

import { serviceDetails } from "@sunfathom/words";
import Fastify, { type FastifyInstance } from "fastify";
import request from "supertest";
import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";
import { buildApp } from "../build-app.test-support.js";
import { defaultExposure } from "../config/exposure.js";
import { countRequests, Limiter } from "../limiting/limiter.js";
import { unhurried } from "../unhurried.test-support.js";
import { Computing } from "./computing.js";
import { ComputePool } from "./pool.js";

let app: FastifyInstance;
afterEach(() => app?.close());

async function start(limits: object = {}): Promise<void> {
  app = await buildApp({ limits: { workers: 1, ...limits } });
  await app.listen({ host: "127.0.0.1", port: 0 });
}

/** A heavy scene, another one for each number. */
const scene = (n: number) => ({
  water_type: "IB",
  min_depth_m: 5,
  max_depth_m: 18,
  wind_speed_m_s: 3 + n / 100,
});

const advice = (n: number) => request(app.server).post("/v1/dive-advice").send(scene(n));

describe("heavy requests of one client, all at once", () => {
  it("wait or are refused with when to come again, and health and light answers do not wait for them", async () => {
    await start();
    await advice(99).expect(200);
    let done = 0;
    const heavy = Array.from({ length: 30 }, async (_, n) => {
      const answer = await advice(n);
      if (answer.status === 200) done += 1;
      return answer;
    });
    // The first of the others is refused once those before it are in line.
    await Promise.any(heavy.map((one) => one.then(({ status }) => status === 429 || Promise.reject())));
    const before = done;
    await request(app.server).get("/health/live").expect(200);
    await request(app.server).get("/v1/attenuation?water_type=IB&depth_m=7").expect(200);
    expect(done - before).toBeLessThanOrEqual(3);
    const answers = await Promise.all(heavy);
    // One runs and twelve wait, however many threads there are; places that fall free meanwhile are taken.
    expect(answers.filter(({ status }) => status === 200).length).toBeGreaterThanOrEqual(13);
    for (const { status, headers, body } of answers) {
      if (status === 200) continue;
      expect({ status, code: body.code }).toEqual({ status: 429, code: "too_many_requests" });
      expect(Number(headers["retry-after"])).toBeGreaterThanOrEqual(1);
    }
  }, 120_000);

  it("are all answered where they are ten, as late as they may be", async () => {
    await start({ headersTimeout_ms: 1000, requestTimeout_ms: 1000, timeoutCheck_ms: 100 });
    const answers = await Promise.all(Array.from({ length: 10 }, (_, n) => advice(n)));
    expect(answers.map(({ status }) => status)).toEqual(Array.from({ length: 10 }, () => 200));
  }, 120_000);

  it("spend their budget, which a kept answer does not", async () => {
    await start({ costPerWindow: 1500, window_s: 86_400 });
    const left = ({ headers }: request.Response) => Number(/r=(\d+)/.exec(headers["ratelimit"] ?? "")?.[1]);
    const first = left(await advice(1).expect(200));
    expect(first).toBeLessThan(1000);
    expect(left(await advice(1).expect(200))).toBe(first - 1);
    const { headers } = await advice(2).expect(200);
    expect(left({ headers } as request.Response)).toBeLessThan(first - 300);
    const refused = await advice(3).expect(429);
    // Of a budget that fills up in a day.
    expect(Number(refused.headers["retry-after"])).toBeGreaterThan(600);
  });
});

describe("a body that is long enough to be read on a thread", () => {
  let shared: FastifyInstance;
  beforeAll(async () => {
    shared = await buildApp({ limits: { workers: 1 } });
    await shared.listen({ host: "127.0.0.1", port: 0 });
  });
  afterAll(() => shared.close());
  const long = (text: string) => `${text}${" ".repeat(20_000)}`;
  const post = (path: string, body: string) => request(shared.server).post(path).type("json").send(body);

  it.each([
    ["/v1/attenuation", '{"water_type":"IB","depth_m":5}', 200],
    ["/v1/attenuation", '{"water_type":"IB","depth_m":5,"iso":1,"x":1}', 400],
    ["/v1/attenuation", '{"water_type":"IB","depth_m":5,"depth_m":6}', 400],
    ["/v1/attenuation", '{"water_type":', 400],
    ["/v1/quiz-items", '{"level":"no such"}', 400],
    ["/v1/quiz-items", '{"level":"working","count":1,"count":2}', 400],
    ["/v1/quiz-packages", '{"level":"working","count":1}', 400],
    ["/v1/quiz-answers", '{"token":"a","responses":[]}', 422],
  ])(
    "at %s is answered as a short one: %s",
    async (path, text, status) => {
      const [short, onThread] = [await post(path, text), await post(path, long(text))];
      expect(short.status).toBe(status);
      expect(onThread.status).toBe(status);
      expect(onThread.body).toEqual({
        ...short.body,
        ...(status === 200 ? {} : { request_id: onThread.body.request_id }),
      });
    },
    60_000,
  );
});

it("heavy requests of many networks of one IPv6 site wait in one line", async () => {
  app = await buildApp({
    limits: { workers: 1, waitingPerClient: 2 },
    exposure: { ...defaultExposure, trustedProxies: ["loopback"] },
  });
  await app.listen({ host: "127.0.0.1", port: 0 });
  const from = (n: number) => advice(n).set("X-Forwarded-For", `2001:db8:1:${n}::1`);
  const answers = await Promise.all(Array.from({ length: 12 }, (_, n) => from(n)));
  expect(answers.filter(({ status }) => status === 429).length).toBeGreaterThan(0);
});

it("a calculation that would come too late is told so in time", async () => {
  // Too little for any plan of a dive, and enough to read what is asked for.
  await start({ handlerTimeout_ms: 20 });
  const answers = await Promise.all([advice(1), advice(2), advice(3)]);
  for (const { status, headers, body } of answers) {
    expect({ status, code: body.code }).toEqual({ status: 503, code: "unavailable" });
    expect(body.detail).toBe(serviceDetails.answer_too_late({}));
    expect(Number(headers["retry-after"])).toBeGreaterThanOrEqual(1);
  }
});

it("what waits for a thread behind calculations that are too late goes on", async () => {
  const limits = { threads: 1, niceness: 0, runningPerClient: 1, waitingPerClient: 9, waiting: 9 };
  const pool = new ComputePool(limits);
  const limiter = new Limiter(unhurried);
  const patient = new Computing(pool, limiter, unhurried.handlerTimeout_ms);
  const hurried = new Computing(pool, limiter, 0);
  app = Fastify();
  countRequests(app, limiter);
  app.addHook("onClose", () => pool.close());
  let begun = 0;
  app.get<{ Params: { how: string } }>("/:how", (asked, reply) => {
    begun += 1;
    (asked.params.how === "hurried" ? hurried : patient).do(asked, reply, {
      task: { kind: "calculation", name: "dive-advice", scene: scene(begun), language: "en" },
      cost: 100,
      here: () => ({ status: "failed", message: "" }),
      send: ({ status }) => reply.send(status),
    });
  });
  await app.listen({ host: "127.0.0.1", port: 0 });
  const of = (how: string) => request(app.server).get(`/${how}`);
  const answers = await Promise.all([of("hurried"), of("hurried"), of("patient"), of("hurried")]);
  expect(answers.map(({ status }) => status)).toEqual([503, 503, 200, 503]);
  expect(answers[2]?.text).toBe("ok");
  for (const { status, body } of answers)
    if (status === 503) expect(body.detail).toBe(serviceDetails.answer_too_late({}));
  expect([pool.running, pool.waiting]).toEqual([0, 0]);
});

it("a calculation whose thread dies is a 503 that says to try again, and the next is answered", async () => {
  const file = new URL("./dying-worker.test-support.mjs", import.meta.url).href;
  const limits = { threads: 1, niceness: 0, runningPerClient: 1, waitingPerClient: 9, waiting: 9 };
  const pool = new ComputePool(limits, file);
  const limiter = new Limiter(unhurried);
  const computing = new Computing(pool, limiter, unhurried.handlerTimeout_ms);
  app = Fastify();
  countRequests(app, limiter);
  app.addHook("onClose", () => pool.close());
  app.get<{ Querystring: { dies?: string } }>("/", (asked, reply) => {
    computing.do(asked, reply, {
      task: {
        kind: "calculation",
        name: "dive-advice",
        scene: { dies: asked.query.dies !== undefined },
        language: "en",
      },
      cost: 100,
      here: () => ({ status: "failed", message: "" }),
      send: () => reply.send("done"),
    });
  });
  await app.ready();
  const { body, headers } = await request(app.server).get("/?dies").expect(503);
  expect(body).toMatchObject({ code: "unavailable", detail: serviceDetails.thread_died({}) });
  expect(headers["retry-after"]).toBe("1");
  await request(app.server).get("/").expect(200, "done");
});
