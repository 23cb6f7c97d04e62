import type { Socket } from "node:net";
import type { FastifyReply, FastifyRequest } from "fastify";

/** Of each connection what waits for answers on it to be over. */
const waiting = new WeakMap<Socket, Set<() => void>>();

/**
 * Calls `done` once the whole answer has left, or its connection has closed before. Node.js gives a connection to one
 * answer at a time: one that still waits for another hears nothing of the end, so that the connection is listened to.
 */
export function whenOver(request: FastifyRequest, reply: FastifyReply, done: () => void): void {
  const { socket } = request.raw;
  const others = waiting.get(socket) ?? watched(socket);
  const over = () => {
    if (others.delete(over)) done();
  };
  others.add(over);
  reply.raw.once("close", over);
}

/** One listener for all requests of a connection, however many are sent at once. */
function watched(socket: Socket): Set<() => void> {
  const all = new Set<() => void>();
  waiting.set(socket, all);
  socket.once("close", () => {
    for (const over of all) over();
  });
  return all;
}
