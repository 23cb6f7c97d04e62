import type { FastifyInstance } from "fastify";
import type { LineShare } from "./line-share.js";

/**
 * Logs a request whose connection closed before its whole answer had left, because its caller hung up or read too slowly:
 * the framework logs only what it finished.
 */
export function logAbandoned(app: FastifyInstance, share: LineShare): void {
  app.addHook("onRequest", (request, reply, done) => {
    reply.raw.once("close", () => {
      if (reply.raw.writableFinished || !share.take(request.client)) return;
      const line = {
        method: request.method,
        route: request.routeOptions.url ?? "none",
        ms: Math.round(reply.elapsedTime * 10) / 10,
      };
      request.log.info(line, "connection closed before the whole answer had left");
    });
    done();
  });
}
