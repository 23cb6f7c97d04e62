import { createServer, type IncomingMessage, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";

/** One way to treat a request. */
export type Fault = (response: ServerResponse, request: IncomingMessage) => void;

export interface Seen {
  method: string;
  url: string;
  headers: IncomingMessage["headers"];
  body: string;
}

/** A server on the loopback that treats each request after a script: the first as `faults[0]`, the last as all beyond. */
export class FaultServer {
  readonly seen: Seen[] = [];
  faults: Fault[] = [];
  /** Whether the last request was left without the rest of its answer. */
  stalled = false;
  /** Whether the connection of the last request is closed. */
  hungUp = false;
  readonly #server = createServer((request, response) => {
    let body = "";
    request.on("data", (chunk) => {
      body += chunk;
    });
    request.on("end", () => {
      const fault = this.faults[Math.min(this.seen.length, this.faults.length - 1)];
      this.seen.push({
        method: request.method ?? "",
        url: request.url ?? "",
        headers: request.headers,
        body,
      });
      request.socket.once("close", () => {
        this.hungUp = true;
      });
      this.hungUp = false;
      fault?.(response, request);
      this.stalled = fault === stall || fault === stallInHead || fault === stallInBody;
    });
  });

  async listen(): Promise<string> {
    await new Promise<void>((resolve) => this.#server.listen(0, "127.0.0.1", resolve));
    return `http://127.0.0.1:${(this.#server.address() as AddressInfo).port}`;
  }

  close(): Promise<void> {
    this.#server.closeAllConnections();
    return new Promise((resolve) => this.#server.close(() => resolve()));
  }
}

export const ok: Fault = (response) => json(response, 200, { models: [] });
/** Closes the connection as a server does that restarts. */
export const reset: Fault = (response) => response.socket?.resetAndDestroy();
/** Takes the request and says nothing. */
export const stall: Fault = () => undefined;
/** Begins the head, and never comes to its end. */
export const stallInHead: Fault = (response) => {
  response.socket?.write("HTTP/1.1 200 OK\r\ncontent-type: application/js");
};
/** Sends the head and part of the body, and says no more. */
export const stallInBody: Fault = (response) => {
  response.writeHead(200, { "content-type": "application/json", "content-length": "100" });
  response.write('{"models":');
};
/** Promises more than it sends. */
export const halfBody: Fault = (response) => {
  stallInBody(response, response.req);
  setImmediate(() => response.socket?.destroy());
};
/** Sends a good answer a few bytes at a time, head and body, as over a bad line. */
export const inDribs: Fault = (response) => {
  const bytes =
    'HTTP/1.1 200 OK\r\ncontent-type: application/json\r\ncontent-length: 13\r\n\r\n{"models":[]}';
  const send = (from: number) => {
    response.socket?.write(bytes.slice(from, from + 7));
    if (from + 7 < bytes.length) setTimeout(send, 1, from + 7);
  };
  send(0);
};
/** Answers all of a body that is cut, as a proxy does that gave up. */
export const cutJson: Fault = (response) => {
  response.writeHead(200, { "content-type": "application/json" }).end('{"models":');
};
export const html =
  (status: number): Fault =>
  (response) => {
    response.writeHead(status, { "content-type": "text/html" }).end("<h1>Bad gateway</h1>");
  };
export const wrongType: Fault = (response) => {
  response.writeHead(200, { "content-type": "text/plain" }).end('{"models":[]}');
};
/** A problem that says of itself that it is a page. */
export const problemAsPage =
  (status: number): Fault =>
  (response) =>
    json(response, status, { type: "/problems/unavailable", status }, { "content-type": "text/html" });
export const untyped: Fault = (response) => {
  response.writeHead(200).end('{"models":[]}');
};
export const answerWith =
  (status: number, body: object, headers: Record<string, string> = {}): Fault =>
  (response) =>
    json(response, status, body, headers);
export const problemWith = (status: number, code: string, headers: Record<string, string> = {}): Fault =>
  answerWith(
    status,
    { type: `/problems/${code.replaceAll("_", "-")}`, title: "A title.", status, code, detail: "A detail." },
    { "content-type": "application/problem+json", "x-request-id": "r-1", ...headers },
  );

function json(response: ServerResponse, status: number, body: object, headers: Record<string, string> = {}) {
  const text = status === 304 ? "" : JSON.stringify(body);
  response.writeHead(status, { "content-type": "application/json", ...headers }).end(text);
}
