import type { FastifyInstance } from "fastify";
import { Counter, collectDefaultMetrics, Gauge, Histogram, Registry } from "prom-client";
import type { ComputePool } from "../../compute/pool.js";
import type { AnswerCache } from "../../http/sent/answer-cache.js";

declare module "fastify" {
  interface FastifyInstance {
    /** What is counted; undefined where nothing is. */
    metrics: Registry<typeof Registry.OPENMETRICS_CONTENT_TYPE> | undefined;
  }
}

/**
 * What the process does, for the OpenMetrics 1.0 text format: requests and their times by route, memory, event loop,
 * garbage. Counted once an answer has left. Not for the public: metrics-server.ts has an address of its own.
 * @see https://github.com/siimon/prom-client
 * @see https://github.com/prometheus/OpenMetrics/blob/v1.0.0/specification/OpenMetrics.md
 */
export function registerMetrics(app: FastifyInstance, answerCache: AnswerCache, pool: ComputePool): void {
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
  const endWatch = watchPool(pool, registers);
  app.addHook("onClose", async () => endWatch());
  app.addHook("onReady", async () => collectDefaultMetrics({ register: registry }));
  app.addHook("onResponse", (request, reply, done) => {
    // Never the path, of which callers can make up as many as they like.
    const route = request.routeOptions.url ?? "none";
    requests.inc({ method: request.method, route, status: reply.statusCode });
    durations.observe({ route }, reply.elapsedTime / 1000);
    done();
  });
  app.metrics = registry;
}

function watchPool(
  pool: ComputePool,
  registers: Registry<typeof Registry.OPENMETRICS_CONTENT_TYPE>[],
): () => void {
  const gauges: [string, string, () => number][] = [
    ["workers_waiting_tasks", "Heavy calculations that wait for a thread.", () => pool.waiting],
    ["workers_running_tasks", "Heavy calculations that threads work on.", () => pool.running],
    [
      "workers_heap_bytes",
      "What the heaps of the threads held after their last tasks.",
      () => pool.heapBytes,
    ],
  ];
  for (const [name, help, read] of gauges) {
    new Gauge({
      name,
      help,
      registers,
      collect() {
        this.set(read());
      },
    });
  }
  const waits = new Histogram({
    name: "workers_wait_seconds",
    help: "From when a heavy calculation was asked for until a thread took it.",
    buckets: [0.001, 0.01, 0.1, 0.3, 1, 3, 10],
    registers,
  });
  const restarts = new Counter({
    name: "workers_restarts_total",
    help: "Threads that died and were replaced.",
    registers,
  });
  return pool.watch({ waited: (wait_s) => waits.observe(wait_s), died: () => restarts.inc() });
}
