import type { FastifyInstance } from "fastify";
import { refuseQuery } from "../http/refuse-query.js";
import { type Fixed, fixedJson, sendFixed } from "../http/send-fixed.js";
import { descriptionText } from "../openapi/text.js";

/** The API's description of itself, and a way to it for whoever comes to the front door. */
export function descriptionRoutes(app: FastifyInstance): void {
  // Written when it is first asked for: it would make up a tenth of the start.
  let written: Fixed | undefined;
  const config = { budget: "documentation" } as const;
  app.get("/openapi.json", { schema: { hide: true }, config, onRequest: refuseQuery }, (request, reply) => {
    written ??= fixedJson(descriptionText(app));
    sendFixed(request, reply, written);
  });
  app.get("/", { schema: { hide: true }, config }, (_, reply) => reply.redirect("/docs"));
}
