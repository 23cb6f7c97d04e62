import type { FastifyReply, FastifyRequest } from "fastify";
import { matches } from "./etag.js";
import { sendJson, tag } from "./send-json.js";

/** Answers a GET whose JSON is known beforehand, with 304 where the caller has it. */
export function sendFixed(request: FastifyRequest, reply: FastifyReply, json: string, etag: string): void {
  tag(reply, etag);
  const asked = request.headers["if-none-match"];
  if (asked?.trim() === "*" || matches(asked, etag)) reply.code(304).send();
  else sendJson(reply, json);
}
