import { build, readReference, references, toJson } from "@sunfathom/answers";
import type { FastifyInstance } from "fastify";
import { forHours } from "../http/caching.js";
import { etagOf } from "../http/etag.js";
import { refuseQuery } from "../http/refuse-query.js";
import { fixedJson, sendFixed } from "../http/send-fixed.js";
import { referenceRead } from "../openapi/reference.js";

/** Reference data, made once: it is the same until the process ends. */
export function referenceRoutes(app: FastifyInstance): void {
  for (const reference of references) {
    const etag = etagOf(build, reference.name);
    const data = { ...fixedJson(toJson(readReference(reference)), etag), cacheControl: forHours };
    app.get(
      reference.path,
      { schema: referenceRead(reference), onRequest: refuseQuery },
      (request, reply) => {
        sendFixed(request, reply, data);
      },
    );
  }
}
