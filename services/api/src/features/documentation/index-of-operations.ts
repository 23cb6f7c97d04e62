import { toJson } from "@sunfathom/answers";
import type { FastifyInstance } from "fastify";
import { refuseQuery } from "../../http/asked/refuse-query.js";
import { type Fixed, fixedJson, sendFixed } from "../../http/sent/send-fixed.js";

/** What the index takes of the description. */
interface Described {
  info: { title: string; version: string };
  paths: Record<string, Record<string, { operationId: string; summary: string }>>;
}

/** `/v1`: what there is, for whoever takes a path apart instead of reading its documentation. */
export function operationsIndexRoute(app: FastifyInstance): void {
  let made: Fixed | undefined;
  const config = { budget: "documentation" } as const;
  app.get("/v1", { schema: { hide: true }, config, onRequest: refuseQuery }, (request, reply) => {
    made ??= fixedJson(toJson(indexOf(app.swagger() as unknown as Described)));
    sendFixed(request, reply, made);
  });
}

function indexOf({ info: { title, version }, paths }: Described): object {
  return {
    name: title,
    version,
    documentation: "/docs",
    description: "/openapi.json",
    client: "/sdk",
    changes: "/changelog",
    operations: Object.entries(paths).flatMap(([path, methods]) =>
      Object.entries(methods).map(([method, { operationId, summary }]) => ({
        operation_id: operationId,
        method: method.toUpperCase(),
        path,
        summary,
      })),
    ),
  };
}
