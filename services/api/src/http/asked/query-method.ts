import type { FastifyReply } from "fastify";

/** QUERY (RFC 10008) asks with a body, as POST does, and promises to change nothing, as GET does. */
export const queryMethod = "QUERY";

/** Says that a path takes QUERY, and with what in its body (RFC 10008, section 3). */
export const acceptQuery = (reply: FastifyReply): FastifyReply =>
  reply.header("accept-query", "application/json");
