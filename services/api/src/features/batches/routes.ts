import { Readable } from "node:stream";
import type { BatchPlan } from "@sunfathom/answers";
import type { FastifyPluginAsync, FastifyReply, FastifyRequest } from "fastify";
import type { Computing } from "../../compute/computing.js";
import type { Limits } from "../../config/limits.js";
import { encodingFor } from "../../http/asked/accept-encoding.js";
import { tellLanguage, tongueFor } from "../../http/asked/language.js";
import { queryOf } from "../../http/asked/path-of.js";
import { refusedQuery } from "../../http/asked/query.js";
import { fieldsProblem, refuseFor } from "../../http/asked/refuse-query.js";
import { varyBy } from "../../http/sent/vary.js";
import { operationIn } from "../../tongues.js";
import type { Shared } from "../shared.js";
import { batchByPost } from "./description.js";
import { gzipped } from "./gzipped.js";
import { BatchRun } from "./run.js";
import { Seats } from "./seats.js";
import { readerOf } from "./work.js";

/** Lines of JSON. */
const lines = "application/jsonl";

/** Many scenes in one call, answered as a stream. */
export const batches: FastifyPluginAsync<Shared> = async (app, { limits, computing }) => {
  const seats = new Seats(limits);
  app.post(
    "/v1/batches",
    {
      schema: batchByPost,
      bodyLimit: limits.batchBodyBytes,
      config: {
        reader: { batch: true },
        refusesBodyAs: "invalid_request",
        answersIn: lines,
        streams: true,
        waitsForBudget_ms: limits.batchDoor_ms,
      },
      onRequest: (request, reply, done) => {
        if (seats.take(request, reply, computing.wait_s) && !refusedFor(request, reply)) done();
      },
    },
    (request, reply) => answer(request, reply, { limits, computing }),
  );
};

/** Refuses what a query has beside `fields`. Whether an answer has these is seen once it is known which answers there will be. */
function refusedFor(request: FastifyRequest, reply: FastifyReply): boolean {
  const { problems, operations } = tongueFor(request);
  const [any] = operations;
  const { query } =
    any === undefined ? { query: "" } : readerOf(any)(queryOf(request.raw.url ?? ""), problems.fields);
  if (query === "") return false;
  refuseFor(
    reply,
    refusedQuery(query, problems.query, "fields_alone"),
    problems.queryDetails.takes_fields_alone({}),
  );
  return true;
}

function answer(
  request: FastifyRequest,
  reply: FastifyReply,
  { limits, computing }: { limits: Limits; computing: Computing },
): FastifyReply {
  const plan = request.body as BatchPlan;
  const tongue = tongueFor(request);
  const query = queryOf(request.raw.url ?? "");
  const names = plan.kind === "items" ? plan.items.map(({ operation }) => operation) : [plan.operation];
  for (const name of new Set(names)) {
    const { errors } = readerOf(operationIn(tongue, name))(query, tongue.problems.fields);
    if (errors.length === 0) continue;
    computing.refuse(request, reply, fieldsProblem(request, errors));
    return reply;
  }
  const run = new BatchRun(
    { plan, language: tongue.language, query, requestId: request.id },
    {
      ...computing.inParts(request),
      isStopping: () => !request.server.isReady(),
      failed: (message) => request.log.error({ err: new Error(message) }, "a scene of a batch failed"),
      longest_ms: limits.batchLongest_ms,
      pause_ms: limits.batchPause_ms,
    },
  );
  // Whoever reads slowly is where the run looks at its time no more: what is left then has as long to leave as any answer.
  const cutOff = () => request.raw.socket.destroy();
  const timer = setTimeout(cutOff, limits.batchLongest_ms + limits.sendTimeout_ms).unref();
  reply.raw.once("close", () => {
    clearTimeout(timer);
    run.leave();
  });
  tellLanguage(reply).header("content-type", `${lines}; charset=utf-8`).header("cache-control", "no-store");
  varyBy(reply, "Accept-Encoding");
  const isPacked = encodingFor(request.headers["accept-encoding"], ["gzip"]) !== undefined;
  if (isPacked) reply.header("content-encoding", "gzip");
  const stream = isPacked ? gzipped(run.lines()) : run.lines();
  return reply.send(Readable.from(stream, { highWaterMark: 1 }));
}
