import { build } from "@sunfathom/answers";
import type { FastifyPluginAsync, FastifyReply, FastifyRequest } from "fastify";
import Negotiator from "negotiator";
import type { Computing } from "../../compute/computing.js";
import type { TripRead } from "../../compute/tasks.js";
import { tellLanguage, tongueFor } from "../../http/asked/language.js";
import { acceptQuery, queryMethod } from "../../http/asked/query-method.js";
import { refuseQuery } from "../../http/asked/refuse-query.js";
import type { AnswerCache } from "../../http/sent/answer-cache.js";
import { privateForMinutes } from "../../http/sent/caching.js";
import { etagOf, matches } from "../../http/sent/etag.js";
import { sendJson, tag } from "../../http/sent/send-json.js";
import { sendProblem } from "../../http/sent/send-problem.js";
import { varyBy } from "../../http/sent/vary.js";
import type { Shared } from "../shared.js";
import { tripByPost } from "./description.js";
import { tripOperations } from "./index.js";
import { headersOf, type TripForm } from "./trip-form.js";
import type { TripOperation } from "./trip-operation.js";

/** Everything that plans more than one scene at a time. */
export const trips: FastifyPluginAsync<Shared> = async (app, { cache, computing, limits }) => {
  for (const operation of tripOperations) {
    const url = `/v1/${operation.name}`;
    const config = {
      reader: { trip: operation.name },
      refusesBodyAs: "invalid_request",
      answersIn: operation.forms,
    } as const;
    const bodyLimit = operation.isLarge ? limits.batchBodyBytes : limits.bodyBytes;
    const answer = answerer(operation, cache, computing);
    app.post(
      url,
      { schema: tripByPost(operation), config, bodyLimit, onRequest: refuseQuery },
      (request, reply) => answer(request, reply, undefined),
    );
    app.route({
      method: queryMethod,
      url,
      schema: { hide: true },
      config,
      bodyLimit,
      onRequest: refuseQuery,
      handler: (request, reply) => answer(request, acceptQuery(reply), privateForMinutes),
    });
  }
};

/** The form that `Accept` likes best (RFC 9110, section 12.5.1): the usual one where it has no say. */
function formFor({ headers: { accept } }: FastifyRequest, { forms }: TripOperation): TripForm {
  const [usual, ...others] = forms;
  if (others.length === 0 || accept === undefined) return usual;
  const negotiator = new Negotiator({ headers: { accept: accept.slice(0, longestAccept) } });
  return (negotiator.mediaType([...forms]) as TripForm | undefined) ?? usual;
}

/** Of an `Accept` no more is read: programs send some tens of characters, and browsers a hundred. */
const longestAccept = 512;

function answerer(operation: TripOperation, cache: AnswerCache, computing: Computing) {
  const { name } = operation;
  return (request: FastifyRequest, reply: FastifyReply, lifetime: string | undefined): void => {
    const { language } = tongueFor(request);
    const { digest, bytes, cost } = request.body as TripRead;
    const form = formFor(request, operation);
    tellLanguage(reply);
    if (operation.forms.length > 1) varyBy(reply, "Accept");
    const etag = etagOf(build, `trips/${name}`, form, language, digest);
    if (lifetime !== undefined && matches(request.headers["if-none-match"], etag)) {
      tag(reply, etag, lifetime).code(304).send();
      return;
    }
    const send = (bytes: Buffer) => {
      if (form === "application/json") sendJson(tag(reply, etag, lifetime), bytes);
      else tag(reply, etag, lifetime).headers(headersOf(name, form)).send(bytes);
    };
    const known = cache.get(etag);
    if (known !== undefined) {
      send(known);
      return;
    }
    computing.do(request, reply, {
      task: { kind: "trip", name, bytes, form, language },
      cost,
      send: (outcome) => {
        if (outcome.status === "problem") sendProblem(reply, outcome.problem);
        if (outcome.status !== "ok") return;
        const { bytes } = outcome;
        cache.keep(etag, bytes);
        send(Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength));
      },
    });
  };
}
