import type { Input, Operation, SendOptions } from "./types.js";

/** Longest query string that is sent; longer scenes go as a body. Proxies cut URLs from about 2000 characters on. */
const longestQuery = 1500;

/** A request as it goes out, but for its headers. */
export interface Outgoing {
  method: string;
  url: string;
  body?: string;
}

/** How an operation is asked for. */
interface Asking {
  /** Whether to use the operation's GET twin, where it has one that takes this input. */
  asGet: boolean;
  /** Names of the fields that the answer shall have, or `brief`; the whole answer where absent. */
  fields?: SendOptions["fields"];
  /** Where what the operation takes beside its body is. */
  options: SendOptions;
}

/** @param base URL of the service, without a slash at its end */
export function outgoing(
  base: string,
  { method, path: template, query: names, selects, beside = [] }: Operation,
  { path, body }: Input,
  { asGet, fields, options }: Asking,
): Outgoing {
  const query = asGet && body !== undefined && names ? queryOf(body, names) : undefined;
  const url =
    base +
    fill(template, path) +
    [
      query,
      selects && body !== undefined && fields && `fields=${[fields].flat().map(encodeURIComponent)}`,
      ...beside.map((name) => options[name] !== undefined && pair([name, options[name]])),
    ]
      .filter(Boolean)
      .map((part, place) => (place ? "&" : "?") + part)
      .join("");
  return query === undefined
    ? { method, url, ...(body !== undefined && { body: JSON.stringify(body) }) }
    : { method: "GET", url };
}

const pair = ([name, value]: readonly [string, unknown]): string =>
  `${name}=${encodeURIComponent(String(value))}`;

function fill(path: string, values: Readonly<Record<string, string>> = {}): string {
  return path.replace(/\{([^{}]+)\}/g, (_, name: string) => encodeURIComponent(values[name] ?? ""));
}

/** The query string of a scene, its fields in a fixed order; undefined where it does not fit one. */
function queryOf(body: object, names: readonly string[]): string | undefined {
  const given = Object.entries(body).filter(([, value]) => value !== undefined);
  const fits = given.every(([name, value]) => names.includes(name) && isPlain(value));
  if (!fits) return undefined;
  const query = given
    .sort(([a], [b]) => names.indexOf(a) - names.indexOf(b))
    .map(pair)
    .join("&");
  return query.length > longestQuery ? undefined : query;
}

/** What a query string holds without a loss. */
function isPlain(value: unknown): boolean {
  return typeof value === "number" ? Number.isFinite(value) : typeof value === "string" && value !== "";
}
