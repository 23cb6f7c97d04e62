/** An answer that was kept. */
export interface KeptAnswer {
  /** Its tag, as the service gave it. */
  etag: string;
  /** Its JSON. */
  body: string;
}

/** Where answers are kept. Keys are URLs without secrets. An entry may be forgotten at any time. */
export interface AnswerCache {
  get(key: string): KeptAnswer | undefined | Promise<KeptAnswer | undefined>;
  set(key: string, kept: KeptAnswer): void | Promise<void>;
}

/**
 * Keeps answers in memory.
 * @param maxEntries how many, at least 1; the one that was not used for longest goes first
 * @example
 * const client = new Sunfathom({ baseUrl, cache: memoryCache(200) });
 */
export function memoryCache(maxEntries = 100): AnswerCache {
  if (!Number.isInteger(maxEntries) || maxEntries < 1) {
    throw new TypeError(`maxEntries is ${maxEntries}, but must be a whole number from 1 on.`);
  }
  const entries = new Map<string, KeptAnswer>();
  const put = (key: string, kept: KeptAnswer) => {
    entries.delete(key);
    entries.set(key, kept);
  };
  return {
    get: (key) => {
      const kept = entries.get(key);
      if (kept !== undefined) put(key, kept);
      return kept;
    },
    set: (key, kept) => {
      put(key, kept);
      for (const oldest of entries.keys()) {
        if (entries.size <= maxEntries) break;
        entries.delete(oldest);
      }
    },
  };
}
