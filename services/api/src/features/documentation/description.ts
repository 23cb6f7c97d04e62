import type { FastifyInstance } from "fastify";
import { refuseQuery } from "../../http/asked/refuse-query.js";
import { type Fixed, fixed, fixedJson, sendFixed } from "../../http/sent/send-fixed.js";
import { descriptionText } from "../../openapi/text.js";

/** The API's description of itself, in either form, and a way to it for whoever comes to the front door. */
export function descriptionRoutes(app: FastifyInstance): void {
  const config = { budget: "documentation" } as const;
  const give = (path: string, write: () => Fixed) => {
    // Written when it is first asked for: it would make up a tenth of the start.
    let written: Fixed | undefined;
    app.get(path, { schema: { hide: true }, config, onRequest: refuseQuery }, (request, reply) => {
      written ??= write();
      sendFixed(request, reply, written);
    });
  };
  give("/openapi.json", () => fixedJson(descriptionText(app)));
  // The media type: RFC 9512.
  give("/openapi.yaml", () => fixed("application/yaml; charset=utf-8", app.swagger({ yaml: true })));
  app.get("/", { schema: { hide: true }, config }, (_, reply) => reply.redirect("/docs"));
}
