import type { ServiceDetail } from "@sunfathom/words";
import type { FastifyError, FastifyReply, FastifyRequest } from "fastify";
import { defaultLimits } from "../../config/limits.js";
import { problemKind } from "./refusals.js";
import { sendRefusal } from "./send-problem.js";

declare module "fastify" {
  interface FastifyInstance {
    /** How long the threads will take for what waits and runs, s; 1 at the least. */
    backlog_s?: () => number;
  }
}

/** What the framework, or who reads bodies, refuses before a handler sees it, by its error code. */
const refusals: Readonly<Record<string, ServiceDetail>> = {
  FST_ERR_CTP_INVALID_MEDIA_TYPE: { because: "body_not_declared_json" },
  FST_ERR_CTP_EMPTY_TYPE: { because: "body_not_declared" },
  other_charset: { because: "body_in_other_charset" },
  not_utf8: { because: "body_not_utf8" },
  empty: { because: "body_empty" },
  too_deep: { because: "body_too_deep", most: defaultLimits.bodyDepth },
  not_json: { because: "body_not_json" },
  FST_ERR_CTP_INVALID_CONTENT_LENGTH: { because: "body_of_other_length" },
  FST_ERR_BAD_URL: { because: "bad_escape" },
  FST_ERR_HANDLER_TIMEOUT: { because: "answer_too_late" },
};

/** Turns an error into a problem. What is not the caller's doing is logged, and says nothing of the inside. */
export function handleError(error: FastifyError, request: FastifyRequest, reply: FastifyReply): void {
  // A stream whose reader has left before its first byte: the log says so as of every caller who leaves.
  if (error.code === "ERR_STREAM_PREMATURE_CLOSE" && reply.raw.destroyed) return;
  const refusal =
    error.code === "FST_ERR_CTP_BODY_TOO_LARGE"
      ? ({ because: "body_too_long", most: sizeOf(request.routeOptions.bodyLimit) } as const)
      : (refusals[error.code] ?? refusalOf(error.statusCode));
  if (refusal === undefined) {
    request.log.error({ err: error }, "request failed");
    sendRefusal(reply, { because: "internal" });
    return;
  }
  if (refusal.because === "answer_too_late")
    reply.header("retry-after", String(request.server.backlog_s?.() ?? 1));
  if (problemKind(refusal) === "unsupported_media_type") reply.header("accept", "application/json");
  sendRefusal(reply, refusal);
}

const kB = 1024;

/** A number of bytes with its unit. */
export const sizeOf = (bytes: number): string =>
  bytes < kB * kB ? `${bytes / kB} kB` : `${bytes / kB / kB} MB`;

/** What a plugin refuses in words of its own is still the caller's doing. */
function refusalOf(status = 500): ServiceDetail | undefined {
  if (status === 403 || status === 404) return { because: "nothing_for_you" };
  if (status >= 400 && status < 500) return { because: "not_understood" };
  return undefined;
}
