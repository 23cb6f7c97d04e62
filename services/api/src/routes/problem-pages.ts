import { toJson } from "@sunfathom/answers";
import { problemCodes, problemPage, problemType } from "@sunfathom/contract";
import type { FastifyInstance } from "fastify";
import { etagOf } from "../http/etag.js";
import { refuseQuery } from "../http/refuse-query.js";
import { sendFixed } from "../http/send-fixed.js";
import { sendPlainProblem } from "../http/send-problem.js";
import { problemPageRead } from "../openapi/service.js";

/** The pages that the `type` of a problem leads to. */
export function problemPageRoutes(app: FastifyInstance): void {
  const pages = new Map(problemCodes.map((code) => [problemType(code), toJson(problemPage(code))]));
  app.get<{ Params: { name: string } }>(
    "/problems/:name",
    { schema: problemPageRead, onRequest: refuseQuery },
    (request, reply) => {
      const json = pages.get(`/problems/${request.params.name}`);
      if (json === undefined)
        sendPlainProblem(reply, "not_found", `The kinds are: ${[...pages.keys()].join(", ")}`);
      else sendFixed(request, reply, json, etagOf(json));
    },
  );
}
