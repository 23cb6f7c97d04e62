import type { Socket } from "node:net";
import type { FastifyInstance } from "fastify";

declare module "fastify" {
  interface FastifyContextConfig {
    /** Whether the answer is a stream: it may take as long as its reader goes on reading. */
    streams?: boolean;
  }
  interface FastifyReply {
    /** Cuts the connection off when the answer has not left in time. */
    sendTimer: NodeJS.Timeout | undefined;
  }
}

/** Cuts off whoever takes longer than `timeout_ms` to read an answer, which would hold its memory for as long. */
export function limitSending(app: FastifyInstance, timeout_ms: number): void {
  // With the reply itself: a weak map from replies would be gone through at every collection of garbage, a tenth of a 304.
  app.decorateReply("sendTimer", undefined);
  app.addHook("onSend", (request, reply, payload, done) => {
    // The request's, as an answer that waits for another on its connection has none yet.
    const { raw } = reply;
    // An answer that fails on its way is sent once more, as a problem.
    const streams = request.routeOptions.config.streams === true && reply.statusCode === 200;
    if (reply.sendTimer === undefined && !raw.destroyed && !streams) {
      reply.sendTimer = setTimeout(cutOff, timeout_ms, request.raw.socket).unref();
      // Until then it keeps the connection, and all that waits on it.
      raw.once("close", () => clearTimeout(reply.sendTimer));
    }
    done(null, payload);
  });
}

function cutOff(socket: Socket): void {
  socket.destroy();
}
