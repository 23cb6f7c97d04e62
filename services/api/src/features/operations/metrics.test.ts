import type { FastifyInstance } from "fastify";
import request from "supertest";
import { afterEach, describe, expect, it } from "vitest";
import { buildApp } from "../../build-app.test-support.js";
import { defaultExposure } from "../../config/exposure.js";
import { readOpenMetrics } from "./open-metrics.test-support.js";

let app: FastifyInstance;
afterEach(() => app.close());

async function scrape(): Promise<{ type: string; lines: string[] }> {
  const { metrics } = app;
  if (metrics === undefined) throw new Error("Nothing is counted.");
  return { type: metrics.contentType, lines: (await metrics.metrics()).split("\n") };
}

describe("what is counted", () => {
  // OpenMetrics 1.0, "Overall Structure" and "Protocol Negotiation": the media type, and EOF as the last line.
  it("is OpenMetrics, and counts requests by route and status", async () => {
    app = await buildApp();
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

  it("keeps the grammar, with every histogram's buckets adding up", async () => {
    app = await buildApp();
    await app.ready();
    for (const path of ["/v1/models", "/v1/made-up", "/health/live"]) await request(app.server).get(path);
    await scrape();
    const families = readOpenMetrics((await scrape()).lines.join("\n"));
    expect(families.size).toBeGreaterThan(20);
    expect(families.get("http_requests")?.type).toBe("counter");
    const { samples = [] } = families.get("http_request_duration_seconds") ?? {};
    for (const route of ["/v1/models", "none", "/health/live"]) {
      const own = samples.filter(({ labels }) => labels["route"] === route);
      const buckets = own.filter(({ name }) => name.endsWith("_bucket"));
      const counts = buckets.map(({ value }) => value);
      // "Histogram": thresholds and counts ascend, the last is +Inf and counts all.
      expect(counts).toEqual([...counts].sort((a, b) => a - b));
      const bounds = buckets.map(({ labels }) => Number(labels["le"]?.replace("+Inf", "Infinity")));
      expect(bounds).toEqual([...bounds].sort((a, b) => a - b));
      expect(bounds.at(-1)).toBe(Number.POSITIVE_INFINITY);
      expect(counts.at(-1)).toBe(1);
      expect(own.find(({ name }) => name.endsWith("_count"))?.value).toBe(1);
      // In seconds: an answer takes some of a millisecond, at the most some seconds.
      expect(own.find(({ name }) => name.endsWith("_sum"))?.value).toBeGreaterThan(0);
      expect(own.find(({ name }) => name.endsWith("_sum"))?.value).toBeLessThan(20);
    }
  });

  it("counts the answers that it had already and those that it worked out, from nothing on", async () => {
    app = await buildApp();
    await app.ready();
    const value = (families: ReturnType<typeof readOpenMetrics>, family: string, outcome?: string) =>
      families.get(family)?.samples.find(({ labels }) => labels["outcome"] === outcome)?.value;
    const told = async () => {
      const families = readOpenMetrics((await scrape()).lines.join("\n"));
      const [hits, misses] = ["hit", "miss"].map((outcome) =>
        value(families, "answer_cache_lookups", outcome),
      );
      return { hits, misses, bytes: value(families, "answer_cache_bytes") };
    };
    expect(await told()).toEqual({ hits: 0, misses: 0, bytes: 0 });
    const ask = () => request(app.server).post("/v1/attenuation").send({ water_type: "IB", depth_m: 5 });
    const { text } = await ask().expect(200);
    const first = await told();
    expect(first).toMatchObject({ hits: 0, misses: 1 });
    expect(first.bytes).toBeGreaterThanOrEqual(text.length);
    await ask().expect(200);
    await ask().expect(200);
    expect(await told()).toEqual({ ...first, hits: 2 });
  });

  // A quantile is known to within its bucket: https://prometheus.io/docs/practices/histograms/#errors-of-quantile-estimation
  it("tells times from a millisecond to ten seconds within half a decade or so", async () => {
    app = await buildApp();
    await app.ready();
    await request(app.server).get("/v1/models").expect(200);
    const families = readOpenMetrics((await scrape()).lines.join("\n"));
    const { samples = [] } = families.get("http_request_duration_seconds") ?? {};
    const bounds = samples
      .filter(({ name, labels }) => name.endsWith("_bucket") && labels["le"] !== "+Inf")
      .map(({ labels }) => Number(labels["le"]));
    expect(bounds[0]).toBeLessThanOrEqual(0.001);
    expect(bounds.at(-1)).toBeGreaterThanOrEqual(10);
    for (const [nth, bound] of bounds.slice(1).entries())
      expect(bound / (bounds[nth] ?? 0)).toBeLessThanOrEqual(4);
  });

  it("is not where the public is", async () => {
    app = await buildApp();
    await app.ready();
    await request(app.server).get("/metrics").expect(404);
    expect((await app.inject("/openapi.json")).json().paths).not.toHaveProperty("/metrics");
  });

  it.each([
    "a 1\n# EOF\n",
    "# TYPE a gauge\na 1\n",
    "# TYPE a gauge\na_total 1\n# EOF\n",
    "# TYPE a counter\na 1\n# EOF\n",
    "# TYPE a gauge\na one\n# EOF\n",
    '# TYPE a gauge\na{b="1" 1\n# EOF\n',
    '# TYPE a gauge\na{b="1",b="2"} 1\n# EOF\n',
    "# TYPE a gauge\na 1\n# TYPE b gauge\nb 1\n# TYPE a gauge\n# EOF\n",
  ])("would be found out if it were %j", (text) => {
    expect(() => readOpenMetrics(text)).toThrow();
  });

  it("is nothing where it is switched off", async () => {
    app = await buildApp({ exposure: { ...defaultExposure, metricsAt: undefined } });
    await app.ready();
    expect(app.metrics).toBeUndefined();
  });
});
