/**
 * Text sealed with AES-256 in Galois/Counter Mode (NIST SP 800-38D), encrypted and authenticated, by Web Crypto:
 * `sq1.<key id>.<nonce>.<ciphertext and tag>`. The nonce is 96 random bits; one key may seal 2^32 texts. The part before the
 * nonce is authenticated too, so that a text cannot be passed off as sealed by another key.
 */
import { QuizProblem } from "../quiz-problem.js";
import { fromBase64url, toBase64url } from "./base64url.js";
import type { Keyring } from "./keyring.js";

const VERSION = "sq1";
const NONCE_BYTES = 12;

const refused = (code: "token_malformed" | "token_key_unknown" | "token_refused") =>
  new QuizProblem({ code, parameters: {} }, "token");
const keyOf = (raw: Uint8Array<ArrayBuffer>, usage: "encrypt" | "decrypt") =>
  globalThis.crypto.subtle.importKey("raw", raw, "AES-GCM", false, [usage]);
const parameters = (iv: Uint8Array<ArrayBuffer>, head: string) => ({
  name: "AES-GCM",
  iv,
  additionalData: new TextEncoder().encode(head),
});

export async function seal(text: string, { current, keys }: Keyring): Promise<string> {
  const raw = keys[current];
  if (!raw) throw new RangeError(`The keyring has no key ${JSON.stringify(current)}.`);
  const head = `${VERSION}.${current}`;
  const nonce = globalThis.crypto.getRandomValues(new Uint8Array(NONCE_BYTES));
  const plain = new TextEncoder().encode(text);
  const sealed = await globalThis.crypto.subtle.encrypt(
    parameters(nonce, head),
    await keyOf(raw, "encrypt"),
    plain,
  );
  return `${head}.${toBase64url(nonce)}.${toBase64url(new Uint8Array(sealed))}`;
}

/** @throws QuizProblem for what is no token, of a key that the ring does not hold, or altered. */
export async function unseal(token: string, { keys }: Keyring): Promise<string> {
  const [version, id = "", nonceText = "", sealedText = "", ...more] = token.split(".");
  const nonce = fromBase64url(nonceText);
  const sealed = fromBase64url(sealedText);
  if (version !== VERSION || more.length > 0 || nonce?.length !== NONCE_BYTES || !sealed) {
    throw refused("token_malformed");
  }
  const raw = Object.hasOwn(keys, id) ? keys[id] : undefined;
  if (!raw) throw refused("token_key_unknown");
  try {
    const head = `${VERSION}.${id}`;
    const plain = await globalThis.crypto.subtle.decrypt(
      parameters(nonce, head),
      await keyOf(raw, "decrypt"),
      sealed,
    );
    return new TextDecoder().decode(plain);
  } catch {
    throw refused("token_refused");
  }
}
