import { toJson } from "@sunfathom/answers";
import { problemCodes, problemType } from "@sunfathom/contract";
import { problemPage } from "@sunfathom/words";
import type { FastifyInstance } from "fastify";
import { prefersHtml } from "../../http/asked/prefers-html.js";
import { refuseQuery } from "../../http/asked/refuse-query.js";
import { forHours } from "../../http/sent/caching.js";
import { fixedJson, sendFixed } from "../../http/sent/send-fixed.js";
import { sendRefusal } from "../../http/sent/send-problem.js";
import { varyBy } from "../../http/sent/vary.js";
import { problemPageRead } from "../../openapi/service.js";
import { pagePolicies } from "./html.js";
import { problemHtml } from "./problem.js";

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
