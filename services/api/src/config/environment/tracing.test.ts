// https://opentelemetry.io/docs/specs/otel/configuration/sdk-environment-variables/ and
// https://opentelemetry.io/docs/specs/otel/protocol/exporter/ say what the variables mean.
import { describe, expect, it } from "vitest";
import { tracingOf } from "./tracing.js";

const endpoint = { OTEL_EXPORTER_OTLP_ENDPOINT: "http://collector.example:4318" };

describe("traces", () => {
  it.each([
    {},
    { OTEL_EXPORTER_OTLP_ENDPOINT: "" },
    { ...endpoint, OTEL_SDK_DISABLED: "true" },
    { ...endpoint, OTEL_SDK_DISABLED: "TRUE" },
    { ...endpoint, OTEL_TRACES_EXPORTER: "none" },
  ])("are none with %j", (environment) => {
    expect(tracingOf(environment)).toBeUndefined();
  });

  it("need only an endpoint", () => {
    expect(tracingOf({ ...endpoint, OTEL_SDK_DISABLED: "yes", OTEL_TRACES_EXPORTER: "otlp" })).toEqual({
      url: "http://collector.example:4318/v1/traces",
      headers: {},
      timeout_ms: 10_000,
      serviceName: "sunfathom",
      attributes: {},
      sampler: "parentbased_always_on",
      ratio: 1,
    });
  });

  // "v1/traces" is put behind the general endpoint; the one for traces is used as it is.
  it.each([
    [{ OTEL_EXPORTER_OTLP_ENDPOINT: "https://a.example/otlp/" }, "https://a.example/otlp/v1/traces"],
    [{ OTEL_EXPORTER_OTLP_ENDPOINT: "https://a.example/otlp" }, "https://a.example/otlp/v1/traces"],
    [{ OTEL_EXPORTER_OTLP_TRACES_ENDPOINT: "https://a.example/in" }, "https://a.example/in"],
    [{ ...endpoint, OTEL_EXPORTER_OTLP_TRACES_ENDPOINT: "https://a.example/" }, "https://a.example/"],
    [{ ...endpoint, OTEL_EXPORTER_OTLP_TRACES_ENDPOINT: "" }, "http://collector.example:4318/v1/traces"],
  ])("go where %j says", (environment, url) => {
    expect(tracingOf(environment)?.url).toBe(url);
  });

  it("are sent as is said, what is said of traces before what is said of all", () => {
    const environment = {
      ...endpoint,
      OTEL_EXPORTER_OTLP_PROTOCOL: "grpc",
      OTEL_EXPORTER_OTLP_TRACES_PROTOCOL: "http/json",
      OTEL_EXPORTER_OTLP_HEADERS: "a=1",
      OTEL_EXPORTER_OTLP_TRACES_HEADERS: " b = x%2Cy=z , c=,",
      OTEL_EXPORTER_OTLP_TIMEOUT: "1",
      OTEL_EXPORTER_OTLP_TRACES_TIMEOUT: "600000",
      OTEL_SERVICE_NAME: "advice",
      OTEL_RESOURCE_ATTRIBUTES: "deployment.environment.name=test,a=b",
      OTEL_TRACES_SAMPLER: "traceidratio",
      OTEL_TRACES_SAMPLER_ARG: "0.25",
    };
    expect(tracingOf(environment)).toEqual({
      url: "http://collector.example:4318/v1/traces",
      headers: { b: "x,y=z", c: "" },
      timeout_ms: 600_000,
      serviceName: "advice",
      attributes: { "deployment.environment.name": "test", a: "b" },
      sampler: "traceidratio",
      ratio: 0.25,
    });
  });

  it.each([
    ["OTEL_EXPORTER_OTLP_ENDPOINT", "collector:4318"],
    ["OTEL_EXPORTER_OTLP_ENDPOINT", "ftp://a.example"],
    ["OTEL_EXPORTER_OTLP_ENDPOINT", "4318"],
    ["OTEL_EXPORTER_OTLP_TRACES_ENDPOINT", "/v1/traces"],
    ["OTEL_TRACES_EXPORTER", "zipkin"],
    ["OTEL_EXPORTER_OTLP_PROTOCOL", "grpc"],
    ["OTEL_EXPORTER_OTLP_TRACES_PROTOCOL", "http/protobuf"],
    ["OTEL_EXPORTER_OTLP_TIMEOUT", "0"],
    ["OTEL_EXPORTER_OTLP_TIMEOUT", "600001"],
    ["OTEL_EXPORTER_OTLP_HEADERS", "secret"],
    ["OTEL_EXPORTER_OTLP_HEADERS", "=secret"],
    ["OTEL_EXPORTER_OTLP_HEADERS", " =secret"],
    ["OTEL_EXPORTER_OTLP_TRACES_HEADERS", "a=%secret"],
    ["OTEL_RESOURCE_ATTRIBUTES", "a"],
    ["OTEL_TRACES_SAMPLER", "sometimes"],
    ["OTEL_TRACES_SAMPLER_ARG", "1.01"],
    ["OTEL_TRACES_SAMPLER_ARG", "-0.1"],
    ["OTEL_TRACES_SAMPLER_ARG", "half"],
    ["OTEL_TRACES_SAMPLER_ARG", "1."],
  ])("are refused by the name of the variable with %s=%j", (name, value) => {
    const refuse = () => tracingOf({ ...endpoint, [name]: value });
    expect(refuse).toThrow(new RegExp(`^${name} .*must be `));
    expect(refuse).not.toThrow(/secret/);
  });
});
