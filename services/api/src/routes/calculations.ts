import { build, type Operation, type Refused, toBytes } from "@sunfathom/answers";
import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import type { Computing } from "../compute/computing.js";
import { costOfCalculation } from "../compute/cost.js";
import type { Outcome } from "../compute/tasks.js";
import type { AnswerCache } from "../http/answer-cache.js";
import { etagOf, matches } from "../http/etag.js";
import { KnownTags } from "../http/known-tags.js";
import { queryOf } from "../http/path-of.js";
import { type QueryFields, queryFieldsOf, readQuery } from "../http/query.js";
import { refuseQuery } from "../http/refuse-query.js";
import { sendJson, tag } from "../http/send-json.js";
import { sendProblem } from "../http/send-problem.js";
import { calculationByGet, calculationByPost } from "../openapi/calculation.js";
import { operations } from "../operations.js";

type Prepared = ReturnType<Operation["prepare"]>;
type Ready = Exclude<Prepared, Refused>;

/** What requests have in common. */
interface Kept {
  cache: AnswerCache;
  tags: KnownTags;
  computing: Computing;
}

/** What is to be answered. */
interface Asked {
  operation: Named;
  prepared: Ready;
  /** As it came in. */
  scene: unknown;
  etag: string;
}

type Named = (typeof operations)[number];

/** Every calculation of the table, by POST and by GET: same schema, same bytes. */
export function calculationRoutes(app: FastifyInstance, cache: AnswerCache, computing: Computing): void {
  const kept = { cache, computing, tags: new KnownTags() };
  for (const operation of operations) {
    const fields = queryFieldsOf(operation);
    app.get(operation.path, { schema: calculationByGet(operation) }, (request, reply) => {
      get(operation, fields, { request, reply }, kept);
    });
    app.post(
      operation.path,
      {
        schema: calculationByPost(operation),
        config: { reader: { operation: operation.name } },
        onRequest: refuseQuery,
      },
      (request, reply) => {
        post(operation, { request, reply }, kept);
      },
    );
  }
}

interface Exchange {
  request: FastifyRequest;
  reply: FastifyReply;
}

function get(operation: Named, fields: QueryFields, { request, reply }: Exchange, kept: Kept): void {
  const {
    raw: { url = "" },
    headers,
  } = request;
  const { tags } = kept;
  const ifNoneMatch = headers["if-none-match"];
  const known = tags.get(url);
  if (known !== undefined && matches(ifNoneMatch, known)) {
    tag(reply, known).code(304).send();
    return;
  }
  const { scene, errors } = readQuery(queryOf(url), fields);
  const prepared = operation.prepare(scene, errors);
  if (prepared.status === "problem") {
    kept.computing.refuse(request, reply, prepared.problem);
    return;
  }
  const etag = known ?? etagOfAnswer(operation, prepared);
  tags.keep(url, etag);
  if (matches(ifNoneMatch, etag)) {
    tag(reply, etag).code(304).send();
    return;
  }
  answerWith({ operation, prepared, scene, etag }, { request, reply }, kept, (bytes) =>
    sendJson(tag(reply, etag), bytes),
  );
}

function post(operation: Named, { request, reply }: Exchange, kept: Kept): void {
  const prepared = operation.prepare(request.body);
  if (prepared.status === "problem") {
    kept.computing.refuse(request, reply, prepared.problem);
    return;
  }
  const etag = kept.cache.isOn ? etagOfAnswer(operation, prepared) : "";
  answerWith({ operation, prepared, scene: request.body, etag }, { request, reply }, kept, (bytes) =>
    sendJson(reply, bytes),
  );
}

function etagOfAnswer({ name }: Operation, { canonical }: Ready): string {
  return etagOf(build, name, canonical);
}

/** Answers with bytes from the cache, or with what is worked out; or with why there is none. */
function answerWith(
  { operation: { name }, prepared, scene, etag }: Asked,
  { request, reply }: Exchange,
  { cache, computing }: Kept,
  sendBytes: (bytes: Buffer) => void,
): void {
  const known = cache.get(etag);
  if (known !== undefined) {
    sendBytes(known);
    return;
  }
  computing.do(request, reply, {
    task: { kind: "calculation", name, scene },
    cost: costOfCalculation(name, prepared.scene),
    here: () => outcomeOf(prepared),
    send: (outcome) => {
      if (outcome.status === "problem") sendProblem(reply, outcome.problem);
      if (outcome.status !== "ok") return;
      const { bytes } = outcome;
      cache.keep(etag, bytes);
      sendBytes(Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength));
    },
  });
}

function outcomeOf(ready: Ready): Outcome {
  const answered = ready.compute();
  return answered.status === "problem" ? answered : { status: "ok", bytes: toBytes(answered) };
}
