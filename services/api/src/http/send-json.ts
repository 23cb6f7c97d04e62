import type { FastifyReply } from "fastify";

/** Ends a request with a text, or bytes, that already are JSON. */
export function sendJson(reply: FastifyReply, json: string | Buffer): FastifyReply {
  return reply.header("content-type", "application/json; charset=utf-8").send(json);
}

/**
 * Marks an answer as one to keep.
 * @param cacheControl how long; when left out, it is asked about with `If-None-Match` before it is used again
 */
export function tag(reply: FastifyReply, etag: string, cacheControl = "no-cache"): FastifyReply {
  return reply.header("etag", etag).header("cache-control", cacheControl);
}
