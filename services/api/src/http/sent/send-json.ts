import type { FastifyReply } from "fastify";

/** JSON is UTF-8 whatever is said of it: its media type has no parameter for that (RFC 8259, sections 8.1 and 11). */
export const jsonType = "application/json";

/** Ends a request with a text, or bytes, that already are JSON. Sent as bytes: to a text Fastify would add a charset. */
export function sendJson(reply: FastifyReply, json: string | Buffer): FastifyReply {
  return reply.header("content-type", jsonType).send(typeof json === "string" ? Buffer.from(json) : json);
}

/**
 * Marks an answer as one to keep.
 * @param cacheControl how long; when left out, it is asked about with `If-None-Match` before it is used again
 */
export function tag(reply: FastifyReply, etag: string, cacheControl = "no-cache"): FastifyReply {
  return reply.header("etag", etag).header("cache-control", cacheControl);
}
