import { modelVersion, type Operation, operations, type Refused, toBytes } from "@sunfathom/answers";
import { contractVersion } from "@sunfathom/contract";
import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import type { AnswerCache } from "../http/answer-cache.js";
import { etagOf, matches } from "../http/etag.js";
import { KnownTags } from "../http/known-tags.js";
import { queryOf } from "../http/path-of.js";
import { type QueryFields, queryFieldsOf, readQuery } from "../http/query.js";
import { refuseQuery } from "../http/refuse-query.js";
import { sendJson, tag } from "../http/send-json.js";
import { sendProblem } from "../http/send-problem.js";
import { calculationByGet, calculationByPost } from "../openapi/calculation.js";

type Prepared = ReturnType<Operation["prepare"]>;
type Ready = Exclude<Prepared, Refused>;

/** Every calculation of the table, by POST and by GET: same schema, same bytes. */
export function calculationRoutes(app: FastifyInstance, cache: AnswerCache): void {
  const kept = { cache, tags: new KnownTags() };
  for (const operation of operations) {
    const fields = queryFieldsOf(operation);
    app.get(operation.path, { schema: calculationByGet(operation) }, (request, reply) => {
      get(operation, fields, request, kept, reply);
    });
    app.post(
      operation.path,
      { schema: calculationByPost(operation), onRequest: refuseQuery },
      (request, reply) => post(operation, request.body, cache, reply),
    );
  }
}

function get(
  operation: Operation,
  fields: QueryFields,
  { raw: { url = "" }, headers }: FastifyRequest,
  { cache, tags }: { cache: AnswerCache; tags: KnownTags },
  reply: FastifyReply,
): void {
  const ifNoneMatch = headers["if-none-match"];
  const known = tags.get(url);
  if (known !== undefined && matches(ifNoneMatch, known)) {
    tag(reply, known).code(304).send();
    return;
  }
  const { scene, errors } = readQuery(queryOf(url), fields);
  const prepared = operation.prepare(scene, errors);
  if (prepared.status === "problem") {
    sendProblem(reply, prepared.problem);
    return;
  }
  const etag = known ?? etagOfAnswer(operation, prepared);
  tags.keep(url, etag);
  if (matches(ifNoneMatch, etag)) {
    tag(reply, etag).code(304).send();
    return;
  }
  const answered = bytesOf(prepared, etag, cache);
  if (Buffer.isBuffer(answered)) sendJson(tag(reply, etag), answered);
  else sendProblem(reply, answered.problem);
}

function post(operation: Operation, body: unknown, cache: AnswerCache, reply: FastifyReply): void {
  const prepared = operation.prepare(body);
  if (prepared.status === "problem") {
    sendProblem(reply, prepared.problem);
    return;
  }
  const etag = cache.isOn ? etagOfAnswer(operation, prepared) : "";
  const answered = bytesOf(prepared, etag, cache);
  if (Buffer.isBuffer(answered)) sendJson(reply, answered);
  else sendProblem(reply, answered.problem);
}

function etagOfAnswer({ name }: Operation, { canonical }: Ready): string {
  return etagOf(modelVersion, contractVersion, name, canonical);
}

/** The answer as JSON, from the cache or worked out; or why there is none. */
function bytesOf(ready: Ready, etag: string, cache: AnswerCache): Buffer | Refused {
  const kept = cache.get(etag);
  if (kept !== undefined) return kept;
  const answered = ready.compute();
  if (answered.status === "problem") return answered;
  const bytes = toBytes(answered);
  cache.keep(etag, bytes);
  return Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
}
