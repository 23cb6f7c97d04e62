import { problem } from "@sunfathom/answers";
import { type FieldError, maxErrors } from "@sunfathom/contract";
import type { FastifyReply, FastifyRequest } from "fastify";
import type { FieldsReader } from "./fields-asked.js";
import { tongueFor } from "./language.js";
import { queryOf } from "./path-of.js";
import { refusedQuery } from "./query.js";
import { sendProblem } from "./send-problem.js";

/** For routes that take no query parameters: what they would not read, they refuse. */
export function refuseQuery(request: FastifyRequest, reply: FastifyReply, done: () => void): void {
  const { query, queryDetails } = tongueFor(request).problems;
  const errors = refusedQuery(queryOf(request.raw.url ?? ""), query);
  if (errors.length === 0) done();
  else refuseFor(reply, errors, queryDetails.takes_none(request));
}

/** For calculations by POST: they take `fields`, and no other parameter. */
export const refuseAllButFields =
  (read: FieldsReader) =>
  (request: FastifyRequest, reply: FastifyReply, done: () => void): void => {
    const words = tongueFor(request).problems;
    const { query, errors } = read(queryOf(request.raw.url ?? ""), words.fields);
    if (query !== "")
      refuseFor(
        reply,
        refusedQuery(query, words.query, "fields_alone"),
        words.queryDetails.takes_fields_alone({}),
      );
    else if (errors.length > 0) refuseFields(reply, errors);
    else done();
  };

export function refuseFields(reply: FastifyReply, errors: readonly FieldError[]): void {
  refuseFor(reply, errors, tongueFor(reply.request).problems.queryDetails.no_such_fields({}));
}

export function refuseFor(reply: FastifyReply, errors: readonly FieldError[], detail: string): void {
  const { problems } = tongueFor(reply.request);
  sendProblem(reply, problem("invalid_query", problems, detail, errors.slice(0, maxErrors)));
}
