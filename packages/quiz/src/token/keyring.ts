/** Keys that seal tokens. New tokens take `current`; the others still open what they sealed, until they are taken out. */
export interface Keyring {
  /** Id of the key for new tokens. */
  current: string;
  /** By id (letters, digits, hyphens and underscores): 32 random bytes each. */
  keys: Readonly<Record<string, Uint8Array<ArrayBuffer>>>;
}

const KEY_BYTES = 32;

/** @throws RangeError for a keyring that cannot work: better at the start of a service than with its first learner. */
export function checkKeyring({ current, keys }: Keyring): void {
  if (!Object.hasOwn(keys, current))
    throw new RangeError(`The keyring has no key ${JSON.stringify(current)}.`);
  for (const [id, key] of Object.entries(keys)) {
    if (!/^[\w-]{1,32}$/.test(id))
      throw new RangeError(`A key's id is 1 to 32 letters, digits, - or _, not ${JSON.stringify(id)}.`);
    if (key.length !== KEY_BYTES)
      throw new RangeError(`Key ${id} has ${key.length} bytes; it must have ${KEY_BYTES}.`);
  }
}
