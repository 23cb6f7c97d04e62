import type { IncomingMessage, RequestListener, ServerResponse } from "node:http";
import type { Socket } from "node:net";
import { Budget } from "../../limiting/budget.js";
import type { Peer } from "./connections.js";

/** Pieces that a body may come in: one for each token of the longest text would be as many. */
export const mostPieces = 4096;
/** Pieces of all its bodies that an address may send at once, and in how many seconds as many again. */
const pieces = { cost: 2 * mostPieces, window_s: 2 };
/** A body in so many pieces or fewer is like any other. */
const free = 4;
/** Smaller pieces are put together. */
const block = 4096;

/** What bounds bodies. */
export interface BodyBounds {
  bytes: number;
  peerOf: (socket: Socket) => Peer;
  /** Told of a connection that sends what no client would. */
  offends: (socket: Socket) => void;
}

/**
 * Bounds what bodies can cost before anybody reads them, and after nobody does any more. A body may come in chunks of one
 * byte: Node.js makes an object of a hundred bytes of each, and takes microseconds for it, so that 256 kB of them would
 * take 100 MB and a second. Here small pieces are put together, and who sends too many is an offender. And what is left of a
 * body when the request has been answered is read on, as its answer may still be on its way, but no further than a body
 * may be long.
 */
export function boundBodies(handler: RequestListener, bounds: BodyBounds): RequestListener {
  const budget = new Budget(pieces);
  return (request, response) => {
    if (hasBody(request)) {
      gather(request, bounds, budget);
      readOn(request, response);
    }
    handler(request, response);
  };
}

function hasBody({ headers }: IncomingMessage): boolean {
  return headers["transfer-encoding"] !== undefined || Number(headers["content-length"] ?? 0) > 0;
}

/** Stands where Node.js hands over the pieces of a body. */
function gather(request: IncomingMessage, { bytes, peerOf, offends }: BodyBounds, budget: Budget): void {
  const { socket } = request;
  const peer = peerOf(socket);
  const push = request.push.bind(request);
  let count = 0;
  let sum = 0;
  let held: Buffer | undefined;
  let length = 0;
  const handOver = () => {
    const whole = held?.subarray(0, length);
    held = undefined;
    length = 0;
    return whole === undefined || push(whole);
  };
  request.push = (piece: Buffer | null) => {
    // The rest of a packet is still read after its connection has been closed: the end of a body that was cut is none.
    if (socket.destroyed) return false;
    if (piece === null) {
      handOver();
      return push(null);
    }
    count += 1;
    sum += piece.length;
    const isTooMuch = count > free && !peer.isProxy && !budget.take(peer.site, 1).isTaken;
    if (count > mostPieces || isTooMuch) {
      offends(socket);
      return false;
    }
    // The reader refuses what is too long while it reads; where nobody reads, nobody would.
    if (sum > bytes && request.readableFlowing === true && request.listenerCount("data") === 0) {
      // The answer may still be on its way out.
      if (sum > 2 * bytes) socket.destroy();
      else socket.destroySoon();
      return false;
    }
    if (piece.length >= block) return handOver() && push(piece);
    if (length + piece.length > block) {
      const more = handOver();
      hold(piece);
      return more;
    }
    hold(piece);
    return true;
  };
  const hold = (piece: Buffer) => {
    if (held === undefined) {
      held = piece;
      length = piece.length;
      return;
    }
    if (held.length < block) {
      const room = Buffer.allocUnsafe(block);
      held.copy(room, 0, 0, length);
      held = room;
    }
    piece.copy(held, length);
    length += piece.length;
  };
}

/** After the answer Node.js would take what is left of the body without a look. */
function readOn(request: IncomingMessage, response: ServerResponse): void {
  response.prependListener("finish", () => {
    if (request.complete || request.readableFlowing === true) return;
    request.read(0);
    request.resume();
  });
}
