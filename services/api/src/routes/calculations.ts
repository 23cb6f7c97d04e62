import {
  type Answered,
  modelVersion,
  type Operation,
  operations,
  type Refused,
  toJson,
} from "@sunfathom/answers";
import { contractVersion } from "@sunfathom/contract";
import type { FastifyInstance, FastifyReply } from "fastify";
import { etagOf, matches } from "../http/etag.js";
import { queryOf } from "../http/path-of.js";
import { type QueryFields, queryFieldsOf, readQuery } from "../http/query.js";
import { refuseQuery } from "../http/refuse-query.js";
import { sendJson, tag } from "../http/send-json.js";
import { sendProblem } from "../http/send-problem.js";
import { calculationByGet, calculationByPost } from "../openapi/calculation.js";

/** Every calculation of the table, by POST and by GET: same schema, same bytes. */
export function calculationRoutes(app: FastifyInstance): void {
  for (const operation of operations) {
    const fields = queryFieldsOf(operation);
    app.get(operation.path, { schema: calculationByGet(operation) }, (request, reply) => {
      get(operation, fields, request.raw.url ?? "", request.headers["if-none-match"], reply);
    });
    app.post(
      operation.path,
      { schema: calculationByPost(operation), onRequest: refuseQuery },
      (request, reply) => {
        const prepared = operation.prepare(request.body);
        send(reply, prepared.status === "ready" ? prepared.compute() : prepared);
      },
    );
  }
}

function get(
  operation: Operation,
  fields: QueryFields,
  url: string,
  ifNoneMatch: string | undefined,
  reply: FastifyReply,
): void {
  const { scene, errors } = readQuery(queryOf(url), fields);
  const prepared = operation.prepare(scene, errors);
  if (prepared.status === "problem") {
    sendProblem(reply, prepared.problem);
    return;
  }
  const etag = etagOf(modelVersion, contractVersion, operation.name, prepared.canonical);
  if (matches(ifNoneMatch, etag)) {
    tag(reply, etag).code(304).send();
    return;
  }
  const answered = prepared.compute();
  if (answered.status === "ok") tag(reply, etag);
  send(reply, answered);
}

function send(reply: FastifyReply, answered: Answered | Refused): void {
  if (answered.status === "ok") sendJson(reply, toJson(answered.body));
  else sendProblem(reply, answered.problem);
}
