import { LRUCache } from "lru-cache";

/** Kept at most; URLs asked about again are few at a time, and each is at most as long as the limit of URLs. */
const mostCharacters = 1024 * 1024;
/** What an entry takes besides its texts, about. */
const overhead = 256;

/**
 * Entity tags of the URLs met lately. The scene in a URL never changes, so neither does its tag while the process lives:
 * whoever asks again whether an answer still holds is told without the scene being read once more. The oldest go first.
 * @see https://github.com/isaacs/node-lru-cache
 */
export class KnownTags {
  readonly #tags = new LRUCache<string, string>({
    maxSize: mostCharacters,
    sizeCalculation: (tag, url) => tag.length + url.length + overhead,
  });

  /** The tag of a URL whose scene has been found valid, where it is still known. */
  get(url: string): string | undefined {
    return this.#tags.get(url);
  }

  keep(url: string, tag: string): void {
    this.#tags.set(url, tag);
  }
}
