import type { FastifyInstance } from "fastify";
import { prefersHtml } from "../../http/asked/prefers-html.js";
import { refuseQuery } from "../../http/asked/refuse-query.js";
import { fixed, sendFixed } from "../../http/sent/send-fixed.js";
import { varyBy } from "../../http/sent/vary.js";
import { written } from "./built.js";
import { page, pagePolicies } from "./html.js";

/** What has changed in the interface and in the figures: to be read in browsers, as it was written to others. */
export function changelogRoute(app: FastifyInstance): void {
  const { changes } = written();
  const html = page("Changes", "", changes.html);
  const markdown = fixed("text/markdown; charset=utf-8", changes.markdown);
  const config = { budget: "documentation" } as const;
  app.get("/changelog", { schema: { hide: true }, config, onRequest: refuseQuery }, (request, reply) => {
    const asPage = prefersHtml(request.headers.accept);
    varyBy(reply, "Accept");
    sendFixed(request, asPage ? reply.headers(pagePolicies) : reply, asPage ? html : markdown);
  });
}
