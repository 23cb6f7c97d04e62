import { randomUUID } from "node:crypto";
import { type IncomingMessage, type ServerResponse, STATUS_CODES } from "node:http";
import type { Socket } from "node:net";
import type { Duplex } from "node:stream";
import { problem, toJson } from "@sunfathom/answers";
import type { ProblemCode } from "@sunfathom/contract";
import { securityHeaders } from "../plugins/helmet.js";
import { problemType } from "./send-problem.js";

/** What the HTTP parser refuses, by its error code; any other is a malformed request. */
const refusals: Readonly<Record<string, { code: ProblemCode; detail: string }>> = {
  HPE_HEADER_OVERFLOW: { code: "headers_too_large", detail: "The request line and headers exceed 16 kB." },
  ERR_HTTP_REQUEST_TIMEOUT: { code: "request_timeout", detail: "The request did not arrive in time." },
};

/** How long a caller has to read why it is refused; closed at once, a connection can lose what has not been read. */
const linger_ms = 1000;

/** Answers on the bare socket where there is no request yet to answer, and closes it. */
export function handleClientError(error: Error & { code?: string }, socket: Socket): void {
  if (error.code === "ECONNRESET" || !socket.writable || isBeingAnswered(socket)) {
    socket.destroy();
    return;
  }
  const { code, detail }: { code: ProblemCode; detail: string } = refusals[error.code ?? ""] ?? {
    code: "malformed_request",
    detail: "The request cannot be read as HTTP.",
  };
  refuse(socket, code, detail);
}

/** Answers CONNECT, which asks for a tunnel to somewhere else. */
export function refuseTunnel(_: IncomingMessage, socket: Duplex): void {
  socket.on("error", () => socket.destroy());
  refuse(socket, "method_not_allowed", "This service is no proxy.", ["Allow: GET, HEAD, OPTIONS, POST"]);
}

/** Whether a part of an answer has left: another one would be read as the rest of it. */
function isBeingAnswered(socket: Socket & { _httpMessage?: ServerResponse | null }): boolean {
  return socket._httpMessage?.headersSent === true;
}

function refuse(socket: Duplex, code: ProblemCode, detail: string, headers: readonly string[] = []): void {
  const requestId = randomUUID();
  const whole = { ...problem(code, detail), request_id: requestId };
  const body = toJson(whole);
  const head = [
    `HTTP/1.1 ${whole.status} ${STATUS_CODES[whole.status]}`,
    `Content-Type: ${problemType}`,
    `Content-Length: ${Buffer.byteLength(body)}`,
    `X-Request-Id: ${requestId}`,
    "Cache-Control: no-store",
    ...Object.entries(securityHeaders).map(([name, value]) => `${name}: ${value}`),
    ...headers,
    "Connection: close",
  ];
  socket.end(`${head.join("\r\n")}\r\n\r\n${body}`);
  // Whoever keeps its own end open would keep the connection, and others out.
  const left = setTimeout(() => socket.destroy(), linger_ms).unref();
  socket.once("close", () => clearTimeout(left));
}
