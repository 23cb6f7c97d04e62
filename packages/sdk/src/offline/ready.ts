import { ConnectionError } from "../core/errors.js";
import type { Language } from "../generated/types.js";
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
 * language that a client is made with, are loaded behind all else, as soon as the client is made. A page that is to go on without a network waits for them once.
 * @param languages those that scenes will ask for beside
 * @example
 * const boat = offlineWith([filterChoice]);
 * await ready(); // from here on, the network may go
 * @throws ConnectionError where they cannot be loaded
 */
export async function ready(...languages: Language[]): Promise<void> {
  const { textsIn } = await later();
  await Promise.all([
    ...[...spoken, ...languages].map((language) => textsIn(undefined, language)),
    bringRest(),
  ]);
}

/** Languages that clients have been made with. */
const spoken = new Set<Language>();

/** Begins to load them. Whoever needs them hears of a failure then, and tries again. */
export function begin(language: Language = "en"): void {
  spoken.add(language);
  ready().catch(() => undefined);
}
