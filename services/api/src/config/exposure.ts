import type { MetricsAddress } from "../features/operations/metrics-server.js";

/** What the service shows to the outside and whom it trusts there. */
export interface Exposure {
  /** Origins whose pages may read answers: none, every one (`*`), or those listed. */
  corsOrigins: "*" | readonly string[];
  /**
   * Addresses and networks of the proxies whose `X-Forwarded-For` is believed; nobody's when empty. Believed of anyone,
   * a caller would have as many addresses, and so limits, as it likes.
   */
  trustedProxies: readonly string[];
  /** Where metrics are served; where this is left out, nothing is counted. */
  metricsAt: MetricsAddress | undefined;
}

export const defaultExposure: Exposure = {
  corsOrigins: [],
  trustedProxies: [],
  metricsAt: { host: "127.0.0.1", port: 9464 },
};
