import cors from "@fastify/cors";
import type { FastifyInstance } from "fastify";
import type { Exposure } from "../config/exposure.js";
import { varyBy } from "../http/sent/vary.js";
import { withoutDocumentHeaders } from "./helmet.js";

/**
 * Lets pages of other origins read answers, where the configuration names them; without it browsers keep to the same
 * origin. Never with credentials, which a browser would add by itself; a key in `Authorization` is the page's own doing.
 * @see https://github.com/fastify/fastify-cors
 */
export async function registerCors(app: FastifyInstance, origins: Exposure["corsOrigins"]): Promise<void> {
  if (origins.length === 0) return;
  await app.register(cors, {
    origin: origins === "*" ? "*" : [...origins],
    methods: ["GET", "HEAD", "POST", "QUERY"],
    allowedHeaders: [
      "Authorization",
      "Content-Type",
      "If-None-Match",
      "X-Request-Id",
      // What browsers' tracing adds to each request (W3C Trace Context).
      "Traceparent",
      "Tracestate",
    ],
    // All: tag, id, what is left of the budget. As a word it says so to requests without credentials, which these are.
    exposedHeaders: "*",
    maxAge: 600,
    // What asks beforehand is counted, and answered, as any other OPTIONS is.
    preflightContinue: true,
    strictPreflight: false,
  });
  app.addHook("onRequest", ({ headers }, reply, done) => {
    varyBy(reply, "Origin");
    // Only pages send it, and only they read what is said to them.
    if (headers.origin === undefined)
      reply.removeHeader("access-control-allow-origin").removeHeader("access-control-expose-headers");
    done();
  });
  app.addHook("onSend", (_request, reply, _payload, done) => {
    // What is refused keeps all: whoever attacks sends any origin.
    if (reply.statusCode < 400 && reply.hasHeader("access-control-allow-origin"))
      withoutDocumentHeaders(reply);
    done();
  });
}
