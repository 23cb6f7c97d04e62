import type { RequestListener, ServerResponse } from "node:http";
import type { Socket } from "node:net";
import type { Peer } from "./connections.js";

/** Of each connection the answers that have not left. */
const unanswered = new WeakMap<Socket, Set<ServerResponse>>();

/** How much may be unanswered at a time. */
export interface PipelineLimits {
  /** Requests of one connection. */
  ofConnection: number;
  /** Requests of one address, or of one IPv6 site, that is no proxy: more than its connections hold where none sends ahead. */
  ofAddress: number;
  peerOf: (socket: Socket) => Peer;
  /** Told of each connection that is closed for it, and whether its address has too many. */
  onTooMany: (client: string, socket: Socket, ofAddress: boolean) => void;
}

/**
 * Bounds what one connection, or those of one address, can hold, and ends what waits on it. A caller may send requests before the answers to its
 * earlier ones (RFC 9112, section 9.3.2), thousands in one packet; beyond so many unanswered ones the connection is closed,
 * as nothing else gives back at once what they hold. And Node.js gives a connection to one answer at a time: one that
 * still waits for another would never hear of the end of the connection, and keep what it holds, so it is told here.
 * @param handler what takes each request
 */
export function limitPipelines(
  handler: RequestListener,
  { ofConnection, ofAddress, peerOf, onTooMany }: PipelineLimits,
): RequestListener {
  const ofSites = new Map<string, number>();
  const add = (site: string, count: number) => {
    const sum = (ofSites.get(site) ?? 0) + count;
    if (sum === 0) ofSites.delete(site);
    else ofSites.set(site, sum);
    return sum;
  };
  return (request, response) => {
    const { socket } = request;
    // The rest of a packet is still read after its connection has been closed.
    if (socket.destroyed) return;
    const waiting = unanswered.get(socket) ?? watched(socket);
    const { client, site, isProxy } = peerOf(socket);
    const isAddressFull = !isProxy && (ofSites.get(site) ?? 0) >= ofAddress;
    if (isAddressFull || waiting.size >= ofConnection) {
      socket.destroy();
      onTooMany(client, socket, isAddressFull);
      return;
    }
    waiting.add(response);
    add(site, 1);
    response.once("close", () => {
      waiting.delete(response);
      add(site, -1);
    });
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
