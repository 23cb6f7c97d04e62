// Takes traces as a collector does: OTLP 1 over HTTP, in JSON.
// https://opentelemetry.io/docs/specs/otlp/#otlphttp-request
import { once } from "node:events";
import { createServer, type IncomingHttpHeaders, type Server } from "node:http";

type Attributes = { key: string; value: { stringValue?: string; intValue?: number | string } }[];

interface Message {
  resourceSpans: {
    resource: { attributes: Attributes };
    scopeSpans: { spans: RawSpan[] }[];
  }[];
}

interface RawSpan {
  traceId: string;
  spanId: string;
  parentSpanId?: string;
  name: string;
  kind: number;
  startTimeUnixNano: string;
  endTimeUnixNano: string;
  attributes: Attributes;
  status: { code?: number };
}

interface Span extends Omit<RawSpan, "attributes"> {
  attributes: Record<string, string | number | undefined>;
  resource: Record<string, string | number | undefined>;
}

export interface Receiver {
  /** For `OTEL_EXPORTER_OTLP_ENDPOINT`. */
  endpoint: string;
  spans: Span[];
  requests: { url: string | undefined; headers: IncomingHttpHeaders }[];
  close: () => void;
}

const named = (attributes: Attributes) =>
  Object.fromEntries(attributes.map(({ key, value }) => [key, value.stringValue ?? Number(value.intValue)]));

/** @param answers status of the answers; 0 for none at all */
export async function receive(answers = 200): Promise<Receiver> {
  const spans: Span[] = [];
  const requests: Receiver["requests"] = [];
  const server: Server = createServer((request, response) => {
    let text = "";
    request.setEncoding("utf8");
    request.on("data", (part) => {
      text += part;
    });
    request.on("end", () => {
      requests.push({ url: request.url, headers: request.headers });
      const { resourceSpans }: Message = JSON.parse(text);
      for (const { resource, scopeSpans } of resourceSpans)
        for (const span of scopeSpans.flatMap((scope) => scope.spans))
          spans.push({
            ...span,
            attributes: named(span.attributes),
            resource: named(resource.attributes),
          });
      if (answers !== 0) response.writeHead(answers, { "content-type": "application/json" }).end("{}");
    });
  }).listen(0, "127.0.0.1");
  await once(server, "listening");
  const address = server.address();
  if (address === null || typeof address === "string") throw new Error("The receiver has no port.");
  return {
    endpoint: `http://127.0.0.1:${address.port}`,
    spans,
    requests,
    close: () => {
      server.close();
      server.closeAllConnections();
    },
  };
}
