import type { FastifyInstance } from "fastify";

declare module "fastify" {
  interface FastifyInstance {
    /** Whether new requests should come here: not before all is loaded, nor once the service is stopping. */
    isReady: () => boolean;
    /** From now on `/health/ready` says no, though requests are still taken. */
    denyReadiness: () => void;
    /** Whether each answer is the last of its connection. */
    endConnections: (isEnding: boolean) => void;
  }
}

/**
 * Knows whether the service is ready. Once it is not any more, each answer is the last of its connection, until it is told
 * otherwise.
 */
export function watchReadiness(app: FastifyInstance): void {
  let state: "starting" | "ready" | "stopping" = "starting";
  let isEnding = false;
  const endConnections = (ending: boolean) => {
    isEnding = ending;
  };
  const denyReadiness = () => {
    if (state !== "stopping") endConnections(true);
    state = "stopping";
  };
  app.decorate("isReady", () => state === "ready");
  app.decorate("denyReadiness", denyReadiness);
  app.decorate("endConnections", endConnections);
  app.addHook("onReady", async () => {
    state = "ready";
  });
  app.addHook("preClose", async () => denyReadiness());
  app.addHook("onSend", (_, reply, payload, done) => {
    // Left open, it would keep the process from ending until the client hangs up.
    if (isEnding) reply.header("connection", "close");
    done(null, payload);
  });
}
