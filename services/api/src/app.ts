import Fastify, { type FastifyBaseLogger, type FastifyInstance, type FastifyServerOptions } from "fastify";
import { Computing } from "./compute/computing.js";
import { ComputePool, type PoolLimits } from "./compute/pool.js";
import { defaultExposure, type Exposure } from "./exposure.js";
import { logAbandoned } from "./http/abandoned.js";
import { AnswerCache } from "./http/answer-cache.js";
import { compressAnswers } from "./http/compress.js";
import { Connections } from "./http/connections.js";
import { Departure } from "./http/departure.js";
import { handleError } from "./http/errors.js";
import { takeOnlyJson } from "./http/json-body.js";
import { KnownRoutes } from "./http/known-routes.js";
import { LineShare } from "./http/line-share.js";
import { OneLineLog } from "./http/log-controller.js";
import { refuseMalformed } from "./http/malformed.js";
import { refuseOtherForms } from "./http/not-acceptable.js";
import { notFoundHandler } from "./http/not-found.js";
import { answerOptions } from "./http/options.js";
import { watchReadiness } from "./http/readiness.js";
import { requestId } from "./http/request-id.js";
import { limitSending } from "./http/send-limit.js";
import { sendRefusal } from "./http/send-problem.js";
import { serversWith } from "./http/server.js";
import { routedBy } from "./http/target.js";
import { Turns } from "./http/turns.js";
import { countRequests, Limiter, refuseBeyondBudget } from "./limiting/limiter.js";
import { defaultLimits, type Limits } from "./limits.js";
import { sharedSchemas } from "./openapi/components.js";
import { registerCors } from "./plugins/cors.js";
import { registerHelmet } from "./plugins/helmet.js";
import { registerMetrics } from "./plugins/metrics.js";
import { registerSwagger } from "./plugins/swagger.js";
import { defaultQuizSettings, type QuizSettings } from "./quiz-settings.js";
import { calculationRoutes } from "./routes/calculations.js";
import { changelogRoute } from "./routes/changelog.js";
import { clientPackageRoutes } from "./routes/client-package.js";
import { descriptionRoutes } from "./routes/description.js";
import { documentationRoutes } from "./routes/documentation.js";
import { healthRoutes } from "./routes/health.js";
import { operationsIndexRoute } from "./routes/index-of-operations.js";
import { pictureRoutes } from "./routes/pictures.js";
import { problemPageRoutes } from "./routes/problem-pages.js";
import { quizRoutes } from "./routes/quiz/routes.js";
import { referenceRoutes } from "./routes/reference.js";
import { sheetRoutes } from "./routes/sheets.js";
import type { TracingSettings } from "./tracing-settings.js";

export { defaultLimits } from "./limits.js";
export { defaultQuizSettings } from "./quiz-settings.js";

declare module "fastify" {
  interface FastifyInstance {
    /** Gets ready what would otherwise be made ready with the first heavy request. */
    warm: () => void;
    /** Takes no more connections, answers what comes on those there are, and resolves once none is left. */
    leave: () => Promise<void>;
  }
}

/** What an application is made of. Each may be left out. */
export interface AppOptions {
  /** where one line for each request goes; no log when left out */
  logger?: FastifyBaseLogger;
  /** sizes, times and counts beyond which a request is refused */
  limits?: Limits;
  /** which origins, proxies and scrapers it opens to */
  exposure?: Exposure;
  /** where traces go; when left out there are none, and nothing of them is loaded */
  tracing?: TracingSettings | undefined;
  /** the keys of papers and of instructors, and how long papers are marked */
  quiz?: QuizSettings;
}

/** The application, without a port. */
export async function createApp({
  logger,
  limits = defaultLimits,
  exposure = defaultExposure,
  tracing,
  quiz = defaultQuizSettings,
}: AppOptions = {}): Promise<FastifyInstance> {
  const limiter = new Limiter(limits);
  const departure = new Departure();
  const turns = new Turns();
  const lines = new LineShare({ cost: limits.costPerWindow, window_s: limits.window_s }, logger);
  const app = Fastify({
    ...(logger === undefined ? {} : { loggerInstance: logger }),
    logController: new OneLineLog(lines),
    schemaController: schemasOnlyDescribe,
    genReqId: requestId,
    trustProxy: exposure.trustedProxies.length > 0 && [...exposure.trustedProxies],
    bodyLimit: limits.bodyBytes,
    handlerTimeout: limits.handlerTimeout_ms,
    serverFactory: serversWith(limits, {
      connections: new Connections(limits, exposure.trustedProxies),
      departure,
      turns,
      lines,
      log: logger,
    }),
    routerOptions: {
      // Longer than any URL: what is too long is refused as such.
      maxParamLength: limits.headerBytes,
      // Query strings are read in one place, http/query.ts, by whoever takes them.
      querystringParser: () => ({}),
    },
    rewriteUrl: routedBy,
    // A request that is there already is answered, and its connection closed.
    return503OnClosing: false,
    // Each server refuses what is no HTTP by itself.
    clientErrorHandler: () => {},
    frameworkErrors: (error, request, reply) => {
      reply.header("x-request-id", request.id);
      // No hook runs for these.
      limiter.count(request, reply);
      if (!limiter.refuse(request, reply)) handleError(error, request, reply);
    },
  });
  const routes = new KnownRoutes();
  routes.watch(app);
  countRequests(app, limiter);
  if (tracing !== undefined) (await import("./plugins/tracing.js")).registerTracing(app, tracing);
  app.addHook("onRequest", (request, reply, done) => {
    reply.header("x-request-id", request.id);
    done();
  });
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
  app.addHook("onRequest", (request, reply, done) => {
    if ((request.raw.url ?? "").length <= limits.urlCharacters) done();
    else sendRefusal(reply, { because: "url_too_long", most_characters: limits.urlCharacters });
  });
  const pool = new ComputePool(poolLimits(limits));
  const computing = new Computing(pool, limiter, limits.handlerTimeout_ms);
  takeOnlyJson(app, { turns, away: computing.away.bind(computing) });
  app.addHook("onRequest", answerOptions(routes));
  app.addHook("onRequest", refuseOtherForms);
  const answerCache = new AnswerCache(limits.answerCacheBytes);
  app.addHook("onClose", () => pool.close());
  app.decorate("warm", () => pool.warm());
  app.decorate("backlog_s", () => pool.wait_s);
  pool.watch({ waited: () => {}, died: (error) => app.log.error({ err: error }, "a thread died") });
  app.decorate("metrics", undefined);
  if (exposure.metricsAt !== undefined) registerMetrics(app, answerCache, pool);
  app.setErrorHandler(handleError);
  const notFound = notFoundHandler(routes);
  app.setNotFoundHandler(notFound);
  // Before the body is read: what is wrong with it does not matter where nobody takes it.
  app.addHook("onRequest", (request, reply, done) => {
    if (request.is404) notFound(request, reply);
    else done();
  });
  for (const schema of sharedSchemas()) app.addSchema(schema);
  await registerSwagger(app);
  calculationRoutes(app, answerCache, computing);
  pictureRoutes(app, answerCache, computing);
  sheetRoutes(app, answerCache, computing);
  referenceRoutes(app);
  quizRoutes(app, quiz, computing);
  healthRoutes(app);
  problemPageRoutes(app);
  descriptionRoutes(app);
  operationsIndexRoute(app);
  changelogRoute(app);
  documentationRoutes(app);
  clientPackageRoutes(app);
  return app;
}

/** One client may keep every core busy, as there is one more thread than cores: the others always find one. */
function poolLimits({ workers, niceness, heavyPerClient, waitingPerClient, waiting }: Limits): PoolLimits {
  return {
    threads: workers + 1,
    niceness,
    runningPerClient: Math.min(heavyPerClient, workers),
    waitingPerClient,
    waiting,
  };
}

/**
 * The schemas of routes describe them. Checking scenes and putting answers into form is the business of
 * @sunfathom/answers, from the same schemas, so that the service and the offline mode cannot disagree. Named as the makers
 * of compilers, so that those that come with the framework are not even loaded.
 */
const schemasOnlyDescribe = {
  compilersFactory: {
    // The type asks for what one library makes; what is called is the function.
    buildValidator: (() => () => () => true) as unknown as Compilers["buildValidator"],
    buildSerializer: (() => () => JSON.stringify) satisfies Compilers["buildSerializer"],
  },
};

type Compilers = Required<
  NonNullable<NonNullable<FastifyServerOptions["schemaController"]>["compilersFactory"]>
>;
