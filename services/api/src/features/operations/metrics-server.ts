import { once } from "node:events";
import { createServer, type Server } from "node:http";

/** Where metrics are served. */
export interface MetricsAddress {
  host: string;
  port: number;
}

/** More than one scraper is rare; of what else comes here nobody must be able to make much. */
const connections = 16;
const timeout_ms = 10_000;

/**
 * Serves metrics at `/metrics` on an address of their own: what the process does is for those who run it, not for whoever
 * can reach the service.
 * @throws where the address cannot be listened at
 */
export async function serveMetrics(
  registry: { metrics: () => Promise<string>; contentType: string },
  { host, port }: MetricsAddress,
): Promise<Server> {
  const server = createServer(
    { headersTimeout: timeout_ms, requestTimeout: timeout_ms },
    (request, response) => {
      response.setHeader("cache-control", "no-store");
      response.setHeader("x-content-type-options", "nosniff");
      if (request.url !== "/metrics" || (request.method !== "GET" && request.method !== "HEAD")) {
        response.writeHead(404).end();
        return;
      }
      registry.metrics().then(
        (text) => response.writeHead(200, { "content-type": registry.contentType }).end(text),
        () => response.writeHead(500).end(),
      );
    },
  );
  server.maxConnections = connections;
  server.setTimeout(timeout_ms);
  server.listen(port, host);
  await once(server, "listening");
  // Accepting a connection can fail: that is no reason to end.
  server.on("error", () => {});
  return server;
}
