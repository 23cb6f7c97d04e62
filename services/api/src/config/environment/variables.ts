import { isIP } from "node:net";
import { z } from "zod";

export type Environment = Readonly<Record<string, string | undefined>>;

/**
 * Reads a variable by its schema.
 * @throws Error that names it where it is not as it must be, and says what it can be
 */
export function readVariable<T>(env: Environment, name: string, schema: z.ZodType<T>): T {
  const read = schema.safeParse(env[name]);
  if (read.success) return read.data;
  throw new Error(`${name} ${read.error.issues[0]?.message}`);
}

/** Reads variables by their schemas. @throws Error that names the first that is not as it must be */
export function readVariables<Shape extends z.ZodRawShape>(
  env: Environment,
  schema: z.ZodObject<Shape>,
): z.output<z.ZodObject<Shape>> {
  const read = schema.safeParse(env);
  if (read.success) return read.data;
  const [issue] = read.error.issues;
  throw new Error(`${String(issue?.path[0])} ${issue?.message}`);
}

/** What is said of a variable that does not fit. */
export const says = (allowed: string) => ({
  error: ({ input }: { input?: unknown }) => `is ${JSON.stringify(input)}, but must be ${allowed}.`,
});

/** The same of a value that no message may repeat. */
export const saysOfSecret = (allowed: string) => ({ error: () => `must be ${allowed}.` });

/** A text of a form. */
export const text = (form: RegExp, allowed: string) => z.string().regex(form, says(allowed));

/** A text that no message may repeat. */
export const secret = (form: RegExp, allowed: string) => z.string().regex(form, saysOfSecret(allowed));

/** A whole number, in plain digits. */
export function wholeNumber([min, max]: readonly [min: number, max: number]) {
  const isOne = (digits: string) =>
    /^\d{1,10}$/.test(digits) && Number(digits) >= min && Number(digits) <= max;
  return z
    .string()
    .refine(isOne, says(`a whole number from ${min} to ${max}`))
    .transform(Number);
}

/** A number from 0 to 1, in plain digits. */
export const share = () =>
  z
    .string()
    .refine(
      (digits) => /^(?:\d+(?:\.\d+)?|\.\d+)$/.test(digits) && Number(digits) <= 1,
      says("a number from 0 to 1"),
    )
    .transform(Number);

/** One of some words. */
export const oneOf = <const T extends string>(words: readonly T[]) =>
  z.enum(words, says(`one of ${words.join(", ")}`));

interface ListenAddress {
  host: string;
  port: number;
}

const address = /^(?:\[([\da-f:.]+)\]|([^\s:/[\]]+)):(\d{1,5})$/i;

/** An address to listen at, such as `127.0.0.1:9464` or `[::1]:9464`, or `off`. */
export const listenAddress = () =>
  z
    .string()
    .refine(
      (value) => value === "off" || Number(address.exec(value)?.[3] ?? Number.NaN) <= 65_535,
      says("a host and a port, such as 127.0.0.1:9464, or off"),
    )
    .transform((value): ListenAddress | "off" => {
      const [, bracketed, plain, port] = address.exec(value) ?? [];
      const host = bracketed ?? plain;
      return host === undefined ? "off" : { host, port: Number(port) };
    });

/** What stands between commas, each of which `fits`. */
export const items = (fits: (item: string) => boolean, allowed: string) =>
  z
    .string()
    .refine((value) => between(value).every(fits), says(allowed))
    .transform(between);

const between = (value: string): string[] => value.split(",").map((item) => item.trim());

/** A variable that there was: passed over in silence, it would seem to hold. */
export const gone = (instead: string) =>
  z.undefined({ error: () => `is not a variable any more: ${instead}` }).optional();

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
