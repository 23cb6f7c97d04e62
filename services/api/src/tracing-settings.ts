import { oneOf, wholeNumber } from "./settings.js";

/** Where traces go, and which. */
export interface TracingSettings {
  /** Takes OTLP over HTTP, in JSON. */
  url: string;
  headers: Readonly<Record<string, string>>;
  timeout_ms: number;
  serviceName: string;
  /** More to say of this process, such as `deployment.environment.name`. */
  attributes: Readonly<Record<string, string>>;
  sampler: Sampler;
  /** Share of traces that the samplers by ratio keep. */
  ratio: number;
}

const samplers = [
  "always_on",
  "always_off",
  "traceidratio",
  "parentbased_always_on",
  "parentbased_always_off",
  "parentbased_traceidratio",
] as const;
type Sampler = (typeof samplers)[number];

type Environment = Readonly<Record<string, string | undefined>>;

/**
 * Traces as the variables of OpenTelemetry say; none where no endpoint is given.
 * @see https://opentelemetry.io/docs/specs/otel/configuration/sdk-environment-variables/
 * @see https://opentelemetry.io/docs/specs/otel/protocol/exporter/
 * @throws Error that names the variable
 */
export function tracingOf(environment: Environment): TracingSettings | undefined {
  // Of these variables an empty one counts as one that is not there.
  const env = Object.fromEntries(
    Object.entries(environment).filter(([name, value]) => name.startsWith("OTEL_") && value !== ""),
  );
  const url = urlOf(env);
  const exporter = oneOf(env, "OTEL_TRACES_EXPORTER", "otlp", ["otlp", "none"]);
  if (url === undefined || exporter === "none" || /^true$/i.test(env["OTEL_SDK_DISABLED"] ?? "")) return;
  oneOf(env, forTraces(env, "PROTOCOL"), "http/json", ["http/json"]);
  return {
    url,
    headers: pairs(env, forTraces(env, "HEADERS")),
    timeout_ms: wholeNumber(env, forTraces(env, "TIMEOUT"), 10_000, [1, 600_000]),
    serviceName: env["OTEL_SERVICE_NAME"] ?? "sunfathom",
    attributes: pairs(env, "OTEL_RESOURCE_ATTRIBUTES"),
    sampler: oneOf(env, "OTEL_TRACES_SAMPLER", "parentbased_always_on", samplers),
    ratio: ratioOf(env),
  };
}

/** The variable that is for traces alone, where it is there, before the one for all that is exported. */
function forTraces(env: Environment, what: string): string {
  const own = `OTEL_EXPORTER_OTLP_TRACES_${what}`;
  return env[own] === undefined ? `OTEL_EXPORTER_OTLP_${what}` : own;
}

function urlOf(env: Environment): string | undefined {
  const name = forTraces(env, "ENDPOINT");
  const value = env[name];
  if (value === undefined) return undefined;
  if (!URL.canParse(value) || !/^https?:$/.test(new URL(value).protocol))
    throw new Error(`${name} must be a URL such as http://127.0.0.1:4318.`);
  return name.includes("TRACES") ? value : `${value.replace(/\/$/, "")}/v1/traces`;
}

/** `name=value` between commas, values percent-encoded, as in the W3C's Baggage. Values may be secrets: no error says them. */
function pairs(env: Environment, name: string): Record<string, string> {
  const items = (env[name] ?? "").split(",").filter((item) => item.trim() !== "");
  return Object.fromEntries(
    items.map((item) => {
      const at = item.indexOf("=");
      const key = item.slice(0, at).trim();
      const value = decoded(item.slice(at + 1).trim());
      if (at < 1 || key === "" || value === undefined)
        throw new Error(`${name} must be pairs such as name=value, percent-encoded, between commas.`);
      return [key, value];
    }),
  );
}

function decoded(text: string): string | undefined {
  try {
    return decodeURIComponent(text);
  } catch {
    return undefined;
  }
}

function ratioOf(env: Environment): number {
  const value = env["OTEL_TRACES_SAMPLER_ARG"] ?? "1";
  const ratio = Number(value);
  if (!/^(?:\d+(?:\.\d+)?|\.\d+)$/.test(value) || ratio > 1)
    throw new Error(`OTEL_TRACES_SAMPLER_ARG is ${JSON.stringify(value)}, but must be a number from 0 to 1.`);
  return ratio;
}
