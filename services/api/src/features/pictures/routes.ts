import { build } from "@sunfathom/answers";
import type { FieldError, Language } from "@sunfathom/contract";
import type { FastifyPluginAsync, FastifyReply, FastifyRequest } from "fastify";
import type { Computing } from "../../compute/computing.js";
import { costOfPicture } from "../../compute/cost.js";
import { pngMaker } from "../../drawing/png.js";
import { tellLanguage, tongueFor } from "../../http/asked/language.js";
import { queryOf } from "../../http/asked/path-of.js";
import { queryFieldsOf, readQuery, refusedQuery } from "../../http/asked/query.js";
import { acceptQuery, queryMethod } from "../../http/asked/query-method.js";
import { queryProblem, refuseFor } from "../../http/asked/refuse-query.js";
import type { AnswerCache } from "../../http/sent/answer-cache.js";
import { forMinutes, pictureForMinutes } from "../../http/sent/caching.js";
import { etagOf, matches } from "../../http/sent/etag.js";
import { tag } from "../../http/sent/send-json.js";
import { sendProblem } from "../../http/sent/send-problem.js";
import { operationIn } from "../../tongues.js";
import type { Shared } from "../shared.js";
import { pictureByGet, pictureByPost } from "./description.js";
import { type Drawable, draw, drawable } from "./draw.js";
import type { Look } from "./look.js";
import { readLook } from "./look-asked.js";

type Prepared = ReturnType<Drawable["operation"]["prepare"]>;
type Ready = Extract<Prepared, { status: "ready" }>;

interface Exchange {
  request: FastifyRequest;
  reply: FastifyReply;
}

const types = { svg: "image/svg+xml", png: "image/png" } as const;
const answersIn = [types.svg, types.png] as const;

/** Every picture, of a scene in the query string or in the body: the same picture. */
export const pictures: FastifyPluginAsync<Shared> = async (app, { cache, computing }) => {
  for (const drawn of drawable) {
    const { operation, path } = drawn;
    const fields = queryFieldsOf(operation);
    const send = sender(drawn, cache, computing);

    app.get(path, { schema: pictureByGet(drawn), config: { answersIn } }, (request, reply) => {
      const { problems } = tongueFor(request);
      const { query, look, errors } = readLook(queryOf(request.raw.url ?? ""), problems, fields);
      if (look === undefined) {
        const { no_such_look } = problems.queryDetails;
        computing.refuse(request, reply, queryProblem(request, errors, no_such_look({})));
      } else {
        const { scene, errors: found } = readQuery(query, fields, problems.query);
        send({ request, reply }, { scene, found, look, lifetime: pictureForMinutes });
      }
    });

    const withBody = (lifetime?: string) => (request: FastifyRequest, reply: FastifyReply) => {
      const { problems } = tongueFor(request);
      const { query, look, errors } = readLook(queryOf(request.raw.url ?? ""), problems);
      const { takes_look_alone, no_such_look } = problems.queryDetails;
      if (query !== "")
        refuseFor(reply, refusedQuery(query, problems.query, "look_alone"), takes_look_alone({}));
      else if (look === undefined)
        computing.refuse(request, reply, queryProblem(request, errors, no_such_look({})));
      else send({ request, reply }, { scene: request.body, found: [], look, lifetime });
    };
    const config = { reader: { operation: operation.name }, answersIn } as const;
    app.post(path, { schema: pictureByPost(drawn), config }, withBody());
    const byQuery = withBody(forMinutes);
    app.route({
      method: queryMethod,
      url: path,
      schema: { hide: true },
      config,
      handler: (request, reply) => byQuery(request, acceptQuery(reply)),
    });
  }
};

interface Asked {
  scene: unknown;
  /** What is wrong with it already. */
  found: readonly FieldError[];
  look: Look;
  /** How long others may keep it; undefined for what nobody else asks for. */
  lifetime: string | undefined;
}

/** Sends a picture: one that is kept, or one that is drawn now; or says why there is none. */
function sender({ picture: { name, cost }, operation }: Drawable, cache: AnswerCache, computing: Computing) {
  const keyOf = ({ canonical, units }: Ready, look: Look, language: Language): string => {
    const maker = look.format === "png" ? pngMaker : "";
    return etagOf(build, `pictures/${name}`, language, units, canonical, JSON.stringify(look), maker);
  };

  return ({ request, reply }: Exchange, { scene, found, look, lifetime }: Asked): void => {
    const tongue = tongueFor(request);
    const { language } = tongue;
    tellLanguage(reply);
    const prepared = operationIn(tongue, operation.name).prepare(scene, found);
    if (prepared.status === "problem") {
      computing.refuse(request, reply, prepared.problem);
      return;
    }
    const etag = keyOf(prepared, look, language);
    if (lifetime !== undefined && matches(request.headers["if-none-match"], etag)) {
      computing.again(request, reply, prepared.scene, () => tag(reply, etag, lifetime).code(304).send());
      return;
    }
    const sendBytes = (bytes: Buffer) =>
      withoutBudget(tag(reply, etag, lifetime))
        .headers(headersOf(look))
        .send(bytes);
    const known = cache.get(etag);
    if (known !== undefined) {
      computing.again(request, reply, prepared.scene, () => sendBytes(known));
      return;
    }
    computing.do(request, reply, {
      task: { kind: "picture", name, scene, look, language },
      cost: costOfPicture({ of: operation.name, drawing: cost() }, prepared.scene, look),
      here: () => draw({ name, scene, look, language }),
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

/** Any page may show a picture, alone or in a frame; what is in it may load and run nothing; pixels of its own are in it. */
const headersOf = ({ format }: Look): Record<string, string> => ({
  "content-type": format === "svg" ? `${types.svg}; charset=utf-8` : types.png,
  "cross-origin-resource-policy": "cross-origin",
  "content-security-policy": "default-src 'none'; img-src data:; sandbox",
});

/** What shows an image cannot read how much of its budget is left, and the headers of pictures have the most to say as it is. */
const withoutBudget = (reply: FastifyReply) =>
  reply.removeHeader("ratelimit").removeHeader("ratelimit-policy");
