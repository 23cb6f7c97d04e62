import { randomUUID } from "node:crypto";
import { STATUS_CODES } from "node:http";
import type { Socket } from "node:net";
import { problem, toJson } from "@sunfathom/answers";
import type { ProblemCode } from "@sunfathom/contract";
import { problemType } from "./send-problem.js";

/** What the HTTP parser refuses, by its error code; any other is a malformed request. */
const refusals: Readonly<Record<string, { code: ProblemCode; detail: string }>> = {
  HPE_HEADER_OVERFLOW: { code: "headers_too_large", detail: "The request line and headers exceed 16 kB." },
  ERR_HTTP_REQUEST_TIMEOUT: { code: "request_timeout", detail: "The request did not arrive in time." },
};

/** Answers on the bare socket where there is no request yet to answer, and closes it. */
export function handleClientError(error: Error & { code?: string }, socket: Socket): void {
  if (error.code === "ECONNRESET" || !socket.writable) {
    socket.destroy();
    return;
  }
  const refusal = refusals[error.code ?? ""];
  const { code, detail }: { code: ProblemCode; detail: string } = refusal ?? {
    code: "malformed_request",
    detail: "The request cannot be read as HTTP.",
  };
  const requestId = randomUUID();
  const whole = { ...problem(code, detail), request_id: requestId };
  const body = toJson(whole);
  const head = [
    `HTTP/1.1 ${whole.status} ${STATUS_CODES[whole.status]}`,
    `Content-Type: ${problemType}`,
    `Content-Length: ${Buffer.byteLength(body)}`,
    `X-Request-Id: ${requestId}`,
    "Connection: close",
  ];
  socket.end(`${head.join("\r\n")}\r\n\r\n${body}`);
}
