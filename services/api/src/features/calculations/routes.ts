import { build, type Operation, type Refused, toBytes } from "@sunfathom/answers";
import type { FastifyPluginAsync, FastifyReply, FastifyRequest } from "fastify";
import type { Computing } from "../../compute/computing.js";
import { costOfCalculation } from "../../compute/cost.js";
import type { Outcome } from "../../compute/tasks.js";
import { type FieldsReader, fieldsReader, type Part } from "../../http/asked/fields-asked.js";
import { tellLanguage, tongueFor } from "../../http/asked/language.js";
import { queryOf } from "../../http/asked/path-of.js";
import { type QueryFields, queryFieldsOf, readQuery } from "../../http/asked/query.js";
import { acceptQuery, queryMethod } from "../../http/asked/query-method.js";
import { fieldsProblem, refuseAllButFields } from "../../http/asked/refuse-query.js";
import type { AnswerCache } from "../../http/sent/answer-cache.js";
import { forMinutes, forTheModel } from "../../http/sent/caching.js";
import { etagOf, matches } from "../../http/sent/etag.js";
import { KnownTags } from "../../http/sent/known-tags.js";
import { sendJson, tag } from "../../http/sent/send-json.js";
import { sendProblem } from "../../http/sent/send-problem.js";
import { operations } from "../../operations.js";
import { operationIn, type Tongue } from "../../tongues.js";
import type { Shared } from "../shared.js";
import { calculationByGet, calculationByPost } from "./description.js";

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
  /** In which it is answered. */
  tongue: Tongue;
  prepared: Ready;
  /** As it came in. */
  scene: unknown;
  /** Of the whole answer. */
  etag: string;
}

type Named = (typeof operations)[number];

/** Every calculation of the table, by POST, by GET and by QUERY: same schema, same bytes. */
export const calculations: FastifyPluginAsync<Shared> = async (app, { cache, computing }) => {
  const kept = { cache, computing, tags: new KnownTags() };
  for (const operation of operations) {
    const fields = queryFieldsOf(operation);
    const readFields = fieldsReader(operation);
    app.get(operation.path, { schema: calculationByGet(operation) }, (request, reply) => {
      get({ operation, fields, readFields }, { request, reply }, kept);
    });
    const withBody = {
      config: { reader: { operation: operation.name }, answersIn: "application/json" } as const,
      onRequest: refuseAllButFields(readFields, computing.refuse.bind(computing)),
    };
    app.post(operation.path, { ...withBody, schema: calculationByPost(operation) }, (request, reply) => {
      withScene({ operation, readFields }, { request, reply }, kept);
    });
    app.route({
      ...withBody,
      method: queryMethod,
      url: operation.path,
      schema: { hide: true },
      handler: (request, reply) => {
        withScene({ operation, readFields }, { request, reply: acceptQuery(reply) }, kept);
      },
    });
  }
};

interface Exchange {
  request: FastifyRequest;
  reply: FastifyReply;
}

/** What is asked by a route. */
interface Route {
  operation: Named;
  readFields: FieldsReader;
}

function get(
  { operation, fields, readFields }: Route & { fields: QueryFields },
  { request, reply }: Exchange,
  kept: Kept,
): void {
  const {
    raw: { url = "" },
    headers,
  } = request;
  const { tags } = kept;
  const ifNoneMatch = headers["if-none-match"];
  const tongue = tongueFor(request);
  tellLanguage(reply);
  const place = `${tongue.language} ${url}`;
  const known = tags.get(place);
  if (known !== undefined && matches(ifNoneMatch, known)) {
    tag(reply, known, lifetimeOf(url)).code(304).send();
    return;
  }
  const asked = readFields(queryOf(url), tongue.problems.fields);
  if (asked.errors.length > 0) {
    kept.computing.refuse(request, reply, fieldsProblem(request, asked.errors));
    return;
  }
  const { part } = asked;
  const { scene, errors } = readQuery(asked.query, fields, tongue.problems.query);
  const prepared = operationIn(tongue, operation.name).prepare(scene, errors);
  if (prepared.status === "problem") {
    kept.computing.refuse(request, reply, prepared.problem);
    return;
  }
  const etag = known ?? etagOfAnswer(operation, tongue, prepared, part);
  tags.keep(place, etag);
  if (matches(ifNoneMatch, etag)) {
    tag(reply, etag, lifetimeOf(url)).code(304).send();
    return;
  }
  const etagOfWhole = part === undefined ? etag : etagOfAnswer(operation, tongue, prepared);
  answerWith({ operation, tongue, prepared, scene, etag: etagOfWhole }, { request, reply }, kept, (bytes) =>
    sendJson(tag(reply, etag, lifetimeOf(url)), part?.of(bytes) ?? bytes),
  );
}

/** What names another model than there is has been refused by then. */
const lifetimeOf = (url: string) => (/[?&]expect_model_version=/.test(url) ? forTheModel : forMinutes);

/** By POST, and by QUERY, whose answers may be kept and asked for again as those of GET may (RFC 10008, section 2). */
function withScene({ operation, readFields }: Route, { request, reply }: Exchange, kept: Kept): void {
  const tongue = tongueFor(request);
  tellLanguage(reply);
  const prepared = operationIn(tongue, operation.name).prepare(request.body);
  if (prepared.status === "problem") {
    kept.computing.refuse(request, reply, prepared.problem);
    return;
  }
  const { part } = readFields(queryOf(request.raw.url ?? ""), tongue.problems.fields);
  const etag = etagOfAnswer(operation, tongue, prepared);
  const ofPart = part === undefined ? etag : etagOfAnswer(operation, tongue, prepared, part);
  const lifetime = request.method === queryMethod ? lifetimeOfScene(request.body) : undefined;
  if (lifetime !== undefined && matches(request.headers["if-none-match"], ofPart)) {
    kept.computing.again(request, reply, prepared.scene, () => tag(reply, ofPart, lifetime).code(304).send());
    return;
  }
  answerWith({ operation, tongue, prepared, scene: request.body, etag }, { request, reply }, kept, (bytes) =>
    sendJson(tag(reply, ofPart, lifetime), part?.of(bytes) ?? bytes),
  );
}

const lifetimeOfScene = (scene: unknown): string =>
  typeof scene === "object" && scene !== null && "expect_model_version" in scene ? forTheModel : forMinutes;

/** @param part undefined for the whole answer */
function etagOfAnswer(
  { name }: Operation,
  { language }: Tongue,
  { canonical, units }: Ready,
  part?: Part,
): string {
  const whole = [build, name, language, units, canonical] as const;
  return part === undefined ? etagOf(...whole) : etagOf(...whole, part.key);
}

/** Answers with bytes from the cache, or with what is worked out; or with why there is none. */
function answerWith(
  { operation: { name }, tongue: { language }, prepared, scene, etag }: Asked,
  { request, reply }: Exchange,
  { cache, computing }: Kept,
  sendBytes: (bytes: Buffer) => void,
): void {
  const known = cache.get(etag);
  if (known !== undefined) {
    computing.again(request, reply, prepared.scene, () => sendBytes(known));
    return;
  }
  computing.do(request, reply, {
    task: { kind: "calculation", name, scene, language },
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
