import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import type { Outcome, Reader, Task } from "../../compute/tasks.js";
import { siteOf } from "../../limiting/client-key.js";
import { bytesPerUnit } from "../../limiting/limiter.js";
import { sendProblem, sendRefusal } from "../sent/send-problem.js";
import type { Turns } from "../sockets/turns.js";
import { type BodyRefusal, type JsonRead, readJson, repeatedField, type Unreadable } from "./json-text.js";
import { heed, languageIn, tongueFor } from "./language.js";

declare module "fastify" {
  interface FastifyContextConfig {
    /** `invalid_scene` when left out. */
    refusesBodyAs?: BodyRefusal;
    /** Who can read and check a long body on a thread; where this is left out, nobody can. */
    reader?: Reader;
  }
}

/**
 * Longer bodies are read and checked on a thread: the worst of 256 kB takes a tenth of a second, the worst of this length
 * three milliseconds.
 */
const longestHere_B = 8 * 1024;

/** Where bodies are read. */
interface Readers {
  turns: Turns;
  /** Has a task done on a thread; without an outcome the request has its answer. */
  away: (
    request: FastifyRequest,
    reply: FastifyReply,
    task: Task,
    cost: number,
  ) => Promise<Outcome | undefined>;
  /** Has a request pay for what it turned out to cost. */
  owe: (request: FastifyRequest, cost: number) => void;
}

class UnreadableBody extends Error {
  constructor(readonly code: Unreadable | "other_charset") {
    super(code);
  }
}

/** Takes JSON bodies and no others. */
export function takeOnlyJson(app: FastifyInstance, { turns, away, owe }: Readers): void {
  app.removeAllContentTypeParsers();
  app.addHook("onRequest", refuseEncodings);
  app.addContentTypeParser("application/json", { parseAs: "buffer" }, (request, bytes, done) => {
    if (isUtf8(request.headers["content-type"] ?? "")) done(null, bytes);
    else done(new UnreadableBody("other_charset"));
  });
  app.addHook("preHandler", (request, reply, done) => {
    const { body: bytes } = request;
    const { reader, refusesBodyAs = "invalid_scene" } = request.routeOptions.config;
    // What is read on a thread whatever its length: the reading alone may take longer than its length says.
    const isAlwaysAway = reader !== undefined && ("batch" in reader || "trip" in reader);
    if (!(bytes instanceof Uint8Array)) {
      done(isAlwaysAway ? new UnreadableBody("empty") : undefined);
      return;
    }
    const take = (json: JsonRead) => {
      if (json.status === "unreadable") done(new UnreadableBody(json.why));
      else if (json.status === "repeated")
        sendProblem(reply, repeatedField(json.pointer, refusesBodyAs, tongueFor(request).problems));
      else {
        heed(request, languageIn(json.value));
        request.body = json.value;
        // In the same turn: what checks the value and works with it is the greater part.
        done();
      }
    };
    // Bodies arrive behind the turns in which their requests were taken.
    const takeHere = (read: () => JsonRead) => turns.do(siteOf(request.client), () => take(read()));
    if (reader === undefined || (bytes.length <= longestHere_B && !isAlwaysAway)) {
      takeHere(() => readJson(bytes));
      return;
    }
    const task: Task = { kind: "read", reader, bytes, language: tongueFor(request).language };
    away(request, reply, task, bytes.length / bytesPerUnit).then(
      (outcome) => {
        if (outcome === undefined) return;
        if (outcome.status === "problem" || outcome.status === "trip") owe(request, outcome.cost ?? 0);
        if (reply.sent) return;
        if (outcome.status === "problem") {
          heed(request, outcome.language);
          sendProblem(reply, outcome.problem);
        } else if (outcome.status === "plan") {
          heed(request, outcome.plan.language);
          request.body = outcome.plan;
          done();
        } else if (outcome.status === "trip") {
          heed(request, outcome.language);
          request.body = outcome.trip;
          done();
        } else if (outcome.status === "read") takeHere(() => outcome.json);
      },
      (error: unknown) => done(error instanceof Error ? error : new Error(String(error))),
    );
  });
}
/** Whether a media type names no other encoding than that of JSON (RFC 8259, section 8.1), of which ASCII is a part. */
function isUtf8(contentType: string): boolean {
  const [, charset = "utf-8"] = /;\s*charset=\s*"?([^;"]*)/i.exec(contentType) ?? [];
  return ["utf-8", "utf8", "us-ascii"].includes(charset.trim().toLowerCase());
}

/** A body that is packed could unpack to any size: none is taken (RFC 9110, section 8.4 and 15.5.16). */
function refuseEncodings(request: FastifyRequest, reply: FastifyReply, done: () => void): void {
  const encoding = request.headers["content-encoding"];
  if (encoding === undefined || ["", "identity"].includes(encoding.trim().toLowerCase())) {
    done();
    return;
  }
  reply.header("accept-encoding", "identity");
  sendRefusal(reply, { because: "body_encoded" });
}
