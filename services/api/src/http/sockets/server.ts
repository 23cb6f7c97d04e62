import { createServer, type RequestListener, type Server } from "node:http";
import type { Socket } from "node:net";
import type { FastifyBaseLogger } from "fastify";
import type { Limits } from "../../config/limits.js";
import { Budget } from "../../limiting/budget.js";
import type { LineShare } from "../log/line-share.js";
import { boundBodies } from "./bodies.js";
import { handleClientError, refuseTunnel } from "./client-error.js";
import type { Connections, Peer } from "./connections.js";
import type { Departure } from "./departure.js";
import { EndingMessage } from "./ending-message.js";
import { limitPipelines } from "./pipelines.js";
import type { Turns } from "./turns.js";

/** Connections that a client may have closed for requests unanswered before all of its are, and in how many seconds as many again. */
const closed = { cost: 16, window_s: 10 };

interface Parts {
  connections: Connections;
  departure: Departure;
  turns: Turns;
  lines: LineShare;
  log: FastifyBaseLogger | undefined;
}

/**
 * Makes the servers of an application, one for each address that its host name stands for. Here because the framework
 * would give its limits and its refusals of what is no HTTP to the first of them alone.
 */
export function serversWith(
  limits: Limits,
  { connections, departure, turns, lines, log }: Parts,
): (handler: RequestListener) => Server {
  const tooMany = new Budget(closed);
  return (handler) => {
    const peerOf = connections.peerOf.bind(connections);
    const limited = limitPipelines(inTurn(handler, turns, peerOf), {
      ofConnection: limits.unansweredPerConnection,
      ofAddress: limits.unansweredPerAddress,
      peerOf,
      onTooMany: (client, socket, ofAddress) => {
        // Closed one by one, they would come again at once, in front of all others that connect.
        if (ofAddress || !tooMany.take(client, 1).isTaken) {
          if (connections.bar(socket))
            log?.warn({ address: socket.remoteAddress }, "connections closed: too many requests unanswered");
        } else if (lines.take(client)) log?.info("connection closed: too many requests unanswered");
      },
    });
    const bounded = boundBodies(limited, {
      bytes: limits.bodyBytes,
      peerOf,
      offends: (socket) => {
        if (connections.bar(socket))
          log?.warn({ address: socket.remoteAddress }, "connections closed: bodies in too many pieces");
      },
    });
    const server = createServer(
      {
        IncomingMessage: EndingMessage,
        maxHeaderSize: limits.headerBytes,
        headersTimeout: limits.headersTimeout_ms,
        requestTimeout: limits.requestTimeout_ms,
        keepAliveTimeout: limits.keepAliveTimeout_ms,
        connectionsCheckingInterval: limits.timeoutCheck_ms,
        // Refused where every other malformed request is, so that the refusal is a problem like any other.
        requireHostHeader: false,
      },
      bounded,
    );
    server.setTimeout(limits.connectionTimeout_ms);
    // Any expectation but 100-continue comes as an event of its own, and would be answered without a body.
    server.on("checkExpectation", bounded);
    // Accepting a connection can fail, too: that is no reason to end.
    server.on("error", (error) => {
      if (server.listening) log?.error({ err: error }, "a connection could not be taken");
    });
    server.on("connect", refuseTunnel);
    server.on("clientError", handleClientError);
    connections.watch(server);
    server.on("connection", () => turns.come());
    departure.watch(server);
    return server;
  };
}

/** Has requests taken in the turns of the addresses that they come from. */
function inTurn(handler: RequestListener, turns: Turns, peerOf: (socket: Socket) => Peer): RequestListener {
  return (request, response) => {
    const { socket } = request;
    turns.do(peerOf(socket).site, () => {
      if (!socket.destroyed) handler(request, response);
    });
  };
}
