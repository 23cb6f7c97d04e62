import type { FastifyInstance } from "fastify";
import { Counter, collectDefaultMetrics, Gauge, Histogram, Registry } from "prom-client";
import type { AnswerCache } from "../http/answer-cache.js";
import { refuseQuery } from "../http/refuse-query.js";

/**
 * What the process does, at `/metrics`, in the OpenMetrics 1.0 text format: requests and their times by route, memory,
 * event loop, garbage. Counted once an answer has left. Not for the public: keep the path inside at the proxy.
 * @see https://github.com/siimon/prom-client
 * @see https://github.com/prometheus/OpenMetrics/blob/v1.0.0/specification/OpenMetrics.md
 */
export function registerMetrics(app: FastifyInstance, answerCache: AnswerCache): void {
  const registry = new Registry<typeof Registry.OPENMETRICS_CONTENT_TYPE>();
  registry.setContentType(Registry.OPENMETRICS_CONTENT_TYPE);
  const registers = [registry];
  const requests = new Counter({
    name: "http_requests_total",
    help: "Requests answered.",
    labelNames: ["method", "route", "status"],
    registers,
  });
  const durations = new Histogram({
    name: "http_request_duration_seconds",
    help: "From the head of a request to the end of its answer.",
    labelNames: ["route"],
    buckets: [0.001, 0.003, 0.01, 0.03, 0.1, 0.3, 1, 3, 10],
    registers,
  });
  const lookups = new Counter({
    name: "answer_cache_lookups_total",
    help: "Answers looked for among those kept: found (hit) or worked out (miss).",
    labelNames: ["outcome"],
    registers,
  });
  for (const outcome of ["hit", "miss"]) lookups.inc({ outcome }, 0);
  answerCache.watch((outcome) => lookups.inc({ outcome }));
  new Gauge({
    name: "answer_cache_bytes",
    help: "Answers kept to be given again.",
    registers,
    collect() {
      this.set(answerCache.bytes);
    },
  });
  app.addHook("onReady", async () => collectDefaultMetrics({ register: registry }));
  app.addHook("onResponse", (request, reply, done) => {
    // Never the path, of which callers can make up as many as they like.
    const route = request.routeOptions.url ?? "none";
    requests.inc({ method: request.method, route, status: reply.statusCode });
    durations.observe({ route }, reply.elapsedTime / 1000);
    done();
  });
  app.get("/metrics", { schema: { hide: true }, onRequest: refuseQuery }, async (_, reply) => {
    const text = await registry.metrics();
    return reply.header("content-type", registry.contentType).header("cache-control", "no-store").send(text);
  });
}
