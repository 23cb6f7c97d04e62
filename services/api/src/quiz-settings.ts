import { randomBytes } from "node:crypto";
import { checkKeyring, type Keyring } from "@sunfathom/quiz";
import { type Environment, secret, wholeNumber } from "./settings.js";

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

/** @throws Error that names the variable */
export function quizSettingsOf(env: Environment): QuizSettings {
  return {
    keyring: keyringOf(env),
    tokenLifetime_s: wholeNumber(env, "QUIZ_TOKEN_LIFETIME_S", defaultQuizSettings.tokenLifetime_s, [
      60,
      366 * 24 * 3600,
    ]),
    // The form of a bearer token (RFC 6750, section 2.1), long enough that nobody guesses it.
    instructorKey: instructorKeyOf(env),
  };
}

/** Different characters of a key that nobody guesses: of 48 random hexadecimal digits more than that differ. */
const leastVariety = 8;

function instructorKeyOf(env: Environment): string | undefined {
  const allowed = `20 to 256 letters, digits, - . _ ~ + or /, at least ${leastVariety} of them different, such as \`openssl rand -hex 24\` prints`;
  const key = secret(env, "INSTRUCTOR_KEY", /^(?=.{20,256}$)[\w.~+/-]+=*$/, allowed);
  if (key !== undefined && new Set(key).size < leastVariety)
    throw new Error(`INSTRUCTOR_KEY must be ${allowed}.`);
  return key;
}

/** A ring of one key that nobody else has. */
export function drawKeyring(): Keyring {
  return { current: "start", keys: { start: Uint8Array.from(randomBytes(32)) } };
}

/** The first key seals; the others still open what they have sealed. */
function keyringOf(env: Environment): Keyring | undefined {
  const allowed =
    "keys between commas, the one to seal with first: an id (1 to 32 letters, digits, - or _), a colon and 64 hexadecimal digits, such as `openssl rand -hex 32` prints; each id once";
  const value = secret(
    env,
    "QUIZ_KEYS",
    /^[\w-]{1,32}:[\da-f]{64}(\s*,\s*[\w-]{1,32}:[\da-f]{64})*$/i,
    allowed,
  );
  if (value === undefined) return undefined;
  const entries = value.split(",").map((entry): [string, Uint8Array<ArrayBuffer>] => {
    const [id = "", digits = ""] = entry.trim().split(":");
    return [id, Uint8Array.from(Buffer.from(digits, "hex"))];
  });
  // 32 random bytes have some 30 different values.
  if (entries.some(([, key]) => new Set(key).size < leastVariety))
    throw new Error("QUIZ_KEYS has a key that is not random: draw each with `openssl rand -hex 32`.");
  const keyring = { current: entries[0]?.[0] ?? "", keys: Object.fromEntries(entries) };
  if (Object.keys(keyring.keys).length < entries.length) throw new Error(`QUIZ_KEYS must be ${allowed}.`);
  checkKeyring(keyring);
  return keyring;
}
