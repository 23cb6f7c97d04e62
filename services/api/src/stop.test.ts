import { createServer } from "node:http";
import { Writable } from "node:stream";
import Fastify, { type FastifyBaseLogger } from "fastify";
import { pino } from "pino";
import { expect, it } from "vitest";
import { watchReadiness } from "./http/readiness.js";
import { Departure } from "./http/sockets/departure.js";
import { stopInOrder } from "./stop.js";

const pause = (time_ms: number) => new Promise((resolve) => setTimeout(resolve, time_ms));

function make(logger?: FastifyBaseLogger) {
  const departure = new Departure();
  const app = Fastify({
    ...(logger === undefined ? {} : { loggerInstance: logger }),
    serverFactory: (handler) => {
      const server = createServer(handler);
      departure.watch(server);
      return server;
    },
  });
  watchReadiness(app);
  app.decorate("leave", () => departure.leave(app));
  return app;
}

/** A service that says what happens to it, in order, and is stopped. */
async function stopped(times: { drain_ms: number; grace_ms: number; answer_ms: number }) {
  const events: string[] = [];
  const stream = new Writable({
    write(line, _, done) {
      const { level, msg, grace_ms } = JSON.parse(String(line));
      if (level >= 50) events.push(`${msg} in ${grace_ms} ms`);
      done();
    },
  });
  const logger: FastifyBaseLogger = pino({ level: "error" }, stream);
  const app = make(logger);
  app.get("/slow", () => pause(times.answer_ms));
  app.addHook("onResponse", async (_, { statusCode }) => {
    events.push(`answered ${statusCode}`);
  });
  const address = await app.listen({ host: "127.0.0.1", port: 0 });
  const answer = fetch(`${address}/slow`);
  await pause(50);
  const started = performance.now();
  const statuses: number[] = [];
  let exited_ms = 0;
  const exit = (status: number) => {
    exited_ms ||= performance.now() - started;
    events.push(`exit ${status}`);
    statuses.push(status);
  };
  const stopping = stopInOrder(app, { ...times, exit });
  const looking = setInterval(() => {
    if (app.server.listening) return;
    events.push("takes no connections");
    clearInterval(looking);
  }, 1);
  events.push(`ready ${app.isReady()}`);
  await Promise.all([stopping, answer]);
  await pause(times.grace_ms < times.answer_ms ? 0 : times.grace_ms);
  return { events, exited_ms };
}

it("says at once that it is not ready, waits, closes, answers what was asked, and exits with 0, once", async () => {
  const { events, exited_ms } = await stopped({ drain_ms: 150, grace_ms: 900, answer_ms: 600 });
  expect(events).toEqual(["ready false", "takes no connections", "answered 200", "exit 0"]);
  expect(exited_ms).toBeGreaterThan(145);
});

it("still takes requests while it waits", async () => {
  const app = make();
  app.get("/", () => "taken");
  const address = await app.listen({ host: "127.0.0.1", port: 0 });
  let exited: number | undefined;
  const stopping = stopInOrder(app, {
    drain_ms: 1000,
    grace_ms: 2000,
    exit: (status) => {
      exited = status;
    },
  });
  await pause(50);
  expect(await (await fetch(address)).text()).toBe("taken");
  expect(exited).toBeUndefined();
  await stopping;
  expect(exited).toBe(0);
});

it("exits with 1 after its time of grace, and says so, where a request is not answered by then", async () => {
  const { events, exited_ms } = await stopped({ drain_ms: 0, grace_ms: 300, answer_ms: 900 });
  expect(events.slice(0, 4)).toEqual([
    "ready false",
    "takes no connections",
    "stopped with requests unanswered in 300 ms",
    "exit 1",
  ]);
  expect(exited_ms).toBeGreaterThan(295);
});
