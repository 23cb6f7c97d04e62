import type { FastifyInstance } from "fastify";
import { etagOf } from "../http/etag.js";
import { refuseQuery } from "../http/refuse-query.js";
import { sendFixed } from "../http/send-fixed.js";
import { descriptionText } from "../openapi/text.js";

/** The API's description of itself, and a way to it for whoever comes to the front door. */
export function descriptionRoutes(app: FastifyInstance): void {
  let text = "";
  let etag = "";
  app.addHook("onReady", async () => {
    text = descriptionText(app);
    etag = etagOf(text);
  });
  app.get("/openapi.json", { schema: { hide: true }, onRequest: refuseQuery }, (request, reply) => {
    sendFixed(request, reply, text, etag);
  });
  app.get("/", { schema: { hide: true } }, (_, reply) => reply.redirect("/docs"));
}
