import { toJson } from "@sunfathom/answers";
import { problemCodes, problemType } from "@sunfathom/contract";
import { problemPage } from "@sunfathom/words";
import type { FastifyInstance } from "fastify";
import { refuseQuery } from "../http/refuse-query.js";
import { fixedJson, sendFixed } from "../http/send-fixed.js";
import { sendPlainProblem } from "../http/send-problem.js";
import { problemPageRead } from "../openapi/service.js";

/** The pages that the `type` of a problem leads to. */
export function problemPageRoutes(app: FastifyInstance): void {
  const pages = new Map(
    problemCodes.map((code) => [problemType(code), fixedJson(toJson(problemPage(code)))]),
  );
  app.get<{ Params: { name: string } }>(
    "/problems/:name",
    { schema: problemPageRead, onRequest: refuseQuery },
    (request, reply) => {
      const page = pages.get(`/problems/${request.params.name}`);
      if (page === undefined)
        sendPlainProblem(reply, "not_found", `The kinds are: ${[...pages.keys()].join(", ")}`);
      else sendFixed(request, reply, page);
    },
  );
}
