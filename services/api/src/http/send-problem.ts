import { problem, toJson } from "@sunfathom/answers";
import type { Problem, ProblemCode } from "@sunfathom/contract";
import type { FastifyReply } from "fastify";

export const problemType = "application/problem+json; charset=utf-8";

/** Ends a request with a problem (RFC 9457), which carries the request's id. */
export function sendProblem(reply: FastifyReply, { errors, ...rest }: Problem): FastifyReply {
  const whole = { ...rest, request_id: reply.request.id, ...(errors === undefined ? {} : { errors }) };
  // Of an answer that came too late to be sent.
  reply.removeHeader("etag");
  return reply
    .code(rest.status)
    .header("content-type", problemType)
    .header("cache-control", "no-store")
    .send(toJson(whole));
}

/** The same for a problem that needs no more than its detail. */
export function sendPlainProblem(reply: FastifyReply, code: ProblemCode, detail: string): FastifyReply {
  return sendProblem(reply, problem(code, detail));
}
