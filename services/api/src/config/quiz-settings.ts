import { randomBytes } from "node:crypto";
import type { Keyring } from "@sunfathom/quiz";

/** What papers of questions are sealed with, and who gets their keys. */
export interface QuizSettings {
  /** Keys that seal papers; drawn at the start where there are none. */
  keyring: Keyring | undefined;
  /** How long answers to a paper are marked. */
  tokenLifetime_s: number;
  /** Opens packages with keys; nobody gets any where there is none. */
  instructorKey: string | undefined;
}

export const defaultQuizSettings: QuizSettings = {
  keyring: undefined,
  tokenLifetime_s: 24 * 3600,
  instructorKey: undefined,
};

/** A ring of one key that nobody else has. */
export function drawKeyring(): Keyring {
  return { current: "start", keys: { start: Uint8Array.from(randomBytes(32)) } };
}
