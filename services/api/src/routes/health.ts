import type { FastifyInstance } from "fastify";
import { refuseQuery } from "../http/refuse-query.js";
import { sendPlainProblem } from "../http/send-problem.js";
import { healthLive, healthReady } from "../openapi/service.js";

declare module "fastify" {
  interface FastifyInstance {
    /** From now on `/health/ready` says no, though requests are still taken. */
    denyReadiness: () => void;
  }
}

/** Whether the process runs, and whether it takes requests: not before all is loaded, nor once it is stopping. */
export function healthRoutes(app: FastifyInstance): void {
  let isReady = false;
  const denyReadiness = () => {
    isReady = false;
  };
  app.addHook("onReady", async () => {
    isReady = true;
  });
  app.addHook("preClose", async () => denyReadiness());
  app.decorate("denyReadiness", denyReadiness);
  app.get("/health/live", { schema: healthLive, onRequest: refuseQuery }, (_, reply) => {
    reply.header("cache-control", "no-store").send({ status: "live" });
  });
  app.get("/health/ready", { schema: healthReady, onRequest: refuseQuery }, (_, reply) => {
    if (isReady) reply.header("cache-control", "no-store").send({ status: "ready" });
    else
      sendPlainProblem(
        reply.header("retry-after", "5"),
        "unavailable",
        "The service is starting or stopping.",
      );
  });
}
