import type { FastifyReply, FastifyRequest } from "fastify";
import { etagOf, matches } from "./etag.js";
import { jsonType, tag } from "./send-json.js";

/** An answer that is known beforehand. As bytes: of a text, each answer that waits for its reader would be a copy. */
export interface Fixed {
  type: string;
  bytes: Buffer;
  etag: string;
  /** how long others may keep it; asked for anew each time when left out */
  cacheControl?: string;
}

/** The bytes of all that is fixed. */
const lasting = new WeakSet<Buffer>();

/** Whether these bytes are the same for all who ask, as long as the process lives. */
export const isFixed = (bytes: Buffer): boolean => lasting.has(bytes);

/** @param etag one of its content when left out */
export function fixed(type: string, content: string | Buffer, etag?: string): Fixed {
  const bytes = Buffer.from(content);
  lasting.add(bytes);
  return { type, bytes, etag: etag ?? etagOf(bytes.toString("latin1")) };
}

export function fixedJson(json: string, etag?: string): Fixed {
  return fixed(jsonType, json, etag);
}

/** Answers a GET with it, or with 304 where the caller has it. */
export function sendFixed(
  request: FastifyRequest,
  reply: FastifyReply,
  { type, bytes, etag, cacheControl }: Fixed,
): FastifyReply {
  tag(reply, etag, cacheControl);
  const asked = request.headers["if-none-match"];
  if (asked?.trim() === "*" || matches(asked, etag)) return reply.code(304).send();
  return reply.header("content-type", type).send(bytes);
}
