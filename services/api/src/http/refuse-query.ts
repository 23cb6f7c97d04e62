import { problem } from "@sunfathom/answers";
import { type FieldError, maxErrors } from "@sunfathom/contract";
import { queryDetails } from "@sunfathom/words";
import type { FastifyReply, FastifyRequest } from "fastify";
import type { FieldsAsked } from "./fields-asked.js";
import { queryOf } from "./path-of.js";
import { refusedQuery } from "./query.js";
import { sendProblem } from "./send-problem.js";

/** For routes that take no query parameters: what they would not read, they refuse. */
export function refuseQuery(request: FastifyRequest, reply: FastifyReply, done: () => void): void {
  const errors = refusedQuery(queryOf(request.raw.url ?? ""));
  if (errors.length === 0) done();
  else refuseFor(reply, errors, queryDetails.takes_none(request));
}

/** For calculations by POST: they take `fields`, and no other parameter. */
export const refuseAllButFields =
  (read: (query: string) => FieldsAsked) =>
  (request: FastifyRequest, reply: FastifyReply, done: () => void): void => {
    const { query, errors } = read(queryOf(request.raw.url ?? ""));
    if (query !== "")
      refuseFor(reply, refusedQuery(query, "fields_alone"), queryDetails.takes_fields_alone({}));
    else if (errors.length > 0) refuseFields(reply, errors);
    else done();
  };

export function refuseFields(reply: FastifyReply, errors: readonly FieldError[]): void {
  refuseFor(reply, errors, queryDetails.no_such_fields({}));
}

function refuseFor(reply: FastifyReply, errors: readonly FieldError[], detail: string): void {
  sendProblem(reply, problem("invalid_query", detail, errors.slice(0, maxErrors)));
}
