import type { FastifyInstance } from "fastify";
import request from "supertest";
import { afterEach, describe, expect, it } from "vitest";
import { createApp } from "../app.js";
import { defaultExposure } from "../exposure.js";
import { unhurried } from "../unhurried.test-support.js";

let app: FastifyInstance;
afterEach(() => app.close());

async function scrape(): Promise<{ type: string; lines: string[] }> {
  const { headers, text } = await request(app.server)
    .get("/metrics")
    .buffer(true)
    .parse((response, done) => {
      let all = "";
      response.on("data", (part) => {
        all += part;
      });
      response.on("end", () => done(null, all));
    })
    .then(({ headers, body }) => ({ headers, text: String(body) }));
  return { type: headers["content-type"] ?? "", lines: text.split("\n") };
}

describe("/metrics", () => {
  // OpenMetrics 1.0, "Overall Structure" and "Protocol Negotiation": the media type, and EOF as the last line.
  it("is OpenMetrics, and counts requests by route and status", async () => {
    app = await createApp(undefined, unhurried);
    await app.ready();
    await request(app.server).get("/v1/models").expect(200);
    await request(app.server).get("/v1/models").expect(200);
    await request(app.server).get("/v1/made-up-1").expect(404);
    await request(app.server).get("/v1/made-up-2").expect(404);
    const { type, lines } = await scrape();
    expect(type).toBe("application/openmetrics-text; version=1.0.0; charset=utf-8");
    expect(lines.slice(-2)).toEqual(["# EOF", ""]);
    expect(lines).toContain('http_requests_total{method="GET",route="/v1/models",status="200"} 2');
    // One series for all that is made up, however much that is.
    expect(lines).toContain('http_requests_total{method="GET",route="none",status="404"} 2');
    expect(lines.join()).not.toContain("made-up");
    expect(lines.some((line) => line.startsWith("process_resident_memory_bytes "))).toBe(true);
    expect(lines.some((line) => line.startsWith("nodejs_eventloop_lag_seconds "))).toBe(true);
  });

  it("is not there where it is switched off", async () => {
    app = await createApp(undefined, unhurried, { ...defaultExposure, metrics: false });
    await app.ready();
    await request(app.server).get("/metrics").expect(404);
  });
});
