/** A part of a URL without its escapes (RFC 3986, section 2.1); undefined where one of them stands for nothing. A plus is a plus. */
export function decoded(text: string): string | undefined {
  try {
    return decodeURIComponent(text);
  } catch {
    return undefined;
  }
}
