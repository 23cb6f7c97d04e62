import type { FastifyBaseLogger, FastifyInstance } from "fastify";
import { Computing } from "./compute/computing.js";
import { ComputePool, type PoolLimits } from "./compute/pool.js";
import { defaultExposure, type Exposure } from "./config/exposure.js";
import { defaultLimits, type Limits } from "./config/limits.js";
import { defaultQuizSettings, type QuizSettings } from "./config/quiz-settings.js";
import type { TracingSettings } from "./config/tracing-settings.js";
import { batches } from "./features/batches/routes.js";
import { calculations } from "./features/calculations/routes.js";
import { documentation } from "./features/documentation/routes.js";
import { operations } from "./features/operations/health.js";
import { registerMetrics } from "./features/operations/metrics.js";
import { pictures } from "./features/pictures/routes.js";
import { quiz } from "./features/quiz/routes.js";
import { reference } from "./features/reference/routes.js";
import { sheets } from "./features/sheets/routes.js";
import { trips } from "./features/trips/routes.js";
import { baseWith } from "./http/base.js";
import { meetEveryRequest } from "./http/every-request.js";
import { AnswerCache } from "./http/sent/answer-cache.js";
import { Limiter } from "./limiting/limiter.js";
import { sharedSchemas } from "./openapi/components.js";
import { registerSwagger } from "./plugins/swagger.js";

export { defaultLimits } from "./config/limits.js";
export { defaultQuizSettings } from "./config/quiz-settings.js";

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
  /** threads that it shares with other applications, and that outlive it; its own when left out */
  pool?: ComputePool;
}

/** The application, without a port: what every request meets, then its features, each a plugin of its own. */
export async function createApp({
  logger,
  limits = defaultLimits,
  exposure = defaultExposure,
  tracing,
  quiz: quizSettings = defaultQuizSettings,
  pool: sharedPool,
}: AppOptions = {}): Promise<FastifyInstance> {
  const limiter = new Limiter(limits);
  const base = baseWith(limiter, { logger, limits, exposure });
  const { app } = base;
  const pool = sharedPool ?? ownPool(app, limits);
  app.decorate("warm", () => pool.warm());
  app.decorate("backlog_s", () => pool.wait_s);
  const computing = new Computing(pool, limiter, limits.handlerTimeout_ms);
  await meetEveryRequest(base, { limits, exposure, tracing, limiter, computing });
  const cache = new AnswerCache(limits.answerCacheBytes);
  app.decorate("metrics", undefined);
  if (exposure.metricsAt !== undefined) registerMetrics(app, cache, pool);
  for (const schema of sharedSchemas()) app.addSchema(schema);
  await registerSwagger(app);

  const shared = { cache, computing, limits };
  await app.register(calculations, shared);
  await app.register(batches, shared);
  await app.register(pictures, shared);
  await app.register(sheets, shared);
  await app.register(trips, shared);
  await app.register(reference);
  await app.register(quiz, { ...shared, quiz: quizSettings });
  await app.register(operations);
  await app.register(documentation);
  return app;
}

/** Threads for heavy work that live as long as the application. */
function ownPool(app: FastifyInstance, limits: Limits): ComputePool {
  const pool = new ComputePool(poolLimits(limits));
  app.addHook("onClose", () => pool.close());
  pool.watch({ waited: () => {}, died: (error) => app.log.error({ err: error }, "a thread died") });
  return pool;
}

/** One client may keep every core busy, as there is one more thread than cores: the others always find one. */
export function poolLimits({
  workers,
  niceness,
  heavyPerClient,
  waitingPerClient,
  waiting,
}: Limits): PoolLimits {
  return {
    threads: workers + 1,
    niceness,
    runningPerClient: Math.min(heavyPerClient, workers),
    waitingPerClient,
    waiting,
  };
}
