import type { FastifyInstance, FastifyReply } from "fastify";

/** Cuts off whoever takes longer than `timeout_ms` to read an answer, which would hold its memory for as long. */
export function limitSending(app: FastifyInstance, timeout_ms: number): void {
  const timers = new WeakMap<FastifyReply, NodeJS.Timeout>();
  app.addHook("onSend", (_, reply, payload, done) => {
    const { socket } = reply.raw;
    if (socket !== null) timers.set(reply, setTimeout(() => socket.destroy(), timeout_ms).unref());
    done(null, payload);
  });
  app.addHook("onResponse", (_, reply, done) => {
    clearTimeout(timers.get(reply));
    done();
  });
}
