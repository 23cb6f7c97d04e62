import type { IncomingMessage } from "node:http";
import { type Language, languages } from "@sunfathom/contract";
import type { FastifyReply, FastifyRequest } from "fastify";
import Negotiator from "negotiator";
import { type Tongue, tongueOf } from "../tongues.js";
import { queryOf } from "./path-of.js";
import { varyBy } from "./vary.js";

/** A name of a language, whoever sent it. */
const isLanguage = (value: unknown): value is Language => (languages as readonly unknown[]).includes(value);

/** The language that a body asks for, where it asks for one that there is. */
export function languageIn(body: unknown): Language | undefined {
  if (typeof body !== "object" || body === null || !("language" in body)) return undefined;
  return isLanguage(body.language) ? body.language : undefined;
}

/**
 * The language that an `Accept-Language` header likes best (RFC 9110, section 12.5.4; lookup after RFC 4647, section 3.4), or
 * the first of all where it likes none: an answer in another language is better than none.
 * @see https://github.com/jshttp/negotiator
 */
export function preferred(
  acceptLanguage: string | undefined,
  among: readonly Language[] = languages,
): Language {
  const [first] = among;
  if (first === undefined) throw new Error("There are no languages.");
  if (acceptLanguage === undefined || among.length === 1) return first;
  const negotiator = new Negotiator({ headers: { "accept-language": acceptLanguage } });
  return (negotiator.language([...among]) as Language | undefined) ?? first;
}

/** Languages that requests have been found to ask for. */
const found = new WeakMap<IncomingMessage, Language>();

/** What a request is answered in: by its scene where that has been read and says so, by its query string, by `Accept-Language`. */
export function tongueFor({ raw }: Pick<FastifyRequest, "raw">): Tongue {
  let language = found.get(raw);
  if (language === undefined) {
    const [, asked] = /(?:^|&)language=([^&]*)/.exec(queryOf(raw.url ?? "")) ?? [];
    language = isLanguage(asked) ? asked : preferred(raw.headers["accept-language"]);
    found.set(raw, language);
  }
  return tongueOf(language);
}

/** Has a request answered in the language that its body asks for, where it asks for one. */
export function heed({ raw }: Pick<FastifyRequest, "raw">, language: Language | undefined): void {
  if (language !== undefined) found.set(raw, language);
}

/** Says which language an answer is in, and that `Accept-Language` has a say in it (RFC 9110, sections 8.5 and 12.5.5). */
export function tellLanguage(reply: FastifyReply): FastifyReply {
  varyBy(reply, "Accept-Language");
  return reply.header("content-language", tongueFor(reply.request).language);
}
