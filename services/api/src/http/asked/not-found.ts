import { nearest } from "@sunfathom/answers";
import type { FastifyReply, FastifyRequest } from "fastify";
import { sendRefusal } from "../sent/send-problem.js";
import type { KnownRoutes } from "./known-routes.js";
import { pathOf } from "./path-of.js";

/** Answers what no route took: 405 where another method would have, 404 with the nearest path where none would. */
export function notFoundHandler(routes: KnownRoutes) {
  return (request: FastifyRequest, reply: FastifyReply): void => {
    const path = pathOf(request.raw.url ?? "");
    const methods = routes.methodsOf(path);
    if (methods.length > 0) {
      const allow = methods.join(", ");
      reply.header("allow", allow);
      sendRefusal(reply, { because: "no_such_method", allow, method: request.method });
      return;
    }
    sendRefusal(reply, { because: "no_such_path", near: nearest(path, routes.paths()) });
  };
}
