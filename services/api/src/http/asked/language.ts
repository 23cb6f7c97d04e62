import type { IncomingMessage } from "node:http";
import { type Language, languages, quizLanguages } from "@sunfathom/contract";
import type { QuizLanguage } from "@sunfathom/words";
import type { FastifyReply, FastifyRequest } from "fastify";
import Negotiator from "negotiator";
import { type Tongue, tongueOf } from "../../tongues.js";
import { varyBy } from "../sent/vary.js";
import { decoded } from "./decoded.js";
import { queryOf } from "./path-of.js";

/** Characters of an `Accept-Language` that are read: browsers send some tens, and a list of thousands takes milliseconds. */
const longestList = 512;

/** A name of a language, whoever sent it. */
const isLanguage = (value: unknown): value is Language => (languages as readonly unknown[]).includes(value);

/** The language that a body asks for, where it asks for one that there is. */
export function languageIn(body: unknown): Language | undefined {
  if (typeof body !== "object" || body === null || !("language" in body)) return undefined;
  return isLanguage(body.language) ? body.language : undefined;
}

/**
 * The language that an `Accept-Language` header likes best (RFC 9110, section 12.5.4; lookup after RFC 4647, section 3.4), or
 * the first of all where it likes none: an answer in another language is better than none. What stands behind the beginning of a
 * long list is not looked at.
 * @see https://github.com/jshttp/negotiator
 */
export function preferred<Known extends Language>(
  acceptLanguage: string | undefined,
  among: readonly Known[],
): Known {
  const [first] = among;
  if (first === undefined) throw new Error("There are no languages.");
  if (acceptLanguage === undefined || among.length === 1) return first;
  const negotiator = new Negotiator({ headers: { "accept-language": beginning(acceptLanguage) } });
  return (negotiator.language([...among]) as Known | undefined) ?? first;
}

/** As many whole entries as are read. */
function beginning(list: string): string {
  return list.length <= longestList ? list : list.slice(0, list.lastIndexOf(",", longestList) + 1);
}

/** What a query string says of the language, whichever of its letters are escaped (RFC 3986, section 2.3). */
function languageInQuery(query: string): string | undefined {
  if (!query.includes("%")) return /(?:^|&)language=([^&]*)/.exec(query)?.[1];
  for (const pair of query.split("&")) {
    const [name = "", value = ""] = pair.split("=", 2);
    if (decoded(name) === "language") return decoded(value);
  }
  return undefined;
}

/** Languages that requests have been found to ask for. */
const found = new WeakMap<IncomingMessage, Language>();

/** What a request is answered in: by its scene where that has been read and says so, by its query string, by `Accept-Language`. */
export function tongueFor({ raw }: Pick<FastifyRequest, "raw">): Tongue {
  let language = found.get(raw);
  if (language === undefined) {
    const asked = languageInQuery(queryOf(raw.url ?? ""));
    language = isLanguage(asked) ? asked : preferred(raw.headers["accept-language"], languages);
    found.set(raw, language);
  }
  return tongueOf(language);
}

/** Has a request answered in the language that its body asks for, where it asks for one. */
export function heed({ raw }: Pick<FastifyRequest, "raw">, language: Language | undefined): void {
  if (language !== undefined) found.set(raw, language);
}

/** What a paper is drawn in: fewer languages than other answers have, so `Accept-Language` is read for these alone. */
export function quizLanguageFor({ headers }: FastifyRequest, asked: QuizLanguage | undefined): QuizLanguage {
  return asked ?? preferred(headers["accept-language"], quizLanguages);
}

/** Says which language an answer is in, and that `Accept-Language` has a say in it (RFC 9110, sections 8.5 and 12.5.5). */
export function tellLanguage(
  reply: FastifyReply,
  language: Language = tongueFor(reply.request).language,
): FastifyReply {
  varyBy(reply, "Accept-Language");
  return reply.header("content-language", language);
}
