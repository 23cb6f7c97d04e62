import { z } from "zod";
import { decoded } from "../../http/asked/decoded.js";
import { samplers, type TracingSettings } from "../tracing-settings.js";
import { type Environment, oneOf, readVariable, readVariables, share, wholeNumber } from "./variables.js";

const collector = z
  .string()
  .refine((value) => URL.canParse(value) && /^https?:$/.test(new URL(value).protocol), {
    error: "must be a URL such as http://127.0.0.1:4318.",
  });

/** `name=value` between commas, values percent-encoded, as in the W3C's Baggage. Values may be secrets: no message says them. */
const pairs = z.string().transform((value, context): Record<string, string> => {
  const all = value
    .split(",")
    .filter((item) => item.trim() !== "")
    .map((item): [string, string | undefined] => {
      const at = item.indexOf("=");
      return [at < 1 ? "" : item.slice(0, at).trim(), decoded(item.slice(at + 1).trim())];
    });
  if (all.some(([name, content]) => name === "" || content === undefined))
    context.addIssue("must be pairs such as name=value, percent-encoded, between commas.");
  return Object.fromEntries(all.map(([name, content = ""]) => [name, content]));
});

const whether = z.object({
  OTEL_TRACES_EXPORTER: oneOf(["otlp", "none"]).optional(),
  OTEL_SDK_DISABLED: z.string().optional(),
});

const whatAndHow = z.object({
  OTEL_SERVICE_NAME: z.string().default("sunfathom"),
  OTEL_RESOURCE_ATTRIBUTES: pairs.default({}),
  OTEL_TRACES_SAMPLER: oneOf(samplers).default("parentbased_always_on"),
  OTEL_TRACES_SAMPLER_ARG: share().default(1),
});

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
  const endpoint = forTraces(env, "ENDPOINT");
  const url = readVariable(env, endpoint, collector.optional());
  const { OTEL_TRACES_EXPORTER, OTEL_SDK_DISABLED } = readVariables(env, whether);
  if (url === undefined || OTEL_TRACES_EXPORTER === "none" || /^true$/i.test(OTEL_SDK_DISABLED ?? ""))
    return undefined;
  readVariable(env, forTraces(env, "PROTOCOL"), oneOf(["http/json"]).optional());
  const what = readVariables(env, whatAndHow);
  return {
    url: endpoint.includes("TRACES") ? url : `${url.replace(/\/$/, "")}/v1/traces`,
    headers: readVariable(env, forTraces(env, "HEADERS"), pairs.default({})),
    timeout_ms: readVariable(env, forTraces(env, "TIMEOUT"), wholeNumber([1, 600_000]).default(10_000)),
    serviceName: what.OTEL_SERVICE_NAME,
    attributes: what.OTEL_RESOURCE_ATTRIBUTES,
    sampler: what.OTEL_TRACES_SAMPLER,
    ratio: what.OTEL_TRACES_SAMPLER_ARG,
  };
}

/** The variable that is for traces alone, where it is there, before the one for all that is exported. */
function forTraces(env: Environment, what: string): string {
  const own = `OTEL_EXPORTER_OTLP_TRACES_${what}`;
  return env[own] === undefined ? `OTEL_EXPORTER_OTLP_${what}` : own;
}
