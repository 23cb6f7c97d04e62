/** What answers are compressed with (RFC 9110, section 8.4.1; RFC 7932). */
export type Encoding = "br" | "gzip";

/**
 * The first of `offered` that an `Accept-Encoding` header takes (RFC 9110, section 12.5.3), undefined where it takes none of them:
 * the plain form then goes. A weight of 0 refuses; other weights do not reorder what is offered, best first.
 */
export function encodingFor(
  acceptEncoding: string | undefined,
  offered: readonly Encoding[],
): Encoding | undefined {
  if (acceptEncoding === undefined) return undefined;
  const welcome = new Map<string, boolean>();
  for (const coding of acceptEncoding.toLowerCase().split(",")) {
    const [name = "", ...parameters] = coding.split(";").map((part) => part.trim());
    welcome.set(
      name === "x-gzip" ? "gzip" : name,
      !parameters.some((parameter) => /^q=0(\.0{0,3})?$/.test(parameter)),
    );
  }
  return offered.find((coding) => welcome.get(coding) ?? welcome.get("*") ?? false);
}
