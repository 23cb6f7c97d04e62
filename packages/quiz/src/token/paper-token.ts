/**
 * A paper as a sealed token. It holds what the paper was made from, where its questions were found, and a digest of what decides
 * their marks, not the keys themselves: grading makes the paper again and refuses where the digest differs, as after a change of
 * the model. No sentence is part of it, so mending a text breaks no paper. So a token stays short, and nothing has to be stored.
 */
import { MODEL_VERSION } from "@sunfathom/planner";
import type { Item } from "../item/item.js";
import { itemsAgain, type PaperRequest } from "../paper/items-for.js";
import { QuizProblem } from "../quiz-problem.js";
import { toBase64url } from "./base64url.js";
import { decidesMarks } from "./decides-marks.js";
import { readFound, writeFound } from "./found.js";
import type { Keyring } from "./keyring.js";
import type { Release } from "./release.js";
import { seal, unseal } from "./seal.js";

interface Sealed {
  /** Without what is avoided: where questions were found says more, and the list is long. */
  request: Omit<PaperRequest, "avoid">;
  model_version: string;
  /** Where its questions were found, see `found.ts`. */
  found: string;
  /** SHA-256 of what decides its marks. */
  digest: string;
  /** Seconds since 1970. */
  expires_s: number;
  /** The same, of a paper that tells its marks once it has closed. */
  closes_s?: number;
}

export interface PaperToken {
  token: string;
  model_version: string;
  /** RFC 3339, in UTC. */
  expires: string;
  release: Release;
  /** RFC 3339, in UTC; of a paper that tells its marks once it has closed. */
  closes_at?: string;
}

interface SealOptions {
  keyring: Keyring;
  /** Seconds since 1970. */
  now_s: number;
  /** How long the token can be marked: from now, or from when the paper closes. */
  lifetime_s: number;
  /** When the paper closes and its marks are told, seconds since 1970; they are told at once when left out. */
  closes_s?: number | undefined;
}

const written = (seconds: number): string => new Date(seconds * 1000).toISOString();

const digestOf = async (items: readonly Item[]): Promise<string> => {
  const bytes = new TextEncoder().encode(JSON.stringify(items.map(decidesMarks)));
  return toBase64url(new Uint8Array(await globalThis.crypto.subtle.digest("SHA-256", bytes)));
};

/** @param items the paper that `itemsFor(request)` made. */
export async function sealPaper(
  { request, items }: { request: PaperRequest; items: readonly Item[] },
  { keyring, now_s, lifetime_s, closes_s }: SealOptions,
): Promise<PaperToken> {
  const expires_s = Math.floor((closes_s ?? now_s) + lifetime_s);
  const { avoid: _, ...kept } = request;
  const sealed: Sealed = {
    request: kept,
    model_version: MODEL_VERSION,
    found: writeFound(items),
    digest: await digestOf(items),
    expires_s,
    ...(closes_s === undefined ? {} : { closes_s }),
  };
  return {
    token: await seal(JSON.stringify(sealed), keyring),
    model_version: MODEL_VERSION,
    expires: written(expires_s),
    ...(closes_s === undefined
      ? { release: "at_once" }
      : { release: "after_close", closes_at: written(closes_s) }),
  };
}

export interface OpenedPaper {
  request: PaperRequest;
  items: Item[];
  model_version: string;
  /** When it closes, of a paper that tells nothing before: RFC 3339, in UTC. Undefined once it has closed. */
  held_until?: string;
}

interface OpenOptions {
  keyring: Keyring;
  /** Seconds since 1970. */
  now_s: number;
  /** Makes the questions as `itemsAgain` does, for example on another thread; `itemsAgain` itself when left out. */
  again?: (...asked: Parameters<typeof itemsAgain>) => Promise<Item[] | undefined> | Item[] | undefined;
}

/**
 * The paper of a token, made again with its keys.
 * @throws QuizProblem for a token that is malformed, altered, of an unknown key or expired, or whose questions would have
 * other keys today.
 */
export async function openPaper(
  token: string,
  { keyring, now_s, again = itemsAgain }: OpenOptions,
): Promise<OpenedPaper> {
  // The seal proves that this is what `sealPaper` wrote.
  const sealed = JSON.parse(await unseal(token, keyring)) as Sealed;
  if (now_s >= sealed.expires_s) {
    const parameters = { expired_at: written(sealed.expires_s) };
    throw new QuizProblem({ code: "token_expired", parameters }, "token");
  }
  const found = readFound(sealed.found ?? "");
  const items = found && (await again(sealed.request, found));
  if (!items || (await digestOf(items)) !== sealed.digest) {
    const parameters = { model_version: sealed.model_version };
    throw new QuizProblem({ code: "questions_changed", parameters }, "token");
  }
  const { request, model_version, closes_s = now_s } = sealed;
  return { request, items, model_version, ...(now_s < closes_s ? { held_until: written(closes_s) } : {}) };
}
