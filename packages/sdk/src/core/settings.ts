import { type Gate, gateOf } from "./gate.js";
import type { CallOptions, Fetch, SunfathomOptions } from "./types.js";

/** Longest time that a timer can be set to, in milliseconds. */
const longestTimerMs = 2 ** 31 - 1;

/** Options with every default filled in. */
export interface Settings
  extends Omit<SunfathomOptions, "concurrency" | "fetch" | "timeoutMs" | "maxRetries"> {
  gate: Gate;
  fetch: Fetch;
  timeoutMs: number;
  maxRetries: number;
}

/**
 * @throws TypeError that names the option and what it can be
 */
export function settingsOf(options: SunfathomOptions): Settings {
  // Callers without a compiler may leave them out.
  const given: SunfathomOptions | undefined = options;
  const { baseUrl, apiKey, concurrency = Number.POSITIVE_INFINITY } = given ?? {};
  if (typeof baseUrl !== "string" || !/^https?:\/\/[^?#]+$/i.test(baseUrl) || !URL.canParse(baseUrl)) {
    throw bad("baseUrl", baseUrl, "a URL such as https://light.example.org");
  }
  if (concurrency !== Number.POSITIVE_INFINITY && !(Number.isInteger(concurrency) && concurrency >= 1)) {
    throw bad("concurrency", concurrency, "a whole number from 1 on");
  }
  // Neither the key nor anything of it may reach a message.
  if (apiKey !== undefined && !/^[\x21-\x7e]+$/.test(apiKey)) {
    throw new TypeError("apiKey holds a character that a header cannot.");
  }
  return {
    ...options,
    baseUrl: withoutEndSlashes(baseUrl),
    gate: gateOf(concurrency),
    // Looked up with each call, so that what takes its place later is used; called without a client as its `this`.
    fetch: options.fetch ?? ((url, init) => fetch(url, init)),
    ...limitsOf(options, { timeoutMs: 30_000, maxRetries: 2 }),
  };
}

function withoutEndSlashes(url: string): string {
  let end = url.length;
  while (url[end - 1] === "/") end -= 1;
  return url.slice(0, end);
}

/** The limits of a call, with those of the client where it has none. */
export function limitsOf(
  { timeoutMs, maxRetries }: Pick<CallOptions, "timeoutMs" | "maxRetries">,
  otherwise: { timeoutMs: number; maxRetries: number },
): { timeoutMs: number; maxRetries: number } {
  const limits = {
    timeoutMs: timeoutMs ?? otherwise.timeoutMs,
    maxRetries: maxRetries ?? otherwise.maxRetries,
  };
  if (!(limits.timeoutMs > 0 && limits.timeoutMs <= longestTimerMs)) {
    throw bad("timeoutMs", limits.timeoutMs, `more than 0 and at most ${longestTimerMs}`);
  }
  if (!Number.isInteger(limits.maxRetries) || limits.maxRetries < 0) {
    throw bad("maxRetries", limits.maxRetries, "a whole number from 0 on");
  }
  return limits;
}

function bad(name: string, value: unknown, allowed: string): TypeError {
  return new TypeError(`${name} is ${JSON.stringify(value) ?? "missing"}, but must be ${allowed}.`);
}
