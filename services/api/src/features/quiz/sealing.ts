import type { Keyring } from "@sunfathom/quiz";

/** How papers are sealed. */
export interface Sealing {
  keyring: Keyring;
  lifetime_s: number;
}
