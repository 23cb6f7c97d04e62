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

export const samplers = [
  "always_on",
  "always_off",
  "traceidratio",
  "parentbased_always_on",
  "parentbased_always_off",
  "parentbased_traceidratio",
] as const;
type Sampler = (typeof samplers)[number];
