import { type IncomingMessage, type ServerResponse, STATUS_CODES } from "node:http";
import type { Socket } from "node:net";
import type { Duplex } from "node:stream";
import { toJson } from "@sunfathom/answers";
import type { ServiceDetail } from "@sunfathom/words";
import { securityHeaders } from "../../plugins/helmet.js";
import { tongueOf } from "../../tongues.js";
import { newId } from "../asked/request-id.js";
import { refusal } from "../sent/refusals.js";
import { problemType } from "../sent/send-problem.js";

/** What the HTTP parser refuses, by its error code; any other is a malformed request. */
const refusals: Readonly<Record<string, ServiceDetail>> = {
  HPE_HEADER_OVERFLOW: { because: "head_too_long" },
  ERR_HTTP_REQUEST_TIMEOUT: { because: "request_too_late" },
};

/** How long a caller has to read why it is refused; closed at once, a connection can lose what has not been read. */
const linger_ms = 1000;

/** Answers on the bare socket where there is no request yet to answer, and closes it. */
export function handleClientError(error: Error & { code?: string }, socket: Socket): void {
  if (error.code === "ECONNRESET" || !socket.writable || isBeingAnswered(socket)) {
    socket.destroy();
    return;
  }
  refuse(socket, refusals[error.code ?? ""] ?? { because: "not_http" });
}

/** Answers CONNECT, which asks for a tunnel to somewhere else. */
export function refuseTunnel(_: IncomingMessage, socket: Duplex): void {
  socket.on("error", () => socket.destroy());
  refuse(socket, { because: "no_proxy" }, ["Allow: GET, HEAD, OPTIONS, POST"]);
}

/** Whether a part of an answer has left: another one would be read as the rest of it. */
function isBeingAnswered(socket: Socket & { _httpMessage?: ServerResponse | null }): boolean {
  return socket._httpMessage?.headersSent === true;
}

function refuse(socket: Duplex, detail: ServiceDetail, headers: readonly string[] = []): void {
  const requestId = newId();
  const whole = { ...refusal(detail, tongueOf("en").problems), request_id: requestId };
  const body = toJson(whole);
  const head = [
    `HTTP/1.1 ${whole.status} ${STATUS_CODES[whole.status]}`,
    `Content-Type: ${problemType}`,
    `Content-Length: ${Buffer.byteLength(body)}`,
    `X-Request-Id: ${requestId}`,
    // There is no header to read that says another one.
    "Content-Language: en",
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
