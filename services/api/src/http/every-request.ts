import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import type { Computing } from "../compute/computing.js";
import type { Exposure } from "../config/exposure.js";
import type { Limits } from "../config/limits.js";
import type { TracingSettings } from "../config/tracing-settings.js";
import { countRequests, type Limiter, refuseBeyondBudget } from "../limiting/limiter.js";
import { registerCors } from "../plugins/cors.js";
import { registerHelmet } from "../plugins/helmet.js";
import { takeOnlyJson } from "./asked/json-body.js";
import { KnownRoutes } from "./asked/known-routes.js";
import { refuseMalformed } from "./asked/malformed.js";
import { refuseOtherForms } from "./asked/not-acceptable.js";
import { notFoundHandler } from "./asked/not-found.js";
import { answerOptions } from "./asked/options.js";
import type { Base } from "./base.js";
import { logAbandoned } from "./log/abandoned.js";
import { watchReadiness } from "./readiness.js";
import { compressAnswers } from "./sent/compress.js";
import { handleError } from "./sent/errors.js";
import { sendRefusal } from "./sent/send-problem.js";
import { limitSending } from "./sockets/send-limit.js";

interface Meeting {
  limits: Limits;
  exposure: Exposure;
  tracing: TracingSettings | undefined;
  limiter: Limiter;
  computing: Computing;
}

/** What every request meets, in this order, whatever it asks for. */
export async function meetEveryRequest(
  { app, departure, turns, lines }: Base,
  { limits, exposure, tracing, limiter, computing }: Meeting,
): Promise<void> {
  const routes = new KnownRoutes();
  routes.watch(app);
  countRequests(app, limiter);
  if (tracing !== undefined) (await import("../plugins/tracing.js")).registerTracing(app, tracing);
  app.addHook("onRequest", (request, reply, done) => {
    reply.header("x-request-id", request.id);
    done();
  });
  app.addHook("onRequest", keepQuietly);
  logAbandoned(app, lines);
  watchReadiness(app);
  app.decorate("leave", () => departure.leave(app));
  limitSending(app, limits.sendTimeout_ms);
  registerHelmet(app);
  compressAnswers(app);
  await registerCors(app, exposure.corsOrigins);
  refuseBeyondBudget(app, limiter);
  // What refuses a request for itself comes after what every answer has, and after the count.
  app.addHook("onRequest", refuseMalformed);
  refuseLongUrls(app, limits.urlCharacters);
  takeOnlyJson(app, { turns, away: computing.away.bind(computing), owe: computing.owe.bind(computing) });
  app.addHook("onRequest", answerOptions(routes));
  app.addHook("onRequest", refuseOtherForms);
  app.setErrorHandler(handleError);
  const notFound = notFoundHandler(routes);
  app.setNotFoundHandler(notFound);
  // Before the body is read: what is wrong with it does not matter where nobody takes it.
  app.addHook("onRequest", (request, reply, done) => {
    if (request.is404) notFound(request, reply);
    else done();
  });
}

function refuseLongUrls(app: FastifyInstance, most_characters: number): void {
  app.addHook("onRequest", (request, reply, done) => {
    if ((request.raw.url ?? "").length <= most_characters) done();
    else sendRefusal(reply, { because: "url_too_long", most_characters });
  });
}

/**
 * Says nothing of a connection that is kept, which HTTP/1.1 takes for granted (RFC 9112, section 9.3): Node.js would spend a tenth of
 * all headers on it. One that closes says so.
 */
function keepQuietly({ raw: asked }: FastifyRequest, { raw }: FastifyReply, done: () => void): void {
  if (asked.httpVersion === "1.1" && raw.shouldKeepAlive) raw.removeHeader("connection");
  done();
}
