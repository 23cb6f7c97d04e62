import { isIP } from "node:net";

interface ListenAddress {
  host: string;
  port: number;
}

export type Environment = Readonly<Record<string, string | undefined>>;

/** The text of a variable. @throws Error that names it where it does not have the form */
export function text(
  env: Environment,
  name: string,
  { fallback, form, allowed }: { fallback: string; form: RegExp; allowed: string },
): string {
  const value = env[name] ?? fallback;
  if (!form.test(value)) throw bad(name, value, allowed);
  return value;
}

/** A text that no message may repeat; undefined where the variable is not there. @throws Error that names the variable */
export function secret(env: Environment, name: string, form: RegExp, allowed: string): string | undefined {
  const value = env[name];
  if (value !== undefined && !form.test(value)) throw new Error(`${name} must be ${allowed}.`);
  return value;
}

/** A whole number, in plain digits. @throws Error that names the variable */
export function wholeNumber(
  env: Environment,
  name: string,
  fallback: number,
  [min, max]: readonly [min: number, max: number],
): number {
  const value = env[name] ?? String(fallback);
  const number = Number(value);
  if (!/^\d{1,10}$/.test(value) || number < min || number > max) {
    throw bad(name, value, `a whole number from ${min} to ${max}`);
  }
  return number;
}

/** One of some words. @throws Error that names the variable */
export function oneOf<T extends string>(
  env: Environment,
  name: string,
  fallback: T,
  options: readonly T[],
): T {
  const value = env[name] ?? fallback;
  const option = options.find((word) => word === value);
  if (option === undefined) throw bad(name, value, `one of ${options.join(", ")}`);
  return option;
}

/** An address to listen at, such as `127.0.0.1:9464` or `[::1]:9464`; undefined for `off`. @throws Error that names the variable */
export function addressOf(
  env: Environment,
  name: string,
  fallback: ListenAddress | undefined,
): ListenAddress | undefined {
  const value = env[name];
  if (value === undefined) return fallback;
  if (value === "off") return undefined;
  const [, bracketed, plain, port] = /^(?:\[([\da-f:.]+)\]|([^\s:/[\]]+)):(\d{1,5})$/i.exec(value) ?? [];
  const host = bracketed ?? plain;
  if (host === undefined || Number(port) > 65535)
    throw bad(name, value, "a host and a port, such as 127.0.0.1:9464, or off");
  return { host, port: Number(port) };
}

/** What stands between commas, each of which `fits`; empty where the variable is not there. @throws Error that names it */
export function items(
  env: Environment,
  name: string,
  fits: (item: string) => boolean,
  allowed: string,
): string[] {
  const value = env[name];
  if (value === undefined) return [];
  const all = value.split(",").map((item) => item.trim());
  if (!all.every(fits)) throw bad(name, value, allowed);
  return all;
}

/** Scheme, host and port as browsers write them (RFC 6454, section 6.2): compared as a whole, so that no star stands for anything. */
export function isOrigin(text: string): boolean {
  return (
    !text.includes("*") &&
    URL.canParse(text) &&
    /^https?:$/.test(new URL(text).protocol) &&
    new URL(text).origin === text
  );
}

/**
 * An IP address or network, or `loopback`. None wider than the widest private ones, 10.0.0.0/8 (RFC 1918) and fc00::/7 (RFC
 * 4193): in it anybody could claim to be anybody.
 */
export function isNetwork(text: string): boolean {
  if (text === "loopback") return true;
  const [address = "", bits, ...rest] = text.split("/");
  const family = isIP(address);
  if (family === 0 || rest.length > 0) return false;
  if (bits === undefined) return true;
  const [widest, narrowest] = family === 4 ? [8, 32] : [7, 128];
  return /^\d{1,3}$/.test(bits) && Number(bits) >= widest && Number(bits) <= narrowest;
}

function bad(name: string, value: string, allowed: string): Error {
  return new Error(`${name} is ${JSON.stringify(value)}, but must be ${allowed}.`);
}
