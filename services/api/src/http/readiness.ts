import type { FastifyInstance } from "fastify";

declare module "fastify" {
  interface FastifyInstance {
    /** Whether new requests should come here: not before all is loaded, nor once the service is stopping. */
    isReady: () => boolean;
    /** From now on `/health/ready` says no, though requests are still taken. */
    denyReadiness: () => void;
  }
}

/** Knows whether the service is ready. Once it is not any more, each answer is the last of its connection. */
export function watchReadiness(app: FastifyInstance): void {
  let state: "starting" | "ready" | "stopping" = "starting";
  const denyReadiness = () => {
    state = "stopping";
  };
  app.decorate("isReady", () => state === "ready");
  app.decorate("denyReadiness", denyReadiness);
  app.addHook("onReady", async () => {
    state = "ready";
  });
  app.addHook("preClose", async () => denyReadiness());
  app.addHook("onSend", (_, reply, payload, done) => {
    // Left open, it would keep the process from ending until the client hangs up.
    if (state === "stopping") reply.header("connection", "close");
    done(null, payload);
  });
}
