import { problem } from "@sunfathom/answers";
import { maxErrors } from "@sunfathom/contract";
import type { FastifyReply, FastifyRequest } from "fastify";
import { queryOf } from "./path-of.js";
import { refusedQuery } from "./query.js";
import { sendProblem } from "./send-problem.js";

/** For routes that take no query parameters: what they would not read, they refuse. */
export function refuseQuery(request: FastifyRequest, reply: FastifyReply, done: () => void): void {
  const errors = refusedQuery(queryOf(request.raw.url ?? ""));
  if (errors.length === 0) {
    done();
    return;
  }
  const listed = errors.slice(0, maxErrors);
  const detail = `${request.method} takes no query parameters at this path.`;
  sendProblem(reply, problem("invalid_query", detail, listed));
}
