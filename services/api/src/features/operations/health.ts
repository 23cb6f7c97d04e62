import { build } from "@sunfathom/answers";
import type { FastifyPluginAsync } from "fastify";
import { refuseQuery } from "../../http/asked/refuse-query.js";
import { sendRefusal } from "../../http/sent/send-problem.js";
import { healthLive, healthReady } from "../../openapi/service.js";

/** Whether the process runs, and whether it takes requests. */
export const operations: FastifyPluginAsync = async (app) => {
  app.get("/health/live", { schema: healthLive, onRequest: refuseQuery }, (_, reply) => {
    reply.header("cache-control", "no-store").send({ status: "live", build });
  });
  app.get("/health/ready", { schema: healthReady, onRequest: refuseQuery }, (_, reply) => {
    if (app.isReady()) reply.header("cache-control", "no-store").send({ status: "ready", build });
    // Another process takes over, or the next one here: each starts in about a second.
    else sendRefusal(reply.header("retry-after", "1"), { because: "starting_or_stopping" });
  });
};
