import type { FastifyReply } from "fastify";

/** Says that an answer depends on a header of the request, beside those that it says already (RFC 9110, section 12.5.5). */
export function varyBy(reply: FastifyReply, name: string): void {
  const vary = reply.getHeader("vary");
  const names = vary === undefined ? [] : String(vary).split(", ");
  if (names.some((known) => known.toLowerCase() === name.toLowerCase())) return;
  reply.header("vary", [...names, name].join(", "));
}
