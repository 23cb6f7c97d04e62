import { isIP, isIPv6 } from "node:net";
import type { FastifyRequest } from "fastify";

/**
 * Who a request counts as: an IPv4 address, or the /64 of an IPv6 address, which one subscriber has whole. What a proxy
 * forwards may carry a port or be no address at all: a port makes nobody another client, and without an address the proxy
 * itself answers for the request.
 */
export function clientKeyOf(request: Pick<FastifyRequest, "ip" | "raw">): string {
  return keyOf(request.ip) ?? keyOf(request.raw.socket.remoteAddress ?? "") ?? "unknown";
}

/**
 * Whom a client stands in line with: an IPv4 address alone, an IPv6 network with all others of its /48: a site
 * is given that or less (RFC 6177, section 2), and 65,536 such networks with it.
 */
export function siteOf(client: string): string {
  if (!client.endsWith("::/64")) return client;
  return `${client.split(":", 3).join(":")}::/48`;
}

/** The key of an address as text; undefined where it is none. */
export function keyOf(text: string): string | undefined {
  const address = withoutZone(withoutPort(text.trim()));
  const mapped = /^::ffff:(\d+\.\d+\.\d+\.\d+)$/i.exec(address)?.[1];
  if (mapped !== undefined && isIP(mapped) === 4) return mapped;
  if (isIP(address) === 4) return address;
  return isIPv6(address) ? `${networkOf(address).join(":")}::/64` : undefined;
}

/** `192.0.2.1:80`, `[2001:db8::1]:80` and `[2001:db8::1]` without what is not the address. */
function withoutPort(text: string): string {
  const bracketed = /^\[([^\]]*)\](?::\d{1,5})?$/.exec(text);
  if (bracketed !== null) return bracketed[1] ?? "";
  return /^([\d.]+):\d{1,5}$/.exec(text)?.[1] ?? text;
}

/** `fe80::1%eth0` without the zone, which names an interface of this machine alone (RFC 4007, section 11). */
function withoutZone(address: string): string {
  const [bare = ""] = address.split("%", 1);
  return bare;
}

/** The first four groups of an IPv6 address, each in its shortest form (RFC 5952, section 4.1). */
function networkOf(address: string): string[] {
  const [head = "", tail] = address.toLowerCase().split("::");
  const first = groupsOf(head);
  const last = tail === undefined ? [] : groupsOf(tail);
  const zeros = Array.from({ length: Math.max(0, 8 - first.length - last.length) }, () => "0");
  return [...first, ...zeros, ...last].slice(0, 4).map((group) => group.replace(/^0+(?=.)/, ""));
}

/** An IPv4 address at the end takes the place of two groups (RFC 4291, section 2.2). */
function groupsOf(part: string): string[] {
  if (part === "") return [];
  return part.split(":").flatMap((group) => (group.includes(".") ? ["0", "0"] : [group]));
}
