import { z } from "zod";
import { quizSettingsOf } from "./environment/quiz.js";
import { tracingOf } from "./environment/tracing.js";
import {
  type Environment,
  gone,
  isNetwork,
  isOrigin,
  items,
  listenAddress,
  oneOf,
  readVariables,
  says,
  text,
  wholeNumber,
} from "./environment/variables.js";
import { defaultExposure, type Exposure } from "./exposure.js";
import { defaultLimits, type Limits } from "./limits.js";
import type { QuizSettings } from "./quiz-settings.js";
import type { TracingSettings } from "./tracing-settings.js";

// zod is loaded for the settings alone. In a started service that is 3 MB of 125, and in its two seconds of processor time it is lost
// (measured with and without, four times each); a check by hand would be more code here than that is worth.

/** What the environment says of this process. */
export interface Config {
  host: string;
  port: number;
  logLevel: LogLevel;
  limits: Limits;
  exposure: Exposure;
  /** None where traces go nowhere. */
  tracing: TracingSettings | undefined;
  quiz: QuizSettings;
  /** After SIGTERM: how long readiness is denied before new connections are, for load balancers to look away. */
  drain_ms: number;
  /** Then: how long what was asked may take to be answered before the process ends all the same. */
  grace_ms: number;
}

const logLevels = ["fatal", "error", "warn", "info", "debug", "trace", "silent"] as const;
type LogLevel = (typeof logLevels)[number];

const origins = "* or whole origins such as https://shop.example, between commas";

const variables = z.object({
  HOST: text(/^[^\s/]+$/, "a host name or address, such as 127.0.0.1").default("127.0.0.1"),
  PORT: wholeNumber([0, 65_535]).default(8080),
  LOG_LEVEL: oneOf(logLevels).default("info"),
  RATE_LIMIT_COST: wholeNumber([0, 1e9]).default(defaultLimits.costPerWindow),
  RATE_LIMIT_WINDOW_S: wholeNumber([1, 86_400]).default(defaultLimits.window_s),
  WORKERS: wholeNumber([1, 64]).default(defaultLimits.workers),
  HEAVY_PER_CLIENT: wholeNumber([1, 64]).default(defaultLimits.heavyPerClient),
  ANSWER_CACHE_BYTES: wholeNumber([0, 4e9]).default(defaultLimits.answerCacheBytes),
  ANSWER_TIMEOUT_S: wholeNumber([1, 3600]).default(defaultLimits.handlerTimeout_ms / 1000),
  MAX_CONNECTIONS: wholeNumber([1, 1_000_000]).default(defaultLimits.connections),
  MAX_CONNECTIONS_PER_ADDRESS: wholeNumber([1, 1_000_000]).default(defaultLimits.connectionsPerAddress),
  CORS_ORIGINS: z.union([z.literal("*"), items(isOrigin, origins)], says(origins)).default([]),
  TRUST_PROXY: items(
    isNetwork,
    "addresses or networks such as 10.0.0.0/8, or loopback, between commas, none wider than /8 (IPv6: /7)",
  ).default([]),
  METRICS_LISTEN: listenAddress().default(defaultExposure.metricsAt ?? "off"),
  DRAIN_MS: wholeNumber([0, 600_000]).default(1000),
  GRACE_MS: wholeNumber([0, 600_000]).default(25_000),
  METRICS: gone("METRICS_LISTEN says where metrics are served, or off."),
  RATE_LIMIT_REQUESTS: gone("RATE_LIMIT_COST says what one client may ask for, in units of cost."),
  MAX_EVENT_LOOP_DELAY_MS: gone("nothing is refused for a busy thread, as WORKERS does what is heavy."),
});

/**
 * Reads the environment; no other module does. DEVELOPERS.md lists the variables.
 * @param env for example `process.env`
 * @throws Error that names the variable and what it can be; a bad value must stop the start, not surprise later
 */
export function readConfig(env: Environment): Config {
  const read = readVariables(env, variables);
  return {
    host: read.HOST,
    port: read.PORT,
    logLevel: read.LOG_LEVEL,
    limits: {
      ...defaultLimits,
      costPerWindow: read.RATE_LIMIT_COST,
      window_s: read.RATE_LIMIT_WINDOW_S,
      workers: read.WORKERS,
      heavyPerClient: read.HEAVY_PER_CLIENT,
      answerCacheBytes: read.ANSWER_CACHE_BYTES,
      handlerTimeout_ms: read.ANSWER_TIMEOUT_S * 1000,
      // Nothing comes on a connection while its answer is worked out.
      connectionTimeout_ms: Math.max(
        defaultLimits.connectionTimeout_ms,
        read.ANSWER_TIMEOUT_S * 1000 + 10_000,
      ),
      connections: read.MAX_CONNECTIONS,
      connectionsPerAddress: read.MAX_CONNECTIONS_PER_ADDRESS,
    },
    exposure: {
      corsOrigins: read.CORS_ORIGINS,
      trustedProxies: read.TRUST_PROXY,
      metricsAt: read.METRICS_LISTEN === "off" ? undefined : read.METRICS_LISTEN,
    },
    tracing: tracingOf(env),
    quiz: quizSettingsOf(env),
    drain_ms: read.DRAIN_MS,
    grace_ms: read.GRACE_MS,
  };
}
