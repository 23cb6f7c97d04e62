import { defaultExposure, type Exposure } from "./exposure.js";
import { defaultLimits, type Limits } from "./limits.js";
import { type QuizSettings, quizSettingsOf } from "./quiz-settings.js";
import { addressOf, isNetwork, isOrigin, items, oneOf, text, wholeNumber } from "./settings.js";
import { type TracingSettings, tracingOf } from "./tracing-settings.js";

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

/** Settings that there were: passed over in silence, they would seem to hold. */
const gone: Readonly<Record<string, string>> = {
  METRICS: "METRICS_LISTEN says where metrics are served, or off.",
  RATE_LIMIT_REQUESTS: "RATE_LIMIT_COST says what one client may ask for, in units of cost.",
  MAX_EVENT_LOOP_DELAY_MS: "nothing is refused for a busy thread, as WORKERS does what is heavy.",
};

/**
 * Reads the environment; no other module does. DEVELOPERS.md lists the variables.
 * @param env for example `process.env`
 * @throws Error that names the variable and what it can be; a bad value must stop the start, not surprise later
 */
export function readConfig(env: Readonly<Record<string, string | undefined>>): Config {
  for (const [name, instead] of Object.entries(gone))
    if (env[name] !== undefined) throw new Error(`${name} is not a variable any more: ${instead}`);
  return {
    host: text(env, "HOST", {
      fallback: "127.0.0.1",
      form: /^[^\s/]+$/,
      allowed: "a host name or address, such as 127.0.0.1",
    }),
    port: wholeNumber(env, "PORT", 8080, [0, 65535]),
    logLevel: oneOf(env, "LOG_LEVEL", "info", logLevels),
    limits: {
      ...defaultLimits,
      costPerWindow: wholeNumber(env, "RATE_LIMIT_COST", defaultLimits.costPerWindow, [0, 1e9]),
      window_s: wholeNumber(env, "RATE_LIMIT_WINDOW_S", defaultLimits.window_s, [1, 86_400]),
      workers: wholeNumber(env, "WORKERS", defaultLimits.workers, [1, 64]),
      heavyPerClient: wholeNumber(env, "HEAVY_PER_CLIENT", defaultLimits.heavyPerClient, [1, 64]),
      answerCacheBytes: wholeNumber(env, "ANSWER_CACHE_BYTES", defaultLimits.answerCacheBytes, [0, 4e9]),
      connections: wholeNumber(env, "MAX_CONNECTIONS", defaultLimits.connections, [1, 1_000_000]),
      connectionsPerAddress: wholeNumber(
        env,
        "MAX_CONNECTIONS_PER_ADDRESS",
        defaultLimits.connectionsPerAddress,
        [1, 1_000_000],
      ),
    },
    exposure: {
      corsOrigins:
        env["CORS_ORIGINS"] === "*"
          ? "*"
          : items(
              env,
              "CORS_ORIGINS",
              isOrigin,
              "* or whole origins such as https://shop.example, between commas",
            ),
      trustedProxies: items(
        env,
        "TRUST_PROXY",
        isNetwork,
        "addresses or networks such as 10.0.0.0/8, or loopback, between commas, none wider than /8 (IPv6: /7)",
      ),
      metricsAt: addressOf(env, "METRICS_LISTEN", defaultExposure.metricsAt),
    },
    tracing: tracingOf(env),
    quiz: quizSettingsOf(env),
    drain_ms: wholeNumber(env, "DRAIN_MS", 1000, [0, 600_000]),
    grace_ms: wholeNumber(env, "GRACE_MS", 25_000, [0, 600_000]),
  };
}
