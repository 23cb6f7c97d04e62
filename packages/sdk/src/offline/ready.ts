import { ConnectionError } from "../core/errors.js";
import type { Language } from "../generated/types.js";
import type { OfflinePart } from "./part.js";
import { bringRest } from "./seldom.js";

type Later = typeof import("./refusal-error.js");

/** What a page needs only where a scene is refused: it need not wait for it before it starts. */
export const later = (): Promise<Later> =>
  import("./refusal-error.js").catch((cause: unknown) => {
    throw new ConnectionError(
      "The texts of refusals are not here: wait for ready() while there is a network.",
      {
        cause,
      },
    );
  });

/**
 * Waits until all is here that a client without a service may need. The texts for scenes that are refused, and those of the
 * language that a client is made with, are loaded behind all else, as soon as the client is made; what plans filters on a mount, where
 * a scene asks for it. A page that is to go on without a network waits for them once.
 * @param languages those that scenes will ask for beside
 * @example
 * const boat = offlineWith([filterChoice]);
 * await ready(); // from here on, the network may go
 * @throws ConnectionError where they cannot be loaded
 */
export async function ready(...languages: Language[]): Promise<void> {
  await Promise.all([behind(languages), ...[...further].map(brought)]);
}

/** What is loaded behind all else, as soon as a client is made. */
async function behind(languages: readonly Language[] = []): Promise<void> {
  const { textsIn } = await later();
  await Promise.all([
    ...[...spoken, ...languages].map((language) => textsIn(undefined, language)),
    bringRest(),
  ]);
}

/** Languages that clients have been made with. */
const spoken = new Set<Language>();

/** What answers scenes that ask for more than most do, once it is here. @throws ConnectionError where it cannot be loaded */
export const brought = <T>(load: () => Promise<T>): Promise<T> =>
  load().catch((cause: unknown) => {
    throw new ConnectionError(
      "What answers such scenes is not here: wait for ready() while there is a network.",
      { cause },
    );
  });

/** Loads what answers scenes that ask for more than most do. */
const further = new Set<() => Promise<unknown>>();

/** Of what clients are made of: where a part answers some scenes with more than is here, that is waited for, too. */
export function mayNeed(parts: readonly OfflinePart[]): void {
  for (const { wider } of parts) if (wider) further.add(wider);
}

/** The same of what may be needed beside its parts. */
export function mayNeedAlso(load: () => Promise<unknown>): void {
  further.add(load);
}

/** Begins to load them. Whoever needs them hears of a failure then, and tries again. */
export function begin(language: Language = "en"): void {
  spoken.add(language);
  behind().catch(() => undefined);
}
