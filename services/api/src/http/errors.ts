import type { ProblemCode } from "@sunfathom/contract";
import type { FastifyError, FastifyReply, FastifyRequest } from "fastify";
import { sendPlainProblem } from "./send-problem.js";

declare module "fastify" {
  interface FastifyInstance {
    /** How long the threads will take for what waits and runs, s; 1 at the least. */
    backlog_s?: () => number;
  }
}

/** What the framework, or who reads bodies, refuses before a handler sees it, by its error code. */
const refusals: Readonly<Record<string, { code: ProblemCode; detail: string }>> = {
  FST_ERR_CTP_BODY_TOO_LARGE: { code: "body_too_large", detail: "The body exceeds 256 kB." },
  FST_ERR_CTP_INVALID_MEDIA_TYPE: {
    code: "unsupported_media_type",
    detail: "The body is not declared as application/json.",
  },
  FST_ERR_CTP_EMPTY_TYPE: {
    code: "unsupported_media_type",
    detail: "The body has no Content-Type.",
  },
  other_charset: {
    code: "unsupported_media_type",
    detail: "The body is declared to be in another encoding than UTF-8.",
  },
  not_utf8: { code: "malformed_json", detail: "The body is not UTF-8." },
  empty: { code: "malformed_json", detail: "The body is empty." },
  not_json: { code: "malformed_json", detail: "The body cannot be read as JSON." },
  FST_ERR_CTP_INVALID_CONTENT_LENGTH: {
    code: "malformed_request",
    detail: "The body is not as long as Content-Length says.",
  },
  FST_ERR_BAD_URL: { code: "malformed_request", detail: "The path holds an escape that cannot be decoded." },
  FST_ERR_HANDLER_TIMEOUT: { code: "unavailable", detail: "The answer took too long." },
};

/** Turns an error into a problem. What is not the caller's doing is logged, and says nothing of the inside. */
export function handleError(error: FastifyError, request: FastifyRequest, reply: FastifyReply): void {
  const refusal = refusals[error.code] ?? refusalOf(error.statusCode);
  if (refusal === undefined) {
    request.log.error({ err: error }, "request failed");
    sendPlainProblem(reply, "internal_error", "The request could not be answered.");
    return;
  }
  if (refusal.code === "unavailable") reply.header("retry-after", String(request.server.backlog_s?.() ?? 1));
  if (refusal.code === "unsupported_media_type") reply.header("accept", "application/json");
  sendPlainProblem(reply, refusal.code, refusal.detail);
}

/** What a plugin refuses in words of its own is still the caller's doing. */
function refusalOf(status = 500): { code: ProblemCode; detail: string } | undefined {
  if (status === 403 || status === 404)
    return { code: "not_found", detail: "There is nothing for you at this path." };
  if (status >= 400 && status < 500)
    return { code: "malformed_request", detail: "The request cannot be understood." };
  return undefined;
}
