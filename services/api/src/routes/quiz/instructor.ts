import type { FastifyReply, FastifyRequest } from "fastify";
import { sendPlainProblem } from "../../http/send-problem.js";
import { bears, challenge } from "./bearer.js";

/** What only instructors may ask for: keys, and a seed of their own. */
interface Asked {
  with_keys?: boolean | undefined;
  seed?: string | undefined;
}

/**
 * Answers with a problem where something is asked for that needs the instructor's key, and the caller does not bring it or there
 * is none.
 */
export function mayAsk(
  request: FastifyRequest,
  reply: FastifyReply,
  { with_keys = false, seed }: Asked,
  key: string | undefined,
): boolean {
  if (!with_keys && seed === undefined) return true;
  const { authorization } = request.headers;
  if (key === undefined) {
    sendPlainProblem(
      reply,
      "keys_not_offered",
      with_keys
        ? "No instructor's key is configured, so nobody gets keys."
        : "No instructor's key is configured, so nobody names a seed.",
    );
    return false;
  }
  if (bears(authorization, key)) return true;
  reply.header("www-authenticate", challenge(authorization));
  const detail =
    authorization === undefined
      ? `\`${with_keys ? "with_keys" : "seed"}\` needs the instructor's key.`
      : "This is not the instructor's key.";
  sendPlainProblem(reply, "unauthorized", detail);
  return false;
}
