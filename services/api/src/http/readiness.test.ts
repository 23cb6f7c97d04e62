import Fastify from "fastify";
import { expect, it } from "vitest";
import { watchReadiness } from "./readiness.js";

function make() {
  const app = Fastify();
  watchReadiness(app);
  app.get("/", () => ({ isReady: app.isReady() }));
  return app;
}

it("an application is ready once all is loaded, until it is told that it will stop", async () => {
  const app = make();
  expect(app.isReady()).toBe(false);
  await app.ready();
  expect(app.isReady()).toBe(true);
  app.denyReadiness();
  expect(app.isReady()).toBe(false);
});

it("an application that closes is not ready, from before it lets go of its connections", async () => {
  const app = make();
  const seen: boolean[] = [];
  app.addHook("preClose", async () => {
    seen.push(app.isReady());
  });
  await app.ready();
  await app.close();
  expect(seen).toEqual([false]);
});

// RFC 9112, section 9.6: who sends Connection: close ends the connection after the answer.
it("each answer is whole, and ends its connection only once readiness is denied", async () => {
  const app = make();
  const before = await app.inject("/");
  expect(before.json()).toEqual({ isReady: true });
  expect(before.headers["connection"]).not.toBe("close");
  app.denyReadiness();
  const after = await app.inject("/");
  expect(after.json()).toEqual({ isReady: false });
  expect(after.headers["connection"]).toBe("close");
});
