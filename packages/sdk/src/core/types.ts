import type { Language } from "../generated/types.js";
import type { AnswerCache } from "./cache.js";

/** The part of `fetch` that the client needs. */
export type Fetch = (url: string, init: RequestInit) => Promise<Response>;

/** What holds for every call of a client. */
export interface SunfathomOptions {
  /** Where the service is, `https://light.example.org` for instance. A path is kept: `/light/v1/...` for `https://example.org/light`. */
  baseUrl: string;
  /** Sent as `Authorization: Bearer ...`. */
  apiKey?: string | undefined;
  /** Takes the place of the global `fetch`. */
  fetch?: Fetch | undefined;
  /** How long one attempt may take until its whole body is there, in milliseconds. Default 30 000. */
  timeoutMs?: number | undefined;
  /** Attempts after the first, for operations that are safe to repeat. Default 2. */
  maxRetries?: number | undefined;
  /** How many calls may be under way at a time; others wait for their turn. Default no limit. */
  concurrency?: number | undefined;
  /**
   * Take answers of this version of the model and no other: a service that runs another one answers with
   * `ModelVersionMismatchError`. A scene's own `expect_model_version` comes first.
   */
  expectModelVersion?: string | undefined;
  /** Language of answers and problems, sent as `Accept-Language`. A scene's own `language` comes first. Left out, none is sent: a browser sends its own, and the service answers in English where there is none. */
  language?: Language | undefined;
  /** Keeps answers and asks the service whether they still hold, which costs it no computing. Default none. */
  cache?: AnswerCache | undefined;
}

/** What holds for one call, in place of what the client says. */
export interface CallOptions {
  /** Ends the call with `AbortedError`, wherever it stands. */
  signal?: AbortSignal | undefined;
  /** How long one attempt may take, in milliseconds. */
  timeoutMs?: number | undefined;
  /** Attempts after the first, for operations that are safe to repeat. */
  maxRetries?: number | undefined;
  /** An id for the log of the service, 1 to 64 of `A-Z a-z 0-9 . _ -`. The service makes one where there is none. */
  requestId?: string | undefined;
}

/** How many calls are left, as the service says in `RateLimit`. */
export interface RateLimit {
  /** Calls that are left. */
  remaining: number;
  /** Seconds until there are more. */
  reset_s?: number;
}

/** What is known of an answer beside its content. */
export interface ResponseMeta {
  /** `service`: sent by the service. `cache`: kept here, and confirmed by the service. `offline`: computed here. */
  source: "service" | "cache" | "offline";
  /** Attempts that it took; 1 when the first one was answered. */
  attempts: number;
  /** Id of the request in the log of the service. */
  requestId?: string;
  /** Tag of the answer. */
  etag?: string;
  rateLimit?: RateLimit;
}

/** A call under way: a promise of the answer. */
export interface Call<T> extends Promise<T> {
  /**
   * The answer, and what is known of it beside its content.
   * @example
   * const { data, meta } = await client.reference.models().withResponse();
   * console.log(meta.requestId, data.models.length);
   */
  withResponse(): Promise<{ data: T; meta: ResponseMeta }>;
}

/** How an operation of the service is asked for. */
export interface Operation {
  readonly method: string;
  /** With parameters in braces. */
  readonly path: string;
  /** Where asking twice does more than asking once. */
  readonly once?: boolean;
  /** Fields that GET at the same path takes in a query string, where there is such a twin with the same answer. */
  readonly query?: readonly string[];
  /** Whether the body takes `expect_model_version`. */
  readonly versioned?: boolean;
  /** Whether a call may say which fields its answer shall have. */
  readonly selects?: boolean;
  /** Media type of an answer that is a file, or its first part and a slash, `*` for several; JSON when left out. */
  readonly file?: string;
  /** Names of options that go into the query string. */
  readonly beside?: readonly ("format" | "width_px" | "theme")[];
}

/** What goes into one call. */
export interface Input {
  readonly path?: Readonly<Record<string, string>>;
  readonly body?: object;
}

/** Carries a call out. The generated part is written against it; the service and the offline mode each have one. */
export type Send = <T>(operation: Operation, input: Input, options: SendOptions | undefined) => Call<T>;

/** Options of a call, of whichever signature. */
export interface SendOptions extends CallOptions {
  /** Names of the fields that the answer shall have, or `brief` for an answer in brief. */
  fields?: readonly string[] | "brief" | undefined;
  /** How a picture is drawn. */
  format?: string | undefined;
  width_px?: number | undefined;
  theme?: string | undefined;
}
