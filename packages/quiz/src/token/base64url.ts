/** Base64 with the URL alphabet and without padding, RFC 4648 section 5. */
const ALPHABET = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";
const VALUE = new Map([...ALPHABET].map((sign, i) => [sign, i]));

export function toBase64url(bytes: Uint8Array): string {
  let out = "";
  for (let i = 0; i < bytes.length; i += 3) {
    const left = bytes.length - i;
    const three = ((bytes[i] ?? 0) << 16) | ((bytes[i + 1] ?? 0) << 8) | (bytes[i + 2] ?? 0);
    const signs = [18, 12, 6, 0].map((shift) => ALPHABET.charAt((three >> shift) & 63)).join("");
    out += signs.slice(0, left > 2 ? 4 : left + 1);
  }
  return out;
}

/** Undefined for anything but the one spelling that `toBase64url` writes. */
export function fromBase64url(text: string): Uint8Array<ArrayBuffer> | undefined {
  if (text.length % 4 === 1) return undefined;
  const out = new Uint8Array(Math.floor((text.length * 3) / 4));
  let held = 0;
  let bits = 0;
  let at = 0;
  for (const sign of text) {
    const value = VALUE.get(sign);
    if (value === undefined) return undefined;
    held = ((held << 6) | value) & 0xffffff;
    bits += 6;
    if (bits < 8) continue;
    bits -= 8;
    out[at++] = (held >> bits) & 255;
  }
  return (held & ((1 << bits) - 1)) === 0 ? out : undefined;
}
