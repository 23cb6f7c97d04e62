import type { RequestListener, ServerResponse } from "node:http";
import type { Socket } from "node:net";

/** Of each connection the answers that have not left. */
const unanswered = new WeakMap<Socket, Set<ServerResponse>>();

/**
 * Bounds what one connection can hold, and ends what waits on it. A caller may send requests before the answers to its
 * earlier ones (RFC 9112, section 9.3.2), thousands in one packet; beyond `most` unanswered ones the connection is closed,
 * as nothing else gives back at once what they hold. And Node.js gives a connection to one answer at a time: one that
 * still waits for another would never hear of the end of the connection, and keep what it holds, so it is told here.
 * @param handler what takes each request
 * @param most requests of one connection that may be unanswered at a time
 * @param onTooMany told once of a connection that is closed for it
 */
export function limitPipelines(
  handler: RequestListener,
  most: number,
  onTooMany: () => void,
): RequestListener {
  return (request, response) => {
    const { socket } = request;
    // The rest of a packet is still read after its connection has been closed.
    if (socket.destroyed) return;
    const waiting = unanswered.get(socket) ?? watched(socket);
    if (waiting.size >= most) {
      socket.destroy();
      onTooMany();
      return;
    }
    waiting.add(response);
    response.once("close", () => waiting.delete(response));
    handler(request, response);
  };
}

/** One listener for all requests of a connection, however many are sent at once. */
function watched(socket: Socket): Set<ServerResponse> {
  const waiting = new Set<ServerResponse>();
  unanswered.set(socket, waiting);
  socket.once("close", () => {
    for (const response of waiting) {
      // The one that has the connection hears of it from Node.js.
      if (response.socket !== null) continue;
      response.destroy();
      response.emit("close");
    }
  });
  return waiting;
}
