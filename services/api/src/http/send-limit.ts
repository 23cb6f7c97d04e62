import type { FastifyInstance, FastifyReply } from "fastify";

/** Cuts off whoever takes longer than `timeout_ms` to read an answer, which would hold its memory for as long. */
export function limitSending(app: FastifyInstance, timeout_ms: number): void {
  const timers = new WeakMap<FastifyReply, NodeJS.Timeout>();
  app.addHook("onSend", (request, reply, payload, done) => {
    // The request's, as an answer that waits for another on its connection has none yet.
    const { socket } = request.raw;
    timers.set(reply, setTimeout(() => socket.destroy(), timeout_ms).unref());
    done(null, payload);
  });
  app.addHook("onResponse", (_, reply, done) => {
    clearTimeout(timers.get(reply));
    done();
  });
}
