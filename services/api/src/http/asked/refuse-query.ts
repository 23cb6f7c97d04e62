import { problem } from "@sunfathom/answers";
import { type FieldError, maxErrors, type Problem } from "@sunfathom/contract";
import type { FastifyReply, FastifyRequest } from "fastify";
import { sendProblem } from "../sent/send-problem.js";
import type { FieldsReader } from "./fields-asked.js";
import { tongueFor } from "./language.js";
import { queryOf } from "./path-of.js";
import { refusedQuery } from "./query.js";

/** For routes that take no query parameters: what they would not read, they refuse. */
export function refuseQuery(request: FastifyRequest, reply: FastifyReply, done: () => void): void {
  const { query, queryDetails } = tongueFor(request).problems;
  const errors = refusedQuery(queryOf(request.raw.url ?? ""), query);
  if (errors.length === 0) done();
  else refuseFor(reply, errors, queryDetails.takes_none(request));
}

/** Answers with a problem of the query, for what it cost to find what was meant. */
type Refuse = (request: FastifyRequest, reply: FastifyReply, problem: Problem) => void;

/** For calculations by POST: they take `fields`, and no other parameter. */
export const refuseAllButFields =
  (read: FieldsReader, refuse: Refuse) =>
  (request: FastifyRequest, reply: FastifyReply, done: () => void): void => {
    const words = tongueFor(request).problems;
    const { query, errors } = read(queryOf(request.raw.url ?? ""), words.fields);
    if (query !== "")
      refuseFor(
        reply,
        refusedQuery(query, words.query, "fields_alone"),
        words.queryDetails.takes_fields_alone({}),
      );
    else if (errors.length > 0) refuse(request, reply, fieldsProblem(request, errors));
    else done();
  };

export const fieldsProblem = (request: FastifyRequest, errors: readonly FieldError[]): Problem =>
  queryProblem(request, errors, tongueFor(request).problems.queryDetails.no_such_fields({}));

/** @param detail says what is wrong with the query */
export const queryProblem = (
  request: FastifyRequest,
  errors: readonly FieldError[],
  detail: string,
): Problem => problem("invalid_query", tongueFor(request).problems, detail, errors.slice(0, maxErrors));

export function refuseFor(reply: FastifyReply, errors: readonly FieldError[], detail: string): void {
  sendProblem(reply, queryProblem(reply.request, errors, detail));
}
