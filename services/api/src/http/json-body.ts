import { problem } from "@sunfathom/answers";
import type { FieldErrorCode, Problem } from "@sunfathom/contract";
import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import { repeatedName } from "./repeated-name.js";
import { sendPlainProblem } from "./send-problem.js";

/** What a body that is not valid is refused as. */
type BodyRefusal = "invalid_scene" | "invalid_request";

declare module "fastify" {
  interface FastifyContextConfig {
    /** `invalid_scene` when left out. */
    refusesBodyAs?: BodyRefusal;
  }
}

/** A body that says that it is in another encoding than UTF-8. */
class OtherCharset extends Error {
  readonly code = otherCharset;
}

export const otherCharset = "OTHER_CHARSET";
export const notUtf8 = "ERR_ENCODING_INVALID_ENCODED_DATA";

/** A name that stands twice in an object of the body. */
export class RepeatedField extends Error {
  constructor(readonly pointer: string) {
    super(`${pointer} is repeated`);
  }

  problem(refusal: BodyRefusal): Problem {
    const code: FieldErrorCode = "repeated_field";
    const message = "The name stands twice in its object.";
    const error = { pointer: this.pointer, code, message, allowed: "each name once" };
    return problem(refusal, `${this.pointer}: ${message}`, [error]);
  }
}

/**
 * Takes JSON bodies and no others: in UTF-8 (RFC 8259, section 8.1), each name once (RFC 7493, section 2.3), and no
 * member called `__proto__`.
 */
export function takeOnlyJson(app: FastifyInstance): void {
  const utf8 = new TextDecoder("utf-8", { fatal: true });
  // A name like `constructor` is one that no scene has, and is refused as such.
  const parse = app.getDefaultJsonParser("error", "ignore");
  app.removeAllContentTypeParsers();
  app.addHook("onRequest", refuseEncodings);
  app.addContentTypeParser("application/json", { parseAs: "buffer" }, (request, body, done) => {
    if (!isUtf8(request.headers["content-type"] ?? "")) {
      done(new OtherCharset());
      return;
    }
    let text: string;
    try {
      text = utf8.decode(Buffer.from(body));
    } catch (error) {
      done(error instanceof Error ? error : new Error(String(error)));
      return;
    }
    parse(request, text, (error, value) => {
      const repeated = error === null ? repeatedName(text) : undefined;
      if (repeated === undefined) done(error, value);
      else done(new RepeatedField(repeated));
    });
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
  sendPlainProblem(reply, "unsupported_media_type", "The body has a content encoding, and none is taken.");
}
