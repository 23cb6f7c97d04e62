import { build } from "@sunfathom/answers";
import type { FastifyInstance } from "fastify";
import { refuseQuery } from "../http/refuse-query.js";
import { sendPlainProblem } from "../http/send-problem.js";
import { healthLive, healthReady } from "../openapi/service.js";

/** Whether the process runs, and whether it takes requests. */
export function healthRoutes(app: FastifyInstance): void {
  app.get("/health/live", { schema: healthLive, onRequest: refuseQuery }, (_, reply) => {
    reply.header("cache-control", "no-store").send({ status: "live", build });
  });
  app.get("/health/ready", { schema: healthReady, onRequest: refuseQuery }, (_, reply) => {
    if (app.isReady()) reply.header("cache-control", "no-store").send({ status: "ready", build });
    else
      sendPlainProblem(
        // Another process takes over, or the next one here: each starts in about a second.
        reply.header("retry-after", "1"),
        "unavailable",
        "The service is starting or stopping.",
      );
  });
}
