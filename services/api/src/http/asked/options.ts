import type { FastifyReply, FastifyRequest } from "fastify";
import type { KnownRoutes } from "./known-routes.js";
import { pathOf } from "./path-of.js";
import { acceptQuery, queryMethod } from "./query-method.js";

/** What the service takes anywhere, for `OPTIONS *`. */
const anywhere = ["GET", "HEAD", "OPTIONS", "POST", queryMethod];

/**
 * Answers OPTIONS with the methods that a path takes (RFC 9110, section 9.3.7). What pages of other origins ask for
 * beforehand is answered by the same: the headers that allow it are there already where the configuration names the origin,
 * and a path that there is not is for the request itself to find out.
 */
export function answerOptions(routes: KnownRoutes) {
  return (request: FastifyRequest, reply: FastifyReply, done: () => void): void => {
    if (request.method !== "OPTIONS") {
      done();
      return;
    }
    const path = pathOf(request.raw.url ?? "");
    const methods = path === "*" ? anywhere : routes.methodsOf(path);
    const isPreflight =
      request.headers["access-control-request-method"] !== undefined &&
      reply.hasHeader("access-control-allow-origin");
    if (methods.includes(queryMethod)) acceptQuery(reply);
    if (methods.length > 0) reply.header("allow", methods.join(", "));
    else if (!isPreflight) {
      reply.callNotFound();
      return;
    }
    reply.code(204).send();
  };
}
