import type { FastifyInstance } from "fastify";
import { etagOf } from "../http/etag.js";
import { refuseQuery } from "../http/refuse-query.js";
import { sendFixed } from "../http/send-fixed.js";
import { descriptionText } from "../openapi/text.js";

/** The API's description of itself, and a way to it for whoever comes to the front door. */
export function descriptionRoutes(app: FastifyInstance): void {
  // Written when it is first asked for: it would make up a tenth of the start.
  let written: { text: string; etag: string } | undefined;
  const description = () => {
    if (written === undefined) {
      const text = descriptionText(app);
      written = { text, etag: etagOf(text) };
    }
    return written;
  };
  app.get("/openapi.json", { schema: { hide: true }, onRequest: refuseQuery }, (request, reply) => {
    const { text, etag } = description();
    sendFixed(request, reply, text, etag);
  });
  app.get("/", { schema: { hide: true } }, (_, reply) => reply.redirect("/docs"));
}
