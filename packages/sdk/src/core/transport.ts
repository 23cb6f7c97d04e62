import { type Opened, open, whole } from "./attempt.js";
import type { AnswerCache } from "./cache.js";
import { callOf, type Done } from "./call.js";
import { ConnectionError } from "./errors.js";
import { contentOf, errorOf, metaOf } from "./reply.js";
import { outgoing } from "./request.js";
import { delayBeforeRetry, type History, wait } from "./retry.js";
import { limitsOf, type Settings } from "./settings.js";
import type { CallOptions, Input, Operation, Send, SendOptions } from "./types.js";
import { withModelVersion } from "./with-model-version.js";

/** Carries calls out over HTTP. */
export function overHttp(settings: Settings): Send {
  return <T>(operation: Operation, input: Input, options: SendOptions = {}) =>
    callOf<T>(carryOut(settings, operation, input, options));
}

/** A call before it goes out. */
export function outgoingCall(settings: Settings, operation: Operation, input: Input, options: SendOptions) {
  const { baseUrl, cache, expectModelVersion, gate } = settings;
  const { timeoutMs, maxRetries } = limitsOf(options, settings);
  const { signal, fields } = options;
  const versioned = withModelVersion(operation, input, expectModelVersion);
  const { url, ...sent } = outgoing(baseUrl, operation, versioned, {
    asGet: cache !== undefined,
    fields,
    options,
  });
  return {
    url,
    method: sent.method,
    /**
     * Asks until there is an answer, or no reason to ask again.
     * @param take reads it, or throws what is wrong with it
     * @param etag tag of the answer that is kept
     */
    ask: <T>(take: (opened: Opened) => Promise<T>, etag?: string) => {
      const headers = headersOf(settings, options, {
        file: operation.file,
        hasBody: sent.body !== undefined,
        etag,
      });
      const once = async () =>
        take(await open(settings.fetch, { url, init: { ...sent, headers }, timeoutMs, signal }));
      return repeat(() => gate.through(once, signal), operation.once ? 0 : maxRetries, signal);
    },
  };
}

async function carryOut<T>(
  settings: Settings,
  operation: Operation,
  input: Input,
  options: SendOptions,
): Promise<Done<T>> {
  const { method, url, ask } = outgoingCall(settings, operation, input, options);
  const keeper = method === "GET" ? settings.cache : undefined;
  // The same URL is another answer in another language.
  const key = settings.language === undefined ? url : `${url}#${settings.language}`;
  const kept = await keptAnswer(keeper, key);
  const { file } = operation;
  const { reply, attempts } = await ask(async (opened) => {
    const read = await whole(opened, file !== undefined);
    if (read.status === 304 && kept !== undefined) return read;
    if (read.status < 200 || read.status > 299) throw errorOf(read);
    return read;
  }, kept?.etag);

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

async function repeat<Answer>(
  ask: () => Promise<Answer>,
  maxRetries: number,
  signal: AbortSignal | undefined,
): Promise<{ reply: Answer; attempts: number }> {
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
