import type { FastifyInstance } from "fastify";
import { defaultExposure } from "../../config/exposure.js";
import { type MetricsAddress, serveMetrics } from "./metrics-server.js";

/**
 * Serves the metrics of an application until it closes. Where nobody asked for the address, that it is taken, as by a
 * second service on this machine, is a line in the log; where somebody did, it stops the start.
 * @throws Error that names the variable
 */
export async function openMetrics(
  app: FastifyInstance,
  registry: NonNullable<FastifyInstance["metrics"]>,
  address: MetricsAddress,
): Promise<void> {
  const name = `${address.host}:${address.port}`;
  try {
    const server = await serveMetrics(registry, address);
    app.addHook("onClose", async () => {
      server.close();
      server.closeAllConnections();
    });
    app.log.info({ address: name }, "metrics are served");
  } catch (error) {
    const message = `METRICS_LISTEN: ${name} cannot be listened at (${error instanceof Error ? error.message : error}).`;
    if (address !== defaultExposure.metricsAt) throw new Error(message);
    app.log.warn(message);
  }
}
