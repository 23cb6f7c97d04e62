// Fastify with the contract's schemas compiled for check and serialisation, the same security headers and logger; the answers
// are there already.

import { wireSchemas } from "@sunfathom/contract";
import Fastify from "fastify";
import helmet from "helmet";
import { pino } from "pino";
import { operations } from "./operations.mjs";
import { requestsFor } from "./scenes.mjs";

const app = Fastify({
  loggerInstance: pino({ base: null }, pino.destination({ fd: 2, sync: false })),
  ajv: { customOptions: { coerceTypes: false, removeAdditional: false, keywords: ["x-unit", "x-decimals"] } },
});
const setHeaders = helmet();
app.addHook("onRequest", ({ raw }, reply, done) => setHeaders(raw, reply.raw, () => done()));
for (const [name, schema] of Object.entries(wireSchemas)) app.addSchema({ ...schema, $id: name });
for (const operation of operations) {
  const { bodies, path } = requestsFor(operation.name);
  const prepared = operation.prepare(JSON.parse(bodies[0]));
  const answered = prepared.status === "ready" ? prepared.compute() : prepared;
  if (answered.status !== "ok") throw new Error(`${path} has no answer`);
  const body = JSON.parse(JSON.stringify(answered.body));
  const schema = {
    body: { $ref: `${operation.request}#` },
    response: { 200: { $ref: `${operation.answer}#` } },
  };
  app.post(path, { schema }, (_, reply) => reply.send(body));
  app.get(path, (request, reply) => {
    const etag = request.headers["if-none-match"] ?? "";
    reply.header("etag", etag).header("cache-control", "no-cache").code(304).send();
  });
}
console.log(await app.listen({ host: "127.0.0.1", port: 0, listenTextResolver: () => "listening" }));
process.on("SIGINT", () => process.exit(0));
