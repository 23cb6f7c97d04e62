/** What answers come in. */
export type MediaType =
  | "application/json"
  | "application/jsonl"
  | "application/zip"
  | "image/png"
  | "image/svg+xml"
  | "text/calendar"
  | "text/html"
  | "text/vtt";

/**
 * Whether an `Accept` header takes a media type (RFC 9110, section 12.5.1): the most specific range that fits decides, and a
 * weight of 0 refuses. No header takes everything; parameters of a range other than its weight are not looked at.
 */
export function accepts(accept: string | undefined, type: MediaType): boolean {
  if (accept === undefined || accept.trim() === "" || accept === "*/*") return true;
  // From least to most specific.
  const ranges = ["*/*", `${type.split("/")[0]}/*`, type];
  let takes = false;
  let rank = -1;
  for (const range of accept.toLowerCase().split(",")) {
    const [given = "", ...parameters] = range.split(";").map((part) => part.trim());
    const found = ranges.indexOf(given);
    if (found === -1 || found < rank) continue;
    const welcome = !parameters.some((parameter) => /^q=0(\.0{0,3})?$/.test(parameter));
    takes = found === rank ? takes || welcome : welcome;
    rank = found;
  }
  return takes;
}
