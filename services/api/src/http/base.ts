import Fastify, { type FastifyBaseLogger, type FastifyInstance, type FastifyServerOptions } from "fastify";
import type { Exposure } from "../config/exposure.js";
import type { Limits } from "../config/limits.js";
import type { Limiter } from "../limiting/limiter.js";
import { requestId } from "./asked/request-id.js";
import { LineShare } from "./log/line-share.js";
import { OneLineLog } from "./log/log-controller.js";
import { handleError } from "./sent/errors.js";
import { Connections } from "./sockets/connections.js";
import { Departure } from "./sockets/departure.js";
import { serversWith } from "./sockets/server.js";
import { routedBy } from "./sockets/target.js";
import { Turns } from "./sockets/turns.js";

/** The framework over our own sockets, and what else has to know of these. */
export interface Base {
  app: FastifyInstance;
  departure: Departure;
  turns: Turns;
  lines: LineShare;
}

/** The framework with its sockets, before anything is said of requests. */
export function baseWith(
  limiter: Limiter,
  { logger, limits, exposure }: { logger: FastifyBaseLogger | undefined; limits: Limits; exposure: Exposure },
): Base {
  const departure = new Departure();
  const turns = new Turns();
  const lines = new LineShare({ cost: limits.costPerWindow, window_s: limits.window_s }, logger);
  const app = Fastify({
    ...(logger === undefined ? {} : { loggerInstance: logger }),
    logController: new OneLineLog(lines),
    schemaController: schemasOnlyDescribe,
    genReqId: requestId,
    trustProxy: exposure.trustedProxies.length > 0 && [...exposure.trustedProxies],
    bodyLimit: limits.bodyBytes,
    handlerTimeout: limits.handlerTimeout_ms,
    serverFactory: serversWith(limits, {
      connections: new Connections(limits, exposure.trustedProxies),
      departure,
      turns,
      lines,
      log: logger,
    }),
    routerOptions: {
      // Longer than any URL: what is too long is refused as such.
      maxParamLength: limits.headerBytes,
      // Query strings are read in one place, asked/query.ts, by whoever takes them.
      querystringParser: () => ({}),
    },
    rewriteUrl: routedBy,
    // A request that is there already is answered, and its connection closed.
    return503OnClosing: false,
    // Each server refuses what is no HTTP by itself.
    clientErrorHandler: () => {},
    frameworkErrors: (error, request, reply) => {
      reply.header("x-request-id", request.id);
      // No hook runs for these.
      limiter.count(request, reply);
      if (!limiter.refuse(request, reply)) handleError(error, request, reply);
    },
  });
  return { app, departure, turns, lines };
}

/**
 * The schemas of routes describe them. Checking scenes and putting answers into form is the business of
 * @sunfathom/answers, from the same schemas, so that the service and the offline mode cannot disagree. Named as the makers
 * of compilers, so that those that come with the framework are not even loaded.
 */
const schemasOnlyDescribe = {
  compilersFactory: {
    // The type asks for what one library makes; what is called is the function.
    buildValidator: (() => () => () => true) as unknown as Compilers["buildValidator"],
    buildSerializer: (() => () => JSON.stringify) satisfies Compilers["buildSerializer"],
  },
};

type Compilers = Required<
  NonNullable<NonNullable<FastifyServerOptions["schemaController"]>["compilersFactory"]>
>;
