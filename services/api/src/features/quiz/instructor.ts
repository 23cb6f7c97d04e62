import type { FastifyReply, FastifyRequest } from "fastify";
import { sendRefusal } from "../../http/sent/send-problem.js";
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
  const asked = with_keys ? "with_keys" : "seed";
  if (key === undefined) {
    sendRefusal(reply, { because: "no_instructor", asked });
    return false;
  }
  if (bears(authorization, key)) return true;
  reply.header("www-authenticate", challenge(authorization));
  sendRefusal(
    reply,
    authorization === undefined
      ? { because: "instructors_key_missing", asked }
      : { because: "instructors_key_wrong" },
  );
  return false;
}
