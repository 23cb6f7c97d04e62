import { checkKeyring, type Keyring } from "@sunfathom/quiz";
import { z } from "zod";
import { defaultQuizSettings, type QuizSettings } from "../quiz-settings.js";
import { type Environment, readVariables, saysOfSecret, secret, wholeNumber } from "./variables.js";

/** Different characters of a key that nobody guesses: of 48 random hexadecimal digits more than that differ. */
const leastVariety = 8;

const instructorKeys = `20 to 256 letters, digits, - . _ ~ + or /, at least ${leastVariety} of them different, such as \`openssl rand -hex 24\` prints`;
const rings =
  "keys between commas, the one to seal with first: an id (1 to 32 letters, digits, - or _), a colon and 64 hexadecimal digits, such as `openssl rand -hex 32` prints; each id once";

const variables = z.object({
  /** The first key seals; the others still open what they have sealed. */
  QUIZ_KEYS: secret(/^[\w-]{1,32}:[\da-f]{64}(\s*,\s*[\w-]{1,32}:[\da-f]{64})*$/i, rings)
    .transform(entriesOf)
    // 32 random bytes have some 30 different values.
    .refine((entries) => entries.every(([, key]) => new Set(key).size >= leastVariety), {
      error: () => "has a key that is not random: draw each with `openssl rand -hex 32`.",
      abort: true,
    })
    .refine((entries) => new Set(entries.map(([id]) => id)).size === entries.length, saysOfSecret(rings))
    .transform(keyringOf)
    .optional(),
  QUIZ_TOKEN_LIFETIME_S: wholeNumber([60, 366 * 24 * 3600]).optional(),
  /** The form of a bearer token (RFC 6750, section 2.1), long enough that nobody guesses it. */
  INSTRUCTOR_KEY: secret(/^(?=.{20,256}$)[\w.~+/-]+=*$/, instructorKeys)
    .refine((key) => new Set(key).size >= leastVariety, saysOfSecret(instructorKeys))
    .optional(),
});

/** @throws Error that names the variable */
export function quizSettingsOf(env: Environment): QuizSettings {
  const read = readVariables(env, variables);
  return {
    keyring: read.QUIZ_KEYS,
    tokenLifetime_s: read.QUIZ_TOKEN_LIFETIME_S ?? defaultQuizSettings.tokenLifetime_s,
    instructorKey: read.INSTRUCTOR_KEY,
  };
}

type Entry = [id: string, key: Uint8Array<ArrayBuffer>];

function entriesOf(value: string): Entry[] {
  return value.split(",").map((entry): Entry => {
    const [id = "", digits = ""] = entry.trim().split(":");
    return [id, Uint8Array.from(Buffer.from(digits, "hex"))];
  });
}

function keyringOf(entries: Entry[]): Keyring {
  const keyring = { current: entries[0]?.[0] ?? "", keys: Object.fromEntries(entries) };
  checkKeyring(keyring);
  return keyring;
}
