import { build, checkRequest } from "@sunfathom/answers";
import type { FastifyPluginAsync, FastifyReply, FastifyRequest } from "fastify";
import type { Computing } from "../../compute/computing.js";
import type { MediaType } from "../../http/asked/accept.js";
import { tellLanguage, tongueFor } from "../../http/asked/language.js";
import { queryOf } from "../../http/asked/path-of.js";
import { queryFieldsOf, readQuery } from "../../http/asked/query.js";
import { acceptQuery, queryMethod } from "../../http/asked/query-method.js";
import { queryProblem } from "../../http/asked/refuse-query.js";
import type { AnswerCache } from "../../http/sent/answer-cache.js";
import { privateForMinutes } from "../../http/sent/caching.js";
import { etagOf, matches } from "../../http/sent/etag.js";
import { tag } from "../../http/sent/send-json.js";
import { sendProblem } from "../../http/sent/send-problem.js";
import type { Shared } from "../shared.js";
import { sheetByPost } from "./description.js";
import { sheetOf, sheetOperations } from "./index.js";
import type { SheetOperation } from "./sheet-operation.js";

/** Every file to print or to load, made of a body. */
export const sheets: FastifyPluginAsync<Shared> = async (app, { cache, computing }) => {
  for (const operation of sheetOperations) {
    const url = `/v1/${operation.name}`;
    const config = {
      reader: operation.reader,
      answersIn: Object.values(operation.types) as MediaType[],
      ...("component" in operation.reader ? { refusesBodyAs: "invalid_request" as const } : {}),
    };
    const answer = sender(operation, cache, computing);
    app.post(url, { schema: sheetByPost(operation), config }, (request, reply) =>
      answer(request, reply, undefined),
    );
    app.route({
      method: queryMethod,
      url,
      schema: { hide: true },
      config,
      handler: (request, reply) => answer(request, acceptQuery(reply), privateForMinutes),
    });
  }
};

function sender(
  { name, look, types, makers, prepare }: SheetOperation,
  cache: AnswerCache,
  computing: Computing,
) {
  const fields = queryFieldsOf({ request: look, besideLists: [] });
  const [usual = ""] = Object.keys(types);

  return (request: FastifyRequest, reply: FastifyReply, lifetime: string | undefined): void => {
    const tongue = tongueFor(request);
    const { language, problems } = tongue;
    const read = readQuery(queryOf(request.raw.url ?? ""), fields, problems.query);
    const checked = checkRequest<{ format?: string }>(look, { ...read.scene }, problems);
    const errors =
      read.errors.length > 0 ? read.errors : "problem" in checked ? (checked.problem.errors ?? []) : [];
    if (errors.length > 0 || "problem" in checked) {
      const { no_such_look } = problems.queryDetails;
      computing.refuse(request, reply, queryProblem(request, errors, no_such_look({})));
      return;
    }
    const { format = usual } = checked.request;
    tellLanguage(reply);
    const ready = prepare(tongue, request.body, format);
    if (ready.status === "problem") {
      computing.refuse(request, reply, ready.problem);
      return;
    }
    const etag = etagOf(build, `sheets/${name}`, language, ready.canonical, format, makers[format] ?? "");
    if (lifetime !== undefined && matches(request.headers["if-none-match"], etag)) {
      computing.again(request, reply, ready.scene, () => tag(reply, etag, lifetime).code(304).send());
      return;
    }
    const sendBytes = (bytes: Buffer) =>
      tag(reply, etag, lifetime)
        .headers(headersOf(name, format, types))
        .send(bytes);
    const known = cache.get(etag);
    if (known !== undefined) {
      computing.again(request, reply, ready.scene, () => sendBytes(known));
      return;
    }
    computing.do(request, reply, {
      task: { kind: "sheet", name, body: request.body, format, language },
      cost: ready.cost,
      here: () => sheetOf({ name, body: request.body, format, language }),
      send: (outcome) => {
        if (outcome.status === "problem") sendProblem(reply, outcome.problem);
        if (outcome.status !== "ok") return;
        const { bytes } = outcome;
        cache.keep(etag, bytes);
        sendBytes(Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength));
      },
    });
  };
}

/** What is in a file may load and run nothing. */
const headersOf = (name: string, format: string, types: SheetOperation["types"]): Record<string, string> => ({
  "content-type": types[format] ?? "",
  "content-disposition": `inline; filename="${name}.${format}"`,
  "content-security-policy": "default-src 'none'; sandbox",
});
