import { createHash } from "node:crypto";

/** Of all names that this service makes ids of: a UUID drawn once. */
const namespace = "6f1c2f0e-6f0b-4a3c-9a56-0d5a86f4e2b7";

/** The UUID of a name (RFC 9562, section 5.5, version 5): the same for the same name, and of no other. */
export function nameUuid(...parts: readonly string[]): string {
  const name = JSON.stringify(parts);
  const hash = createHash("sha1")
    .update(Buffer.from(namespace.replaceAll("-", ""), "hex"))
    .update(name)
    .digest();
  const bytes = hash.subarray(0, 16);
  bytes.writeUInt8((bytes.readUInt8(6) & 0x0f) | 0x50, 6);
  bytes.writeUInt8((bytes.readUInt8(8) & 0x3f) | 0x80, 8);
  const hex = bytes.toString("hex");
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join("-");
}
