import { build } from "@sunfathom/answers";
import request from "supertest";
import { describe, expect, it } from "vitest";
import { buildApp } from "../../build-app.test-support.js";

describe("health", () => {
  it("is live and ready once the service runs", async () => {
    const app = await buildApp();
    await app.ready();
    const live = await request(app.server).get("/health/live").expect(200);
    expect(live.body).toEqual({ status: "live", build });
    expect(live.headers["cache-control"]).toBe("no-store");
    const ready = await request(app.server).get("/health/ready").expect(200);
    expect(ready.body).toEqual({ status: "ready", build });
    expect(ready.headers["cache-control"]).toBe("no-store");
    await app.close();
  });

  it("is live but not ready once the service is stopping, which answers what comes on open connections", async () => {
    const app = await buildApp();
    const codes: number[] = [];
    app.addHook("preClose", async () => {
      for (const url of ["/health/live", "/health/ready", "/v1/models"]) {
        codes.push((await fetch(`${address}${url}`)).status);
      }
    });
    const address = await app.listen({ host: "127.0.0.1", port: 0 });
    await app.close();
    expect(codes).toEqual([200, 503, 200]);
  });

  // RFC 9112, section 9.6: who sends Connection: close ends the connection after the answer.
  it("keeps connections until it is told that it will stop, and ends each with its next answer then", async () => {
    const app = await buildApp();
    await app.ready();
    const before = await app.inject("/v1/models");
    expect(before.headers["connection"]).not.toBe("close");
    app.denyReadiness();
    const ready = await app.inject("/health/ready");
    expect(ready.statusCode).toBe(503);
    expect(ready.headers["retry-after"]).toBe("1");
    expect(ready.json()).toMatchObject({
      code: "unavailable",
      detail: "The service is starting or stopping.",
    });
    const after = await app.inject("/v1/models");
    expect(after.statusCode).toBe(200);
    expect(after.headers["connection"]).toBe("close");
    await app.close();
  });

  it("takes no query", async () => {
    const app = await buildApp();
    for (const path of ["/health/live", "/health/ready"]) {
      const reply = await app.inject(`${path}?a=1`);
      expect([reply.statusCode, reply.json().code]).toEqual([400, "invalid_query"]);
    }
    await app.close();
  });
});
