import { toJson } from "@sunfathom/answers";
import { problemCodes, problemType } from "@sunfathom/contract";
import { problemPage } from "@sunfathom/words";
import type { FastifyInstance } from "fastify";
import { forHours } from "../http/caching.js";
import { prefersHtml } from "../http/prefers-html.js";
import { refuseQuery } from "../http/refuse-query.js";
import { fixedJson, sendFixed } from "../http/send-fixed.js";
import { sendRefusal } from "../http/send-problem.js";
import { varyBy } from "../http/vary.js";
import { problemPageRead } from "../openapi/service.js";
import { pagePolicies } from "../pages/html.js";
import { problemHtml } from "../pages/problem.js";

/** The pages that the `type` of a problem leads to: as data, and for browsers to be read. */
export function problemPageRoutes(app: FastifyInstance): void {
  const pages = new Map(
    problemCodes.map((code) => {
      const page = problemPage(code);
      return [
        problemType(code),
        {
          data: { ...fixedJson(toJson(page)), cacheControl: forHours },
          html: { ...problemHtml(page), cacheControl: forHours },
        },
      ];
    }),
  );
  app.get<{ Params: { name: string } }>(
    "/problems/:name",
    {
      schema: problemPageRead,
      config: { answersIn: ["application/json", "text/html"] },
      onRequest: refuseQuery,
    },
    (request, reply) => {
      const page = pages.get(`/problems/${request.params.name}`);
      varyBy(reply, "Accept");
      if (page === undefined) sendRefusal(reply, { because: "no_such_problem", paths: [...pages.keys()] });
      else if (prefersHtml(request.headers.accept))
        sendFixed(request, reply.headers(pagePolicies), page.html);
      else sendFixed(request, reply, page.data);
    },
  );
}
