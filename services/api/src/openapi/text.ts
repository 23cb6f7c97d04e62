import type { FastifyInstance } from "fastify";

/** The description as it is served and as it is committed. */
export function descriptionText(app: FastifyInstance): string {
  return `${JSON.stringify(app.swagger(), null, 2)}\n`;
}
