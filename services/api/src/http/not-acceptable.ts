import type { FastifyReply, FastifyRequest } from "fastify";
import { acceptsJson } from "./accept.js";
import { sendPlainProblem } from "./send-problem.js";

/** For routes that answer in JSON and nothing else: says so to whoever takes none. */
export function refuseOtherForms(request: FastifyRequest, reply: FastifyReply, done: () => void): void {
  // What the description says nothing of, such as the documentation page, has forms of its own.
  const { schema } = request.routeOptions;
  if (schema === undefined || schema.hide === true || acceptsJson(request.headers.accept)) done();
  else
    sendPlainProblem(
      reply,
      "not_acceptable",
      "The Accept header of the request leaves out application/json.",
    );
}
