import { attempt, type Reply } from "./attempt.js";
import type { AnswerCache } from "./cache.js";
import { callOf, type Done } from "./call.js";
import { ConnectionError } from "./errors.js";
import { type Gate, gateOf } from "./gate.js";
import { contentOf, errorOf, metaOf } from "./reply.js";
import { outgoing } from "./request.js";
import { delayBeforeRetry, type History, wait } from "./retry.js";
import { limitsOf, type Settings } from "./settings.js";
import type { CallOptions, Input, Operation, Send, SendOptions } from "./types.js";
import { withModelVersion } from "./with-model-version.js";

/** Carries calls out over HTTP. */
export function overHttp(settings: Settings): Send {
  const gate = gateOf(settings.concurrency);
  return <T>(operation: Operation, input: Input, options: SendOptions = {}) =>
    callOf<T>(carryOut({ ...settings, gate }, operation, input, options));
}

async function carryOut<T>(
  settings: Settings & { gate: Gate },
  operation: Operation,
  input: Input,
  options: SendOptions,
): Promise<Done<T>> {
  const { baseUrl, cache, expectModelVersion } = settings;
  const { timeoutMs, maxRetries } = limitsOf(options, settings);
  const versioned = withModelVersion(operation, input, expectModelVersion);
  const { method, url, body } = outgoing(baseUrl, operation, versioned, {
    asGet: cache !== undefined,
    fields: options.fields,
    options,
  });
  const keeper = method === "GET" ? cache : undefined;
  // The same URL is another answer in another language.
  const key = settings.language === undefined ? url : `${url}#${settings.language}`;
  const kept = await keptAnswer(keeper, key);
  const { file } = operation;
  const headers = headersOf(settings, options, { file, hasBody: body !== undefined, etag: kept?.etag });
  const init = { method, headers, ...(body === undefined ? {} : { body }) };

  const ask = async (): Promise<Reply> => {
    const { signal } = options;
    const reply = await attempt(settings.fetch, { url, init, isFile: file !== undefined, timeoutMs, signal });
    if (reply.status === 304 && kept !== undefined) return reply;
    if (reply.status < 200 || reply.status > 299) throw errorOf(reply);
    return reply;
  };
  const { reply, attempts } = await repeat(
    () => settings.gate.through(ask, options.signal),
    operation.repeatable ? maxRetries : 0,
    options.signal,
  );

  if (reply.status === 304 && kept !== undefined) {
    return { data: kept.data as T, meta: metaOf(reply, "cache", attempts) };
  }
  // The service keeps its description; checking that here would cost more than the whole client.
  const data = contentOf(reply, file) as T;
  const meta = metaOf(reply, "service", attempts);
  if (meta.etag !== undefined) await keeper?.set(key, { etag: meta.etag, body: reply.text });
  return { data, meta };
}

/** What a cache has for a URL; nothing where it holds what is no JSON, as storage of a browser may after years. */
async function keptAnswer(
  cache: AnswerCache | undefined,
  url: string,
): Promise<{ etag: string; data: unknown } | undefined> {
  const kept = await cache?.get(url);
  if (kept === undefined) return undefined;
  try {
    return { etag: kept.etag, data: JSON.parse(kept.body) };
  } catch {
    return undefined;
  }
}

/** Asks until there is an answer, or no reason to ask again. */
async function repeat(
  ask: () => Promise<Reply>,
  maxRetries: number,
  signal: AbortSignal | undefined,
): Promise<{ reply: Reply; attempts: number }> {
  const history: History = { retries: 0, reconnected: false };
  for (;;) {
    try {
      return { reply: await ask(), attempts: history.retries + 1 };
    } catch (error) {
      const delay = history.retries < maxRetries ? delayBeforeRetry(error, history) : undefined;
      if (delay === undefined) throw error;
      history.retries += 1;
      history.reconnected ||= error instanceof ConnectionError;
      await wait(delay, signal);
    }
  }
}

/** What the headers of a request depend on beside settings and options. */
interface Sent {
  /** Media type of the file that is asked for. */
  file: string | undefined;
  hasBody: boolean;
  /** Tag of the answer that is kept. */
  etag: string | undefined;
}

function headersOf(
  { apiKey, language }: Settings,
  { requestId }: CallOptions,
  { file, hasBody, etag }: Sent,
): Record<string, string> {
  return {
    accept: `${file?.replace(/\/$|(?<=^\*)$/, "/*") ?? "application/json"}, application/problem+json`,
    ...(hasBody ? { "content-type": "application/json" } : {}),
    ...(apiKey === undefined ? {} : { authorization: `Bearer ${apiKey}` }),
    ...(language === undefined ? {} : { "accept-language": language }),
    ...(requestId === undefined ? {} : { "x-request-id": requestId }),
    ...(etag === undefined ? {} : { "if-none-match": etag }),
  };
}
