import { createServer, type RequestListener, type Server } from "node:http";
import type { FastifyBaseLogger } from "fastify";
import type { Limits } from "../limits.js";
import { handleClientError, refuseTunnel } from "./client-error.js";
import type { Connections } from "./connections.js";
import type { Departure } from "./departure.js";
import { limitPipelines } from "./pipelines.js";

/**
 * Makes the servers of an application, one for each address that its host name stands for. Here because the framework
 * would give its limits and its refusals of what is no HTTP to the first of them alone.
 */
export function serversWith(
  limits: Limits,
  connections: Connections,
  departure: Departure,
  log: FastifyBaseLogger | undefined,
): (handler: RequestListener) => Server {
  return (handler) => {
    const limited = limitPipelines(handler, limits.unansweredPerConnection, () =>
      log?.info({ most: limits.unansweredPerConnection }, "connection closed: too many requests unanswered"),
    );
    const server = createServer(
      {
        maxHeaderSize: limits.headerBytes,
        headersTimeout: limits.headersTimeout_ms,
        requestTimeout: limits.requestTimeout_ms,
        keepAliveTimeout: limits.keepAliveTimeout_ms,
        connectionsCheckingInterval: limits.timeoutCheck_ms,
        // Refused where every other malformed request is, so that the refusal is a problem like any other.
        requireHostHeader: false,
      },
      limited,
    );
    server.setTimeout(limits.connectionTimeout_ms);
    // Any expectation but 100-continue comes as an event of its own, and would be answered without a body.
    server.on("checkExpectation", limited);
    // Accepting a connection can fail, too: that is no reason to end.
    server.on("error", (error) => {
      if (server.listening) log?.error({ err: error }, "a connection could not be taken");
    });
    server.on("connect", refuseTunnel);
    server.on("clientError", handleClientError);
    connections.watch(server);
    departure.watch(server);
    return server;
  };
}
