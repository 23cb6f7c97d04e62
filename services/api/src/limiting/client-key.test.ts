import { describe, expect, it } from "vitest";
import { clientKeyOf, keyOf, siteOf } from "./client-key.js";

// Guards that a client is the same client however its address is written.
it.each([
  ["192.0.2.1", "192.0.2.1"],
  ["192.0.2.1:4711", "192.0.2.1"],
  ["::ffff:192.0.2.1", "192.0.2.1"],
  ["::FFFF:192.0.2.1", "192.0.2.1"],
  ["[::ffff:192.0.2.1]:80", "192.0.2.1"],
  ["2001:db8:1:2:3:4:5:6", "2001:db8:1:2::/64"],
  ["2001:0DB8:0001:0002::1", "2001:db8:1:2::/64"],
  ["[2001:db8:1:2::9]:443", "2001:db8:1:2::/64"],
  ["[2001:db8:1:2::9]", "2001:db8:1:2::/64"],
  ["fe80::1%eth0", "fe80:0:0:0::/64"],
  ["::1", "0:0:0:0::/64"],
  ["::", "0:0:0:0::/64"],
  ["64:ff9b::192.0.2.33", "64:ff9b:0:0::/64"],
  ["2001:db8::", "2001:db8:0:0::/64"],
])("%s counts as %s", (address, key) => {
  expect(keyOf(address)).toBe(key);
});

it.each([
  "",
  "unknown",
  "_hidden",
  "192.0.2",
  "192.0.2.1:x",
  "192.0.2.1:123456",
  "[192.0.2.1",
  "a:b",
  "1:2:3",
])("%j is no address", (text) => {
  expect(keyOf(text)).toBeUndefined();
});

describe("a request", () => {
  const from = (ip: string, remoteAddress?: string) =>
    clientKeyOf({ ip, raw: { socket: { remoteAddress } } } as unknown as Parameters<typeof clientKeyOf>[0]);

  it("counts as the address that is named for it, and as its socket's where none is", () => {
    expect(from("192.0.2.1:80", "10.0.0.1")).toBe("192.0.2.1");
    expect(from("made up", "10.0.0.1")).toBe("10.0.0.1");
    expect(from("made up")).toBe("unknown");
  });
});

// RFC 6177, section 2: a site gets a /48 or less.
it.each([
  ["192.0.2.1", "192.0.2.1"],
  ["2001:db8:1:2::/64", "2001:db8:1::/48"],
  ["2001:db8:1:ffff::/64", "2001:db8:1::/48"],
  ["2001:db8:2:2::/64", "2001:db8:2::/48"],
  ["0:0:0:0::/64", "0:0:0::/48"],
  ["unknown", "unknown"],
])("%s stands in line as %s", (client, site) => {
  expect(siteOf(client)).toBe(site);
});
