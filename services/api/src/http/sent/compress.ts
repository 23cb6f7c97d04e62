import { promisify } from "node:util";
import { brotliCompress, constants, gzip } from "node:zlib";
import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import { type Encoding, encodingFor } from "../asked/accept-encoding.js";
import { encodedForm, encodedTag } from "./etag.js";
import { isFixed } from "./send-fixed.js";
import { varyBy } from "./vary.js";

/** Below, a packet or two carry the answer anyhow. */
const LEAST_BYTES = 4096;

const gzipped = promisify(gzip);
const brotlied = promisify(brotliCompress);

/** What was worked out goes once: the fastest level, which takes two thirds off already. */
const once = (bytes: Buffer) => gzipped(bytes, { level: 1 });

/** What is the same for all is compressed once for a process, and may take longer. */
const forAll: Readonly<Record<Encoding, (bytes: Buffer) => Promise<Buffer>>> = {
  br: (bytes) => brotlied(bytes, { params: { [constants.BROTLI_PARAM_QUALITY]: 9 } }),
  gzip: (bytes) => gzipped(bytes, { level: 9 }),
};

/** Compressed forms of what is fixed, by its bytes. */
const kept = new WeakMap<Buffer, Partial<Record<Encoding, Promise<Buffer>>>>();

function keptForm(bytes: Buffer, encoding: Encoding): Promise<Buffer> {
  const forms = kept.get(bytes) ?? {};
  kept.set(bytes, forms);
  forms[encoding] ??= forAll[encoding](bytes);
  return forms[encoding];
}

/**
 * Compresses JSON and text over 4 kB for clients that accept it, off the main thread: by brotli what is fixed, by gzip what is worked
 * out. Each form has an entity tag of its own (RFC 9110, section 8.8.3.3). Where the time is up meanwhile, the problem that
 * says so has gone by then: there is nothing left to send.
 */
export function compressAnswers(app: FastifyInstance): void {
  app.addHook<Buffer | string>("onSend", (request, reply, payload, done) => {
    const type = String(reply.getHeader("content-type") ?? "");
    if (reply.statusCode === 304) keepFormOfTag(request, reply);
    else if (!/json|yaml|^text\/|javascript|svg/.test(type)) return done(null, payload);
    varyBy(reply, "Accept-Encoding");
    if (!(payload instanceof Buffer || typeof payload === "string")) return done(null, payload);
    const bytes = typeof payload === "string" ? Buffer.from(payload) : payload;
    if (bytes.length <= LEAST_BYTES) return done(null, payload);
    const lasting = isFixed(bytes);
    const encoding = encodingFor(request.headers["accept-encoding"], lasting ? ["br", "gzip"] : ["gzip"]);
    if (encoding === undefined) return done(null, payload);
    (lasting ? keptForm(bytes, encoding) : once(bytes)).then(
      (compressed) => {
        if (reply.raw.headersSent) return;
        sayForm(reply, encoding);
        done(null, compressed);
      },
      (error: Error) => {
        if (!reply.raw.headersSent) done(error);
      },
    );
  });
}

function sayForm(reply: FastifyReply, encoding: Encoding): void {
  reply.header("content-encoding", encoding);
  const etag = reply.getHeader("etag");
  if (typeof etag === "string") reply.header("etag", encodedTag(etag, encoding));
}

/** Says again the tag of the form that the caller has. */
function keepFormOfTag({ headers }: FastifyRequest, reply: FastifyReply): void {
  const etag = reply.getHeader("etag");
  const form = typeof etag === "string" ? encodedForm(headers["if-none-match"], etag) : undefined;
  if (form !== undefined) reply.header("etag", form);
}
