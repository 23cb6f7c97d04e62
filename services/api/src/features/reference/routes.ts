import { build, readReference, references, toJson } from "@sunfathom/answers";
import type { FastifyPluginAsync } from "fastify";
import { refuseQuery } from "../../http/asked/refuse-query.js";
import { forHours } from "../../http/sent/caching.js";
import { etagOf } from "../../http/sent/etag.js";
import { fixedJson, sendFixed } from "../../http/sent/send-fixed.js";
import { referenceRead } from "./description.js";

/** Reference data, made once: it is the same until the process ends. */
export const reference: FastifyPluginAsync = async (app) => {
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
};
