import { ROOT_CONTEXT, SpanKind, SpanStatusCode } from "@opentelemetry/api";
import { W3CTraceContextPropagator } from "@opentelemetry/core";
import { OTLPTraceExporter } from "@opentelemetry/exporter-trace-otlp-http";
import { resourceFromAttributes } from "@opentelemetry/resources";
import {
  AlwaysOffSampler,
  AlwaysOnSampler,
  BatchSpanProcessor,
  ParentBasedSampler,
  type Sampler,
  type SpanExporter,
  TraceIdRatioBasedSampler,
  TracerProvider,
} from "@opentelemetry/sdk-trace";
import type { FastifyBaseLogger, FastifyInstance, FastifyRequest } from "fastify";
import type { TracingSettings } from "../config/tracing-settings.js";
import { pathOf } from "../http/asked/path-of.js";

/** At the end of the process, what is left to send may take no longer: a collector must not hold up the stop. */
const lastSending_ms = 3000;
/** Of a path that somebody made up, more tells nothing. */
const attributeCharacters = 256;

/**
 * One span a request, as OpenTelemetry names it, in the trace that `traceparent` names. Sent in batches beside the
 * requests; a collector that is away or slow costs spans, not answers. Only loaded where traces are configured.
 * @see https://github.com/open-telemetry/opentelemetry-js
 * @see https://opentelemetry.io/docs/specs/semconv/http/http-spans/#http-server
 * @see https://www.w3.org/TR/trace-context/
 */
export function registerTracing(app: FastifyInstance, settings: TracingSettings): void {
  const { url, headers, timeout_ms: timeoutMillis, serviceName, attributes } = settings;
  const exporter = new OTLPTraceExporter({ url, headers: { ...headers }, timeoutMillis });
  const provider = new TracerProvider({
    resource: resourceFromAttributes({ ...attributes, "service.name": serviceName }),
    sampler: samplerOf(settings),
    spanLimits: { attributeValueLengthLimit: attributeCharacters },
    spanProcessors: [new BatchSpanProcessor({ exporter: telling(exporter, app.log) })],
  });
  const tracer = provider.getTracer("sunfathom");
  const propagator = new W3CTraceContextPropagator();
  app.addHook("onRequest", (request, reply, done) => {
    const parent = propagator.extract(ROOT_CONTEXT, request.headers, {
      get: (carrier: FastifyRequest["headers"], name) => carrier[name],
      keys: Object.keys,
    });
    const { method } = request;
    const route = request.routeOptions.url;
    const span = tracer.startSpan(
      route === undefined ? method : `${method} ${route}`,
      {
        kind: SpanKind.SERVER,
        attributes: {
          "http.request.method": method,
          "url.scheme": request.protocol,
          "url.path": pathOf(request.raw.url ?? ""),
          ...(route === undefined ? {} : { "http.route": route }),
        },
      },
      parent,
    );
    request.log = request.log.child({ trace_id: span.spanContext().traceId });
    reply.raw.once("close", () => {
      const { statusCode: status, writableFinished } = reply.raw;
      span.setAttribute("http.response.status_code", status);
      if (status >= 500 || !writableFinished) {
        span.setAttribute("error.type", writableFinished ? String(status) : "aborted");
        span.setStatus({ code: SpanStatusCode.ERROR });
      }
      span.end();
    });
    done();
  });
  // After the last answer.
  app.addHook("onClose", () => atMost(provider.shutdown(), lastSending_ms));
}

function samplerOf({ sampler, ratio }: TracingSettings): Sampler {
  const [, parent, rule] = /^(parentbased_)?(.*)$/.exec(sampler) ?? [];
  const root =
    rule === "always_on"
      ? new AlwaysOnSampler()
      : rule === "always_off"
        ? new AlwaysOffSampler()
        : new TraceIdRatioBasedSampler(ratio);
  return parent === undefined ? root : new ParentBasedSampler({ root });
}

/** An exporter that says in the log what it could not send. */
function telling(exporter: SpanExporter, log: FastifyBaseLogger): SpanExporter {
  return {
    export: (spans, done) =>
      exporter.export(spans, (result) => {
        if (result.error) log.warn({ err: result.error, spans: spans.length }, "traces were not taken");
        done(result);
      }),
    shutdown: () => exporter.shutdown(),
  };
}

/** Waits for `work`, whatever comes of it, for no longer than `limit_ms`. */
async function atMost(work: Promise<void>, limit_ms: number): Promise<void> {
  let timer: NodeJS.Timeout | undefined;
  const limit = new Promise<void>((resolve) => {
    timer = setTimeout(resolve, limit_ms);
  });
  await Promise.race([work.catch(() => {}), limit]);
  clearTimeout(timer);
}
