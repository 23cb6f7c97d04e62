import { toJson } from "@sunfathom/answers";
import type { Problem } from "@sunfathom/contract";
import type { ServiceDetail } from "@sunfathom/words";
import type { FastifyReply } from "fastify";
import { tellLanguage, tongueFor } from "../asked/language.js";
import { refusal } from "./refusals.js";

export const problemType = "application/problem+json; charset=utf-8";

/** A problem with the id of the request that meets it, in its place. */
export const withRequestId = ({ errors, ...rest }: Problem, id: string): Problem => ({
  ...rest,
  request_id: id,
  ...(errors === undefined ? {} : { errors }),
});

/** Ends a request with a problem (RFC 9457), which carries the request's id, and is in the language that the request asks for. */
export function sendProblem(reply: FastifyReply, problem: Problem): FastifyReply {
  // Of an answer that came too late to be sent.
  reply.removeHeader("etag");
  return tellLanguage(reply)
    .code(problem.status)
    .header("content-type", problemType)
    .header("cache-control", "no-store")
    .send(toJson(withRequestId(problem, reply.request.id)));
}

/** The same for what the service refuses, and no field of the request alone is the cause of. */
export function sendRefusal(reply: FastifyReply, detail: ServiceDetail): FastifyReply {
  return sendProblem(reply, refusal(detail, tongueFor(reply.request).problems));
}
